using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Compilation;

/// <summary>Something that writes the channels of nodes, or what they are made from.</summary>
internal abstract class Writer
{
    /// <summary>The nodes that it follows, as the rig says it.</summary>
    public abstract IEnumerable<PlannedNode> Inputs { get; }

    /// <summary>The nodes whose world frames it reads, after folding. They are settled when this is asked.</summary>
    public abstract IEnumerable<PlannedNode> Reads { get; }

    /// <summary>The channels that it writes.</summary>
    public virtual Channels Writes => Channels.All;

    /// <summary>Whether it writes scale that may be other than at rest.</summary>
    public virtual bool WritesScale => false;

    /// <summary>Whether it gives the world frames of its nodes too, as it can where there is no scale on the way.</summary>
    public virtual bool GivesFrames => false;

    /// <summary>The nodes whose world frames it reads without their scale.</summary>
    public virtual IEnumerable<PlannedNode> ReadsFramesOf => [];

    /// <summary>The nodes whose world frames it reads with their axes.</summary>
    public virtual IEnumerable<PlannedNode> ReadsAxesOf => Reads;

    /// <summary>It runs in the batches of this level.</summary>
    public virtual int Level => 1 + Reads.Select(node => node.Level).DefaultIfEmpty(0).Max();

    /// <summary>The same for another node, which then stands as this one's would whatever that one hangs under; none where it can't be said so.</summary>
    public virtual Writer? For(PlannedNode other) => null;

    protected static IEnumerable<PlannedNode> Those(params IEnumerable<PlannedNode?> nodes) => nodes.OfType<PlannedNode>();
}

/// <summary>A drive by channels.</summary>
internal sealed class DriveWriter(PlannedNode target, PlannedNode source, Affine3d offset, DrivenChannels channels) : Writer
{
    public PlannedNode Target => target;

    public override Channels Writes => channels.Written;

    /// <summary>The frame to land on: the source's with the rest offset.</summary>
    public Anchor Source => source.World.Below(offset);

    public override bool WritesScale => channels.Scales;

    public override bool GivesFrames => Writes == Channels.All && Source.IsRigid && Target.IsRigid;

    public override IEnumerable<PlannedNode> ReadsFramesOf => GivesFrames ? Reads : [];

    public override IEnumerable<PlannedNode> ReadsAxesOf => GivesFrames ? [] : Reads;

    public override IEnumerable<PlannedNode> Inputs => [source];

    public override IEnumerable<PlannedNode> Reads => Those(Source.Root, Target.Stand.Root);

    public override int Level => Math.Max(base.Level, 1 + target.LevelBefore(this));

    public override Writer For(PlannedNode other) => new DriveWriter(other, source, offset, new(Channels.All, Scales: false));
}

/// <summary>A source of a blend; from a chain's second joint on, its frame is taken as seen from the source joint before.</summary>
internal sealed record BlendInput(PlannedNode Node, PlannedNode? Before, WeightPolynomial Weight);

/// <summary>A blend of one node: a lone one, a chain's first joint, or a later joint, which has the chain's joint before it.</summary>
internal sealed class BlendWriter(PlannedNode target, PlannedNode? before, IReadOnlyList<BlendInput> sources) : Writer
{
    public PlannedNode Target => target;

    public PlannedNode? Before => before;

    public IReadOnlyList<BlendInput> Sources => sources;

    /// <summary>Whether it has two sources, and their weights, none below zero, add up to one.</summary>
    public bool IsWholePair => Sources is [var a, var b] && WeightTable.AreWhole(a.Weight, b.Weight);

    public override bool GivesFrames => Target.IsRigid;

    public override IEnumerable<PlannedNode> ReadsFramesOf => GivesFrames ? Reads : Inputs;

    public override IEnumerable<PlannedNode> ReadsAxesOf => GivesFrames ? [] : Those(Target.Stand.Root);

    public override IEnumerable<PlannedNode> Inputs => Those(Sources.SelectMany(source => new[] { source.Before, source.Node }).Append(before));

    public override IEnumerable<PlannedNode> Reads => Inputs.Concat(Those(Target.Stand.Root));

    public override Writer For(PlannedNode other) => new BlendWriter(other, before, sources);
}
