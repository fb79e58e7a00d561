namespace Condyle.Model;

/// <summary>What sets the roll of an aim: the place of a node, or the direction of one of its axes.</summary>
internal sealed record AimUp(RigNode Node, Fact<Axis?> Axis);

/// <summary>Turns a node so that it points at another. It has no target yet when the sentence is unfinished.</summary>
internal sealed class RigAim(int id, RigEvent said, RigNode? node) : RigElement(id, said)
{
    public RigNode? Node { get; } = node;

    public Fact<RigNode?> Target { get; set; } = (RigNode?)null;

    /// <summary>Where it was told its target; none: it wasn't.</summary>
    public (int Event, PlaceId Place)? Pointed { get; set; }

    /// <summary>The node's axis that points at the target; none: what points there at rest.</summary>
    public Fact<Axis?> Along { get; set; } = (Axis?)null;

    /// <summary>None: the roll goes with the node's parent.</summary>
    public Fact<AimUp?> Up { get; set; } = (AimUp?)null;

    /// <summary>Where it was told what sets its roll; none: it wasn't.</summary>
    public (int Event, PlaceId Place)? Rolled { get; set; }

    public override string Title => $"the aim of {Node?.Title ?? "a node"}";

    public override void Forget()
    {
        Target = Fact<RigNode?>.Open;
        Along = Fact<Axis?>.Open;
        Up = Fact<AimUp?>.Open;
    }
}

/// <summary>Whose turns a twist compares.</summary>
internal sealed record TwistEnds(RigNode Start, RigNode End);

/// <summary>The shares of the first and the last twist joint.</summary>
internal sealed record TwistShares(Fact<float> First, Fact<float> Last);

/// <summary>Shares the roll of a bone out to its twist joints. It has no ends yet when the sentence is unfinished.</summary>
internal sealed class RigTwist : RigElement
{
    public RigTwist(int id, RigEvent said, IReadOnlyList<RigNode?>? joints)
        : base(id, said)
    {
        Joints = joints;
        Untwisted = new RigNode(id, said, NodeKind.Group, "end of " + (joints is { Count: > 0 } && joints[0] is { } first ? first.Name : Text.Open));
    }

    /// <summary>The twist joints, from the bone's start on; none where they aren't known.</summary>
    public IReadOnlyList<RigNode?>? Joints { get; }

    /// <summary>Stands for an end that hangs below the twist joints, as it is before they turn. It is no node of the rig.</summary>
    public RigNode Untwisted { get; }

    public Fact<TwistEnds?> Ends { get; set; } = (TwistEnds?)null;

    /// <summary>Where it was told its ends; none: it wasn't.</summary>
    public (int Event, PlaceId Place)? Spanned { get; set; }

    /// <summary>None: by where the joints lie along the bone.</summary>
    public Fact<TwistShares?> Shares { get; set; } = (TwistShares?)null;

    public override string Title => $"the twist of {(Joints is { Count: > 0 } && Joints[0] is { } first ? first.Title : "a bone")}";

    public override void Forget()
    {
        Ends = Fact<TwistEnds?>.Open;
        Shares = Fact<TwistShares?>.Open;
    }
}

/// <summary>The shares of the first and the last joint in proportion, and what all shares add up to.</summary>
internal sealed record FalloffShares(Fact<float> First, Fact<float> Last, Fact<float> Total);

/// <summary>Lets the joints of a chain or of a copy each take a share of a node's turn. It has no source yet when the sentence is unfinished.</summary>
internal sealed class RigFalloff(int id, RigEvent said, RigChain? chain, RigCopy? copy) : RigElement(id, said)
{
    public RigChain? Chain { get; } = chain;

    public RigCopy? Copy { get; } = copy;

    /// <summary>None where they aren't known.</summary>
    public IReadOnlyList<RigNode>? Joints => Copy is { IsUnknown: false } known ? known.Joints : Chain?.Joints;

    public Fact<RigNode?> Source { get; set; } = (RigNode?)null;

    /// <summary>Where it was told its source; none: it wasn't.</summary>
    public (int Event, PlaceId Place)? Sourced { get; set; }

    /// <summary>None: all the same, and 1 together.</summary>
    public Fact<FalloffShares?> Shares { get; set; } = (FalloffShares?)null;

    /// <summary>Whether the joints take their shares of the source's move too.</summary>
    public Fact<bool> Moves { get; set; } = false;

    public override string Title => $"the falloff over {Copy?.Title ?? Chain?.Title ?? "a chain"}";

    public override void Forget()
    {
        Source = Fact<RigNode?>.Open;
        Shares = Fact<FalloffShares?>.Open;
        Moves = Fact<bool>.Open;
    }
}
