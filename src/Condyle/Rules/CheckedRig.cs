using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>A rig as the rules see it: its model, the team's conventions, and what is worked out once for all rules, when the first one asks.</summary>
internal sealed class CheckedRig
{
    private readonly RigModel model;
    private readonly Lazy<RestPose> rest;
    private readonly Lazy<(EvaluatedRig? Rig, IReadOnlyList<GeometryFault> Faults)> evaluated;
    private readonly Lazy<Moves> moves;
    private readonly Lazy<SidePairs> pairs;
    private readonly Lazy<IReadOnlyList<SolvedChain>> solvedChains;
    private readonly Lazy<IReadOnlyList<Namesakes>> namesakes;
    private RigMotion? motion;

    public CheckedRig(RigModel model, Conventions conventions, CancellationToken cancellation)
    {
        (this.model, Conventions, Cancellation) = (model, conventions, cancellation);
        Accepted = new Acceptances(model);
        rest = new(() => RestPose.KnownOf(model));
        evaluated = new(() => EvaluatedRig.Of(model, rest, cancellation));
        moves = new(() => Moves.Of(model));
        pairs = new(() => new(model, conventions));
        solvedChains = new(() => [.. SolvedChain.In(model, Rest)]);
        namesakes = new(() => [.. Rules.Namesakes.In(model)]);
    }

    public RigModel Model => model;

    /// <summary>What the code accepts.</summary>
    public Acceptances Accepted { get; }

    public Conventions Conventions { get; }

    public CancellationToken Cancellation { get; }

    /// <summary>The rest of those nodes for which it is known.</summary>
    public RestPose Rest => rest.Value;

    /// <summary>What moves each node.</summary>
    public Moves Moves => moves.Value;

    /// <summary>What moves what.</summary>
    public RigMotion Motion => motion ??= RigMotion.Of(model, Moves);

    /// <summary>Which nodes are each other's counterparts on the other side.</summary>
    public SidePairs Pairs => pairs.Value;

    /// <summary>The copies that something solves, of which the rest is known.</summary>
    public IReadOnlyList<SolvedChain> SolvedChains => solvedChains.Value;

    /// <summary>The nodes that are called as one before them is.</summary>
    public IReadOnlyList<Namesakes> Namesakes => namesakes.Value;

    /// <summary>The rig evaluated at rest; none where not all of it is known, where it can't be evaluated or where that is too much work.</summary>
    public EvaluatedRig? Evaluated => evaluated.Value.Rig;

    /// <summary>Why it can't be evaluated though all of it is known.</summary>
    public IReadOnlyList<GeometryFault> Faults => evaluated.Value.Faults;
}
