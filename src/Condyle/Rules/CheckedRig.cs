using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>A rig as the rules see it: its model, the team's conventions, and what is worked out once for all rules, when the first one asks.</summary>
internal sealed class CheckedRig(RigModel model, Conventions conventions, CancellationToken cancellation)
{
    private readonly Dictionary<Delegate, object> answers = [];
    private (EvaluatedRig? Rig, IReadOnlyList<GeometryFault> Faults)? evaluated;
    private RestPose? rest;
    private Moves? moves;
    private RigMotion? motion;
    private SidePairs? pairs;
    private RepeatedCode? repeated;

    public RigModel Model => model;

    public Conventions Conventions => conventions;

    public CancellationToken Cancellation => cancellation;

    /// <summary>What the code accepts.</summary>
    public Acceptances Accepted { get; } = new(model);

    /// <summary>What the weights of its blends add up to.</summary>
    public BlendSums Sums { get; } = new();

    /// <summary>The rest of those nodes for which it is known.</summary>
    public RestPose Rest => rest ??= RestPose.KnownOf(model);

    /// <summary>What moves each node.</summary>
    public Moves Moves => moves ??= Moves.Of(model);

    /// <summary>What moves what.</summary>
    public RigMotion Motion => motion ??= RigMotion.Of(model, Moves);

    /// <summary>Which nodes are each other's counterparts on the other side.</summary>
    public SidePairs Pairs => pairs ??= new(model, conventions);

    /// <summary>The copies that something solves, of which the rest is known.</summary>
    public IReadOnlyList<SolvedChain> SolvedChains => Once(SolvedChain.In);

    /// <summary>The nodes that are called as one before them is.</summary>
    public IReadOnlyList<Namesakes> Namesakes => Once(Rules.Namesakes.In);

    /// <summary>The code that ran twice.</summary>
    public RepeatedCode Repeated => repeated ??= new(Namesakes);

    /// <summary>The rig evaluated at rest; none where not all of it is known, where it can't be evaluated or where that is too much work.</summary>
    public EvaluatedRig? Evaluated => (evaluated ??= EvaluatedRig.Of(this)).Rig;

    /// <summary>Why it can't be evaluated though all of it is known.</summary>
    public IReadOnlyList<GeometryFault> Faults => (evaluated ??= EvaluatedRig.Of(this)).Faults;

    /// <summary>What a rule finds that others ask it for as well.</summary>
    /// <param name="find">A static method, which stands for what it finds.</param>
    public IReadOnlyList<T> Once<T>(Func<CheckedRig, IEnumerable<T>> find)
    {
        if (!answers.TryGetValue(find, out var known))
            answers[find] = known = find(this).ToList();
        return (IReadOnlyList<T>)known;
    }
}
