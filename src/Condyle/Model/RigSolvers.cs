namespace Condyle.Model;

/// <summary>Solves a copy for a goal that its tip reaches and a pole that its bend faces.</summary>
internal abstract class RigSolver(int id, RigEvent said, RigCopy? copy) : RigElement(id, said)
{
    public RigCopy? Copy { get; } = copy;

    public Fact<RigNode?> Goal { get; set; } = (RigNode?)null;

    public Fact<RigNode?> Pole { get; set; } = (RigNode?)null;

    /// <summary>Where it was told its goal; none: it wasn't.</summary>
    public (int Event, PlaceId Place)? Reached { get; set; }

    /// <summary>Where it was told its pole; none: it wasn't.</summary>
    public (int Event, PlaceId Place)? Faced { get; set; }

    public override void Forget()
    {
        Goal = Fact<RigNode?>.Open;
        Pole = Fact<RigNode?>.Open;
    }
}

/// <summary>By how much bones lengthen to reach what they otherwise couldn't: by a weight, and to so many times their length at most.</summary>
internal sealed record BoneStretch(WeightPolynomial Weight, Fact<float> Most);

internal sealed class RigTwoBone(int id, RigEvent said, RigCopy? copy) : RigSolver(id, said, copy)
{
    /// <summary>None: the bones keep their length.</summary>
    public Fact<BoneStretch?> Stretch { get; set; } = (BoneStretch?)null;

    /// <summary>The last part of the reach, in metres, that is approached smoothly.</summary>
    public Fact<float> Softness { get; set; } = 0f;

    /// <summary>The dial or the measured angle that turns the plane of the bend, in degrees.</summary>
    public Fact<RigElement?> PlaneTurn { get; set; } = (RigElement?)null;

    public override string Title => $"the two-bone IK of {Copy?.Title ?? "a copy"}";

    public override void Forget()
    {
        base.Forget();
        Stretch = Fact<BoneStretch?>.Open;
        Softness = Fact<float>.Open;
        PlaneTurn = Fact<RigElement?>.Open;
    }
}

/// <summary>The cone, in degrees from where it rests, that a joint's bone may not leave.</summary>
internal sealed record JointCone(RigNode? Joint, Fact<float> Degrees);

/// <summary>When an iteration may end: at a distance in metres, and after so many rounds at the latest.</summary>
internal sealed record SolverEnd(Fact<float> Metres, Fact<int> Rounds);

internal sealed class RigManyBone(int id, RigEvent said, RigCopy? copy) : RigSolver(id, said, copy)
{
    public List<JointCone> Cones { get; } = [];

    /// <summary>Whether there may be other cones than those, or not all of them.</summary>
    public bool ConesAreOpen { get; set; }

    /// <summary>None: as the solver has it by itself.</summary>
    public Fact<SolverEnd?> End { get; set; } = (SolverEnd?)null;

    public override string Title => $"the many-bone IK of {Copy?.Title ?? "a copy"}";

    public override void Forget()
    {
        base.Forget();
        ConesAreOpen = true;
        End = Fact<SolverEnd?>.Open;
    }
}

/// <summary>Lays a copy along a curve through nodes.</summary>
internal sealed class RigCurve(int id, RigEvent said, RigCopy? copy) : RigElement(id, said)
{
    public RigCopy? Copy { get; } = copy;

    /// <summary>The nodes that the curve goes through, from the chain's root on.</summary>
    public List<RigNode?> Nodes { get; } = [];

    /// <summary>Where it was told of each of them.</summary>
    public List<(int Event, PlaceId Place)> Led { get; } = [];

    public bool NodesAreOpen { get; set; }

    /// <summary>How much the chain takes the curve's length; none: it keeps its own.</summary>
    public Fact<WeightPolynomial?> Stretch { get; set; } = (WeightPolynomial?)null;

    public override string Title => $"the curve of {Copy?.Title ?? "a copy"}";

    public override void Forget()
    {
        NodesAreOpen = true;
        Stretch = Fact<WeightPolynomial?>.Open;
    }
}
