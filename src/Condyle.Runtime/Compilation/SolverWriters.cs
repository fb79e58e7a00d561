using Condyle.Evaluation;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>A solver of a copy.</summary>
internal abstract class CopyWriter(string title, IReadOnlyList<PlannedNode> joints) : Writer
{
    public string Title => title;

    /// <summary>From root to tip.</summary>
    public IReadOnlyList<PlannedNode> Joints => joints;

    public override IEnumerable<PlannedNode> Inputs => Those([.. Follows, joints[0].Base]);

    public override IEnumerable<PlannedNode> Reads => Those([.. Follows, joints[0].Stand.Root]);

    /// <summary>The nodes that it follows.</summary>
    protected abstract IEnumerable<PlannedNode?> Follows { get; }
}

/// <summary>A solver whose tip reaches a goal and whose bend faces a pole.</summary>
internal abstract class ReachingWriter(string title, IReadOnlyList<PlannedNode> joints, PlannedNode goal, PlannedNode? pole) : CopyWriter(title, joints)
{
    public PlannedNode Goal => goal;

    public PlannedNode? Pole => pole;

    /// <summary>The bend at rest, in double precision and in the frame of the root joint, so that a bend too slight for a float is still known.</summary>
    public required RestBend Bend { get; init; }

    /// <summary>How the tip is turned in the goal's frame at rest.</summary>
    public required Quaterniond TipInGoal { get; init; }

    protected override IEnumerable<PlannedNode?> Follows => [goal, pole];
}

/// <summary>Two-bone IK over the three joints of a copy.</summary>
internal sealed class TwoBoneWriter(string title, IReadOnlyList<PlannedNode> joints, PlannedNode goal, PlannedNode? pole) : ReachingWriter(title, joints, goal, pole)
{
    public required TwoBoneOptions Options { get; init; }

    /// <summary>The input that turns the plane; none: the pole has it.</summary>
    public required int? Turner { get; init; }

    /// <summary>What measures that input; none where it is set.</summary>
    public required MeasureWriter? Measure { get; init; }

    public override IEnumerable<PlannedNode> Inputs => base.Inputs.Concat(Measure?.Inputs ?? []);

    public override IEnumerable<PlannedNode> Reads => base.Reads.Concat(Measure?.Reads ?? []);

    public override int Level => Math.Max(base.Level, 1 + (Measure?.Level ?? 0));

    /// <summary>What goes into one batch.</summary>
    public LimbKind Kind => new(Pole is not null, IsTurned: Turner is not null, IsPlain: Options is { Softness: 0, Most: <= 1 }, Leans: !GivesFrames || BendsBeside);

    // The part of the first bone across the line, at rest, that isn't to the side.
    private bool BendsBeside => Math.Abs(Vector3d.Dot(Joints[1].Fixed.Origin, Vector3d.Cross(Bend.Line, Bend.Side))) > 1e-9 * Joints[1].Fixed.Origin.Length;

    public override bool GivesFrames => Joints[0].IsRigid && Joints.All(joint => joint.Writer == this && !joint.ChannelsAreRead) && Joints.Skip(1).All(joint => joint.AddsNoScale);

    public override IEnumerable<PlannedNode> ReadsFramesOf => Those(Follows);

    public override IEnumerable<PlannedNode> ReadsAxesOf => GivesFrames ? [] : Those(Joints[0].Stand.Root);
}

/// <summary>Many-bone IK over the joints of a copy.</summary>
internal sealed class ManyBoneWriter(string title, IReadOnlyList<PlannedNode> joints, PlannedNode goal, PlannedNode? pole) : ReachingWriter(title, joints, goal, pole)
{
    public required ManyBoneOptions Options { get; init; }
}

/// <summary>A copy along a curve through nodes.</summary>
internal sealed class CurveChainWriter(string title, IReadOnlyList<PlannedNode> joints, IReadOnlyList<PlannedNode> nodes, CurveRest rest) : CopyWriter(title, joints)
{
    public IReadOnlyList<PlannedNode> Nodes => nodes;

    public CurveRest Rest => rest;

    protected override IEnumerable<PlannedNode?> Follows => nodes;
}
