using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R03;

/// <summary>The portal crane of the north quay, assembled from sections that know nothing of one another.</summary>
public sealed class PortalCrane : IRigDefinition
{
    private readonly CraneAssembler _assembler;

    public PortalCrane()
        : this(new CraneOptions { JibLength = 14f, LegSpacing = new Vector2(3.5f, 4f) }, new SnakeCaseNamingPolicy())
    {
    }

    private PortalCrane(CraneOptions options, INamingPolicy naming)
    {
        ISectionFactory factory = new SectionFactory(options);
        _assembler = new CraneAssembler(factory, naming, options);
    }

    public void Define(RigDraft rig) => _assembler.Assemble(rig);
}

internal enum SectionKind { Portal, Slew, Jib, Hook }

internal sealed record CraneOptions
{
    public required float JibLength { get; init; }
    public required Vector2 LegSpacing { get; init; }
    public float PortalHeight { get; init; } = 6f;
    public int Falls { get; init; } = 2;
    public IReadOnlyList<SectionKind> Sections { get; init; } = [SectionKind.Portal, SectionKind.Slew, SectionKind.Jib, SectionKind.Hook];
}

internal interface INamingPolicy
{
    string Compose(params string[] words);
}

internal sealed class SnakeCaseNamingPolicy : INamingPolicy
{
    public string Compose(params string[] words) => string.Join('_', words).ToLowerInvariant();
}

internal interface ISection
{
    SectionKind Kind { get; }

    Attachment Build(SectionContext context, Attachment below);
}

internal interface ISectionFactory
{
    ISection Create(SectionKind kind);
}

internal readonly record struct Attachment(Joint Joint, Control Control);

internal sealed record SectionContext(RigDraft Rig, INamingPolicy Naming, Group Systems);

internal sealed class SectionFactory(CraneOptions options) : ISectionFactory
{
    public ISection Create(SectionKind kind) => kind switch
    {
        SectionKind.Portal => new PortalSection(options),
        SectionKind.Slew => new SlewSection(options),
        SectionKind.Jib => new JibSection(options),
        SectionKind.Hook => new HookSection(options),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No section of this kind is registered."),
    };
}

internal sealed class CraneAssembler(ISectionFactory factory, INamingPolicy naming, CraneOptions options)
{
    public void Assemble(RigDraft rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var context = new SectionContext(rig, naming, rig.Group(naming.Compose("systems", "group")));
        var rail = rig.Skeleton("portal_crane").Root(naming.Compose("Rail"), JointRole.Helper);
        var travel = rig.Control(naming.Compose("Travel")).PlacedAt(rail).Lock(Channels.Turn | Channels.MoveX | Channels.MoveY);
        rig.Drive(rail).ByChannels(travel);

        var attachment = new Attachment(rail, travel);
        foreach (var kind in options.Sections)
            attachment = factory.Create(kind).Build(context, attachment);
    }
}

internal abstract class Section(CraneOptions options, SectionKind kind, Vector3 offset) : ISection
{
    public SectionKind Kind => kind;

    protected CraneOptions Options { get; } = options;

    public Attachment Build(SectionContext context, Attachment below)
    {
        var joint = below.Joint.Child(context.Naming.Compose(Kind.ToString()), at: offset);
        var control = context.Rig.Control(context.Naming.Compose("move", Kind.ToString())).Under(below.Control).PlacedAt(joint);
        context.Rig.Drive(joint).ByChannels(Restrict(control));
        var attachment = new Attachment(joint, control);
        Furnish(context, attachment);
        return attachment;
    }

    protected virtual Control Restrict(Control control) => control;

    protected virtual void Furnish(SectionContext context, Attachment own)
    {
    }
}

internal sealed class PortalSection(CraneOptions options) : Section(options, SectionKind.Portal, new Vector3(0, options.PortalHeight, 0))
{
    protected override Control Restrict(Control control) => control.Lock(Channels.All);

    protected override void Furnish(SectionContext context, Attachment own)
    {
        foreach (var side in Side.Both)
        {
            foreach (var end in new[] { "front", "rear" })
            {
                var along = end == "front" ? Options.LegSpacing.Y : -Options.LegSpacing.Y;
                var at = new Vector3(side.Sign * Options.LegSpacing.X, -Options.PortalHeight, along);
                var bogie = own.Joint.Child(context.Naming.Compose("bogie", end, side.ToString()), at: at);
                var roll = context.Rig.Control(context.Naming.Compose("roll", end, side.ToString())).Under(own.Control).PlacedAt(bogie).Lock(Channels.Move);
                context.Rig.Drive(bogie).ByChannels(roll);
            }
        }
    }
}

internal sealed class SlewSection(CraneOptions options) : Section(options, SectionKind.Slew, new Vector3(0, 1.2f, 0))
{
    protected override Control Restrict(Control control) => control.Lock(Channels.Move | Channels.TurnX | Channels.TurnZ);
}

internal sealed class JibSection(CraneOptions options) : Section(options, SectionKind.Jib, new Vector3(0, 2f, 1.5f))
{
    protected override Control Restrict(Control control) => control.Lock(Channels.Move).LimitTurn(Axis.X, -70, 5);
}

internal sealed class HookSection(CraneOptions options) : Section(options, SectionKind.Hook, new Vector3(0, 0, options.JibLength))
{
    protected override void Furnish(SectionContext context, Attachment own)
    {
        var falls = context.Rig.Group(context.Naming.Compose("falls", "group")).Under(context.Systems).PlacedAt(own.Control);
        context.Rig.Drive(falls).ByMatrix(own.Control);
        for (var fall = 1; fall <= Options.Falls; fall++)
        {
            var block = own.Joint.Child(context.Naming.Compose("block", fall.ToString()), at: new Vector3(0.4f * (fall - 1.5f), -9f, 0));
            var hoist = context.Rig.Control(context.Naming.Compose("hoist", fall.ToString())).Under(falls).PlacedAt(block).LimitMove(Axis.Y, -8, 7);
            context.Rig.Drive(block).ByChannels(hoist);
        }
    }
}
