using Condyle.Evaluation;

namespace Condyle.Runtime.Compilation;

/// <summary>Something that writes the rotation of a node alone, given in the world.</summary>
internal abstract class TurnWriter(PlannedNode target) : Writer
{
    public PlannedNode Target => target;

    public override Channels Writes => Channels.Turn;

    public override IEnumerable<PlannedNode> Inputs => Those([.. Follows]);

    public override IEnumerable<PlannedNode> Reads => Those([.. Follows, target.Stand.Root]);

    public override int Level => Math.Max(base.Level, 1 + target.LevelBefore(this));

    /// <summary>The nodes that it follows.</summary>
    protected abstract IEnumerable<PlannedNode?> Follows { get; }
}

/// <summary>An aim.</summary>
internal sealed class AimWriter(PlannedNode target, AimRest rest, PlannedNode at, PlannedNode? up) : TurnWriter(target)
{
    public AimRest Rest => rest;

    public PlannedNode At => at;

    public PlannedNode? Up => up;

    protected override IEnumerable<PlannedNode?> Follows => [at, up];
}

/// <summary>One joint's share of a twist.</summary>
internal sealed class TwistWriter(PlannedNode target, TwistRest rest, TwistJoint joint, PlannedNode start, PlannedNode end) : TurnWriter(target)
{
    public TwistRest Rest => rest;

    public TwistJoint Joint => joint;

    public PlannedNode Start => start;

    /// <summary>The end, or what stands for one that hangs below the joints. It isn't known before all sentences are.</summary>
    public PlannedNode End { get; set; } = end;

    /// <summary>Its ends are compared by their rotations alone.</summary>
    public override IEnumerable<PlannedNode> ReadsFramesOf => Target.IsRigid ? Reads : Inputs;

    public override IEnumerable<PlannedNode> ReadsAxesOf => Target.IsRigid ? [] : Those(Target.Stand.Root);

    protected override IEnumerable<PlannedNode?> Follows => [start, End];
}

/// <summary>A source's turn, of which a joint takes a share.</summary>
internal sealed record FalloffInput(FalloffShare Share, PlannedNode Source);

/// <summary>All falloffs of which a joint takes a share: they come on top of what else writes its channels.</summary>
internal sealed class FalloffWriter(PlannedNode target) : Writer
{
    private readonly List<FalloffInput> shares = [];

    public PlannedNode Target => target;

    /// <summary>Sources that stand still give nothing.</summary>
    public IReadOnlyList<FalloffInput> Shares => [.. shares.Where(share => share.Source.Moves)];

    public override Channels Writes => Channels.None;

    /// <summary>What only an animator moves is there before anything else.</summary>
    public override IEnumerable<PlannedNode> Inputs => shares.Select(share => share.Source).Where(source => source.IsWritten);

    public override IEnumerable<PlannedNode> Reads => Inputs;

    public override int Level => Math.Max(base.Level, 1 + target.LevelBefore(this));

    public void Add(FalloffInput share) => shares.Add(share);
}
