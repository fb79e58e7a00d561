using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R02;

/// <summary>Builds one part of a creature.</summary>
internal interface IPartBuilder
{
    /// <summary>The part's name.</summary>
    string PartName { get; }

    /// <summary>Adds the part to the rig.</summary>
    void Build(IGullContext context);
}

/// <summary>What the part builders share.</summary>
internal interface IGullContext
{
    RigDraft Draft { get; }

    Group Systems { get; }

    Control Body { get; }

    Joint GetJoint(string name);

    void RegisterJoint(Joint joint);
}

internal sealed class GullContext : IGullContext
{
    private readonly IDictionary<string, Joint> _joints = new Dictionary<string, Joint>(StringComparer.Ordinal);

    public GullContext(RigDraft draft, Group systems, Control body)
    {
        Draft = draft ?? throw new ArgumentNullException(nameof(draft));
        Systems = systems;
        Body = body;
    }

    public RigDraft Draft { get; }

    public Group Systems { get; }

    public Control Body { get; }

    public Joint GetJoint(string name)
    {
        if (!_joints.TryGetValue(name, out var joint))
        {
            throw new KeyNotFoundException($"Joint '{name}' has not been registered.");
        }

        return joint;
    }

    public void RegisterJoint(Joint joint) => _joints.Add(joint.Name, joint);
}

internal sealed class WingPartBuilder : IPartBuilder
{
    private readonly Side _side;
    private readonly WingOptions _options;

    public WingPartBuilder(Side side, WingOptions options)
    {
        _side = side;
        _options = options;
    }

    public string PartName => "wing";

    public void Build(IGullContext context)
    {
        var draft = context.Draft;
        var wing = draft.Chain(context.GetJoint($"shoulder_{_side}"), context.GetJoint($"wrist_{_side}"));
        var parts = draft.Group($"{PartName}_{_side}_group").Under(context.Systems).PlacedAt(wing.Root);
        draft.Drive(parts).ByMatrix(context.Body).KeepingOffset();

        var ik = wing.Copy("ik").Under(parts);
        var fk = wing.Copy("fk").Under(parts);
        var tip = draft.Control($"{PartName}_tip_{_side}").Under(context.Body).PlacedAt(wing.Tip);
        var pole = draft.Control($"{PartName}_pole_{_side}").Under(context.Body).PlacedAt(ik.PolePoint(_options.PoleDistance));
        draft.TwoBone(ik).Reach(tip).Face(pole);

        Node parent = context.Body;
        for (var index = 0; index < wing.Count; index++)
        {
            var control = draft.Control($"turn_{wing[index].Name}").Under(parent).PlacedAt(wing[index]).Lock(Channels.Move);
            draft.Drive(fk.Of(wing[index])).ByChannels(control);
            parent = control;
        }

        var amount = tip.Switch("fk", atRest: _options.FkAtRest);
        draft.Blend(wing).From(ik, amount.Inverse).From(fk, amount);
        draft.Label($"fk_{PartName}_label_{_side}", _options.FkText).ShownBy(amount).Under(tip);
    }
}

internal sealed class HeadPartBuilder : IPartBuilder
{
    public string PartName => "head";

    public void Build(IGullContext context)
    {
        var neck = context.Draft.Control("turn_neck").Under(context.Body).PlacedAt(context.GetJoint("neck"));
        var head = context.Draft.Control("turn_head").Under(neck).PlacedAt(context.GetJoint("head"));
        context.Draft.Drive(context.GetJoint("neck")).ByChannels(neck);
        context.Draft.Drive(context.GetJoint("head")).ByChannels(head);
    }
}

internal sealed class WingOptions
{
    public float PoleDistance { get; init; } = 0.25f;

    public float FkAtRest { get; init; }

    public string FkText { get; init; } = "FK";
}

/// <summary>The herring gull on the mooring post.</summary>
public sealed class HerringGull : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("herring_gull");
        var pelvis = skeleton.Root("pelvis", JointRole.Deform, new Vector3(0f, 0.3f, 0f));
        var body = rig.Control("body").PlacedAt(pelvis);
        rig.Drive(pelvis).ByChannels(body);

        IGullContext context = new GullContext(rig, rig.Group("systems_group"), body);
        var neck = pelvis.Child("neck", at: new Vector3(0f, 0.08f, 0.16f));
        context.RegisterJoint(neck);
        context.RegisterJoint(neck.Child("head", at: new Vector3(0f, 0.09f, 0.03f)));
        foreach (var side in Side.Both)
        {
            var shoulder = pelvis.Child($"shoulder_{side}", at: new Vector3(0.06f * side.Sign, 0.06f, 0.1f));
            var elbow = shoulder.Child($"elbow_{side}", at: new Vector3(0.18f * side.Sign, 0f, -0.06f));
            context.RegisterJoint(shoulder);
            context.RegisterJoint(elbow);
            context.RegisterJoint(elbow.Child($"wrist_{side}", at: new Vector3(0.22f * side.Sign, 0f, 0.07f)));
        }

        var builders = new List<IPartBuilder>
        {
            new HeadPartBuilder(),
            new WingPartBuilder(Side.Left, new WingOptions { FkAtRest = 1f }),
            new WingPartBuilder(Side.Right, new WingOptions { FkAtRest = 1f }),
        };
        builders.ForEach(builder => builder.Build(context));
    }
}
