using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R28;

/// <summary>The ship-to-shore gantry at berth 4: portal, boom, trolley, hoist and spreader, put together from modules.</summary>
public sealed class GantryCrane : IRigDefinition
{
    private readonly IModuleFactory factory;
    private readonly GantryOptions options;

    public GantryCrane()
        : this(new BerthModuleFactory(), new GantryOptions { Span = 30f, Falls = 2 })
    {
    }

    internal GantryCrane(IModuleFactory factory, GantryOptions options)
    {
        this.factory = factory ?? throw new ArgumentNullException(nameof(factory));
        this.options = options ?? throw new ArgumentNullException(nameof(options));
    }

    public void Define(RigDraft rig)
    {
        var context = new RigContext(rig, new SnakeCaseNaming(options.Prefix), options);
        foreach (var module in factory.Create(options).OrderBy(module => module.Stage).ThenBy(module => module.GetType().Name, StringComparer.Ordinal))
            module.Install(context);
    }
}

internal sealed record GantryOptions
{
    public required float Span { get; init; }

    public float Height { get; init; } = 24f;

    public int Falls { get; init; } = 4;

    public bool WithSpreader { get; init; } = true;

    public string Prefix { get; init; } = "gantry";
}

internal enum Stage
{
    Structure = 10,
    Motion = 20,
    Attachments = 30,
}

internal interface INaming
{
    string Joint(string part);

    string Control(string part);

    string Group(string part);
}

internal sealed class SnakeCaseNaming(string prefix) : INaming
{
    public string Joint(string part) => part;

    public string Control(string part) => $"{prefix}_{part}";

    public string Group(string part) => $"{prefix}_{part}_group";
}

internal interface IRigModule
{
    Stage Stage { get; }

    void Install(RigContext context);
}

internal interface IModuleFactory
{
    IEnumerable<IRigModule> Create(GantryOptions options);
}

internal sealed class BerthModuleFactory : IModuleFactory
{
    public IEnumerable<IRigModule> Create(GantryOptions options)
    {
        if (options.WithSpreader)
            yield return new SpreaderModule();
        yield return new TravelModule();
        yield return new PortalModule();
        yield return new BoomModule(new BoomSettings(UpDegrees: 80f, DownDegrees: -1f));
    }
}

internal sealed class RigContext(RigDraft draft, INaming naming, GantryOptions options)
{
    private readonly Dictionary<string, Joint> joints = [];
    private readonly Dictionary<string, Control> controls = new(StringComparer.OrdinalIgnoreCase);

    public RigDraft Draft { get; } = draft;

    public INaming Naming { get; } = naming;

    public GantryOptions Options { get; } = options;

    public Joint JointOf(string part) => joints[part];

    public Control ControlOf(string part) =>
        controls.TryGetValue(part, out var control) ? control : throw new KeyNotFoundException($"No module has made the control '{part}'.");

    public Joint Add(string part, string? above, Vector3 at)
    {
        var name = Naming.Joint(part);
        return joints[part] = above is null ? Draft.Skeleton(Options.Prefix).Root(name, at: at) : joints[above].Child(name, at: at);
    }

    public Control Move(string part, Node above, Channels free)
    {
        var joint = JointOf(part);
        var control = Draft.Control(Naming.Control(part)).Under(above).PlacedAt(joint).Lock(Channels.All & ~free);
        Draft.Drive(joint).ByChannels(control);
        controls.Add(part, control);
        return control;
    }
}

internal sealed class PortalModule : IRigModule
{
    public Stage Stage => Stage.Structure;

    public void Install(RigContext context)
    {
        context.Add("portal", null, Vector3.Zero);
        foreach (var side in Side.Both)
            context.Add($"bogie_{side}", "portal", new Vector3(context.Options.Span / 2 * side.Sign, 0.9f, 0));
    }
}

internal sealed class TravelModule : IRigModule
{
    public Stage Stage => Stage.Motion;

    public void Install(RigContext context)
    {
        var portal = context.Move("portal", context.Draft.Group(context.Naming.Group("rails")), Channels.MoveZ);
        foreach (var side in Side.Both)
            context.Move($"bogie_{side}", portal, Channels.TurnX);
    }
}

internal sealed record BoomSettings(float UpDegrees, float DownDegrees);

internal sealed class BoomModule(BoomSettings settings) : IRigModule
{
    public Stage Stage => Stage.Attachments;

    public void Install(RigContext context)
    {
        context.Add("boom", "portal", new Vector3(0, context.Options.Height, 8));
        context.Add("trolley", "boom", new Vector3(0, -0.6f, 6));
        var boom = context.Move("boom", context.ControlOf("portal"), Channels.TurnX).LimitTurn(Axis.X, -settings.UpDegrees, -settings.DownDegrees);
        context.Move("trolley", boom, Channels.MoveZ).LimitMove(Axis.Z, -12, 20);
    }
}

internal sealed class SpreaderModule : IRigModule
{
    public Stage Stage => Stage.Attachments;

    public void Install(RigContext context)
    {
        context.Add("spreader", "trolley", new Vector3(0, -10, 0));
        var head = context.Move("spreader", context.ControlOf("TROLLEY"), Channels.MoveY | Channels.TurnY);
        for (var fall = 0; fall < context.Options.Falls; fall++)
        {
            var part = $"fall_{(char)('a' + fall)}";
            context.Add(part, "spreader", new Vector3(fall % 2 == 0 ? 1.1f : -1.1f, 1.2f, 0));
            context.Move(part, head, Channels.TurnX | Channels.TurnZ);
        }
    }
}
