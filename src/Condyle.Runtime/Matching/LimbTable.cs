using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Runtime.Compilation;

namespace Condyle.Runtime.Matching;

/// <summary>The limbs of a rig that can be matched, and the rig as the reference evaluates it. It never changes, so threads can share it.</summary>
internal sealed class LimbTable
{
    private readonly Dictionary<RigNode, int> controls;
    private readonly Dictionary<RigNode, int> joints;

    public LimbTable(RigModel model)
    {
        Model = model;
        Rest = RestPose.Of(model);
        Sentences = new RigSentences(model, Rest);
        controls = Numbered(model.Nodes.Where(node => node.Kind == NodeKind.Control));
        joints = Numbered(model.Nodes.Where(node => node.IsExported));
        Tree = new ControlTree(this);
        var plans = new List<LimbPlan>();
        foreach (var blend in model.Blends)
        {
            if (PlanOf(blend, plans.Count) is { } plan && plan.Joints.All(joint => Writes(blend, joint.Original)))
                plans.Add(plan);
        }

        Plans = plans;
        Limbs = [.. plans.Select(plan => plan.Outside)];
        Names = NameTable.Of("limb", plans.Select(plan => plan.Joints.Select(joint => NameOf(joint.Original))));
    }

    public RigModel Model { get; }

    public RestPose Rest { get; }

    public RigSentences Sentences { get; }

    public ControlTree Tree { get; }

    public IReadOnlyList<LimbPlan> Plans { get; }

    public IReadOnlyList<CompiledLimb> Limbs { get; }

    /// <summary>Finds a limb by each of its joints.</summary>
    public NameTable Names { get; }

    /// <summary>The controls in the order of <see cref="CompiledRig.Controls"/>.</summary>
    public IReadOnlyCollection<RigNode> Controls => controls.Keys;

    /// <summary>The control that carries a node; none where it is none, or more than one.</summary>
    public Handle? HandleOf(RigNode? node) => Handle.Of(node, Sentences.Writers, controls);

    /// <summary>The handles of a curve's nodes, each control once.</summary>
    public IEnumerable<Handle> HandlesOf(SolvedCurve curve) => curve.AtRest.Nodes.Select(HandleOf).OfType<Handle>().DistinctBy(handle => handle.Control);

    /// <summary>The switch by which a curve's chain stretches, where it does nothing else.</summary>
    public RigSwitch? StretchOf(SolvedCurve curve) => StretchOf(curve.AtRest.Stretch, Model.Curves.Find(said => said.Copy == curve.Copy));

    private LimbPlan? PlanOf(RigBlend blend, int index)
    {
        var copies = blend.Sources.Select(source => source.Copy).OfType<RigCopy>().ToList();
        foreach (var solved in copies)
        {
            foreach (var turned in copies.Where(copy => copy != solved))
            {
                if (JointsOf(solved, turned) is { } joints && SolverOf(solved, joints[0].Turner) is { } solver)
                    return new LimbPlan(Outside(index, solver, joints), solver, BlendEnds.For(Model, blend, solved), BlendEnds.For(Model, blend, turned), joints);
            }
        }

        return null;
    }

    private static CompiledLimb Outside(int index, LimbSolver solver, IReadOnlyList<LimbJoint> joints) =>
        new(index, NameOf(joints[0].Original), [.. joints.Select(joint => joint.Index)], solver.Goal.Index, solver.Pole?.Index, [.. joints.Select(joint => joint.Turner.Index)])
        {
            Through = [.. solver.Through.Select(handle => handle.Index)],
        };

    /// <summary>What solves a copy, where controls move what it goes by.</summary>
    private LimbSolver? SolverOf(RigCopy copy, Handle turner) => Handle.WriterOf(copy.Joints[0], Channels.Turn, Sentences.Writers) switch
    {
        SolvedTwoBone two when HandleOf(two.Goal) is { } goal => new TwoBoneLimb(two, goal, PoleOf(two.Pole, goal), StretchOf(Facts.Known(two.Solver.Stretch, $"How {two.Solver.Title} stretches")?.Weight, two.Solver)),
        SolvedManyBone many when HandleOf(many.Goal) is { } goal => new ManyBoneLimb(many, goal, PoleOf(many.Pole, goal)),
        SolvedCurve curve when ThroughOf(curve, turner) is { Count: > 0 } through => new CurvedLimb(curve, through, StretchOf(curve)),
        _ => null,
    };

    private Handle? PoleOf(RigNode? pole, Handle goal) => HandleOf(pole) is { } found && found.Control != goal.Control ? found : null;

    /// <summary>The handles of a curve's nodes, but for those that carry the limb, whatever it follows.</summary>
    private List<Handle> ThroughOf(SolvedCurve curve, Handle turner) =>
        [.. HandlesOf(curve).Where(handle => !Tree.IsUnder(turner.Index, handle.Index))];

    private List<LimbJoint>? JointsOf(RigCopy solved, RigCopy turned)
    {
        var found = new List<LimbJoint>();
        foreach (var joint in solved.Joints)
        {
            if (turned.Joints.Find(other => other.Original == joint.Original) is not { } other
                || Handle.WriterOf(other, Channels.Turn, Sentences.Writers) is not ChannelDrive
                || Handle.Of(other, Sentences.Writers, controls) is not { } turner)
                return null;
            found.Add(new(joints[joint.Original!], joint, other, turner));
        }

        return found.Select(joint => joint.Turner.Control).Distinct().Count() < found.Count ? null : found;
    }

    // A switch that does more than stretch this limb would move the rest of the rig too.
    private RigSwitch? StretchOf(WeightPolynomial? weight, RigElement? solver)
    {
        if (weight is not { Switches: [var id] } || weight.Terms.Any(term => term.Factors.Length > 1))
            return null;
        var others = Model.Blends.SelectMany(blend => blend.Sources).Select(source => Facts.Known(source.Weight, "A weight"))
            .Concat(Model.TwoBones.Where(other => other != solver).Select(other => Facts.Known(other.Stretch, "A stretch")?.Weight))
            .Concat(Model.Curves.Where(other => other != solver).Select(curve => Facts.Known(curve.Stretch, "A stretch")));
        return others.Any(other => other?.Switches.Contains(id) == true) || Model.Responses.Exists(response => response.Source?.Id == id)
            ? null
            : Model.Switches.Find(given => given.Id == id);
    }

    private bool Writes(RigBlend blend, RigNode joint) => Handle.WriterOf(joint, Channels.Turn, Sentences.Writers) is BlendedChain { Blend: var writing } && writing == blend;

    private static Dictionary<RigNode, int> Numbered(IEnumerable<RigNode> nodes) => nodes.Index().ToDictionary(node => node.Item, node => node.Index);

    public static string NameOf(RigNode node) => Facts.Known(node.Name, "The name of a node");
}
