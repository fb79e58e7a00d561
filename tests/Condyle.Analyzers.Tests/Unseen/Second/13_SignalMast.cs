using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R13;

/// <summary>The signal mast on the harbour office. The tree below is the mast as you see it; the builder turns it into joints and handles.</summary>
public sealed class SignalMast : IRigDefinition
{
    private readonly Dictionary<string, Control> _handles = [];

    private static Element Tree => new("mast")
    {
        At = new(0, 9, 0),
        Handle = "place_mast",
        Children =
        {
            new Element("yard")
            {
                At = new(0, 6, 0),
                Handle = "yard_turn",
                Locked = Channels.Move | Channels.TurnX | Channels.TurnZ,
                Children =
                {
                    new Element("halyard_left") { At = new(2.2f, -0.1f, 0), Handle = "halyard_left_pull", Locked = Channels.Turn },
                    new Element("halyard_right") { At = new(-2.2f, -0.1f, 0), Handle = "halyard_right_pull", Locked = Channels.Turn },
                },
            },
            new Element("gaff")
            {
                At = new(0, 4.5f, -0.2f),
                Handle = "gaff_turn",
                Locked = Channels.Move,
                Children = { new Element("flag") { At = new(0, 0.3f, -1.8f), Handle = "flag_wave" } },
            },
            new Element("anemometer") { At = new(0, 7.2f, 0), Handle = "anemometer_spin", Locked = Channels.Move },
            new Element("ladder_hatch") { At = new(0, 0.5f, 0.3f), IsHelper = true },
        },
    };

    public void Define(RigDraft rig)
    {
        var renderer = new ElementRenderer(rig);
        renderer.HandleCreated += OnHandleCreated;
        renderer.Render(Tree);

        BindSignals(rig);
    }

    private void OnHandleCreated(object? sender, HandleCreatedEventArgs e)
    {
        _handles[e.Element.Name] = e.Handle;
    }

    // Storm signal: the flag is hoisted at the gaff or at one of the two halyards.
    private void BindSignals(RigDraft rig)
    {
        var cone = rig.Group("storm_cone_group").PlacedAt(_handles["gaff"]);
        var choice = _handles["mast"].Switch("at_halyard");
        var port = _handles["mast"].Switch("port");

        rig.Blend(cone)
            .From(_handles["gaff"], choice.Inverse)
            .From(_handles["halyard_left"], choice * port)
            .From(_handles["halyard_right"], choice * port.Inverse);

        (string, string, Weight)[] badges =
        [
            ("badge_gaff", "GAFF", choice.Inverse),
            ("badge_left", "PORT", choice * port),
            ("badge_right", "STARBOARD", choice * port.Inverse),
        ];
        foreach (var (name, text, visibility) in badges)
            rig.Label(name, text).Under(cone).ShownBy(visibility);
    }
}

internal sealed class Element(string name)
{
    public string Name { get; } = name;

    public Vector3 At { get; init; }

    public string? Handle { get; init; }

    public Channels Locked { get; init; } = Channels.None;

    public bool IsHelper { get; init; }

    public List<Element> Children { get; } = [];
}

internal sealed class HandleCreatedEventArgs(Element element, Control handle) : EventArgs
{
    public Element Element { get; } = element;

    public Control Handle { get; } = handle;
}

internal sealed class ElementRenderer
{
    private readonly RigDraft _rig;
    private readonly Skeleton _skeleton;

    public ElementRenderer(RigDraft rig)
    {
        _rig = rig;
        _skeleton = rig.Skeleton("signal_mast");
    }

    public event EventHandler<HandleCreatedEventArgs>? HandleCreated;

    public void Render(Element element, Joint? parentJoint = null, Control? parentHandle = null)
    {
        var role = element.IsHelper ? JointRole.Helper : JointRole.Deform;
        var joint = parentJoint?.Child(element.Name, role, element.At) ?? _skeleton.Root(element.Name, role, element.At);

        var handle = parentHandle;
        if (element.Handle is { } handleName)
        {
            var created = _rig.Control(handleName).PlacedAt(joint).Lock(element.Locked);
            if (parentHandle.HasValue)
                created.Under(parentHandle.Value);
            _rig.Drive(joint).ByChannels(created);
            HandleCreated?.Invoke(this, new HandleCreatedEventArgs(element, created));
            handle = created;
        }

        foreach (var child in element.Children)
            Render(child, joint, handle);
    }
}
