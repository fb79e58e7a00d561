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

    public IReadOnlyList<LimbPlan> Plans { get; }

    public IReadOnlyList<CompiledLimb> Limbs { get; }

    /// <summary>Finds a limb by each of its joints.</summary>
    public NameTable Names { get; }

    /// <summary>The controls in the order of <see cref="CompiledRig.Controls"/>.</summary>
    public IReadOnlyCollection<RigNode> Controls => controls.Keys;

    /// <summary>The control that carries a node; none where it is none, or more than one.</summary>
    public Handle? HandleOf(RigNode? node) => Handle.Of(node, Sentences.Writers, controls);

    private LimbPlan? PlanOf(RigBlend blend, int index)
    {
        var copies = blend.Sources.Select(source => source.Copy).OfType<RigCopy>().ToList();
        var solvers = copies.Select(copy => copy.Joints is [var root, _, _] ? Handle.WriterOf(root, Channels.Turn, Sentences.Writers) as SolvedTwoBone : null);
        if (solvers.FirstOrDefault(solver => solver is not null) is not { } solver || Handle.Of(solver.Goal, Sentences.Writers, controls) is not { } goal)
            return null;
        var (copy, turned) = copies.Where(copy => copy != solver.Copy).Select(copy => (copy, JointsOf(solver.Copy, copy))).FirstOrDefault(found => found.Item2 is not null);
        if (turned is null || turned.Select(joint => joint.Turner.Control).Distinct().Count() < turned.Count)
            return null;
        var pole = Handle.Of(solver.Pole, Sentences.Writers, controls) is { } found && found.Control != goal.Control ? found : null;
        var outside = new CompiledLimb(index, NameOf(turned[0].Original), [.. turned.Select(joint => joint.Index)], goal.Index, pole?.Index, [.. turned.Select(joint => joint.Turner.Index)]);
        return new LimbPlan(outside, solver.Solver, goal, solver.Pole, pole, StretchOf(solver.Solver), BlendEnds.For(Model, blend, solver.Copy), BlendEnds.For(Model, blend, copy), turned);
    }

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

        return found;
    }

    // A switch that does more than stretch this limb would move the rest of the rig too.
    private RigSwitch? StretchOf(RigTwoBone solver)
    {
        if (Facts.Known(solver.Stretch, $"How {solver.Title} stretches")?.Weight is not { Switches: [var id] } weight || weight.Terms.Any(term => term.Factors.Length > 1))
            return null;
        var others = Model.Blends.SelectMany(blend => blend.Sources).Select(source => Facts.Known(source.Weight, "A weight"))
            .Concat(Model.TwoBones.Where(other => other != solver).Select(other => Facts.Known(other.Stretch, "A stretch")?.Weight))
            .Concat(Model.Curves.Select(curve => Facts.Known(curve.Stretch, "A stretch")));
        return others.Any(other => other?.Switches.Contains(id) == true) || Model.Responses.Exists(response => response.Source?.Id == id)
            ? null
            : Model.Switches.Find(given => given.Id == id);
    }

    private bool Writes(RigBlend blend, RigNode joint) => Handle.WriterOf(joint, Channels.Turn, Sentences.Writers) is BlendedChain { Blend: var writing } && writing == blend;

    private static Dictionary<RigNode, int> Numbered(IEnumerable<RigNode> nodes) => nodes.Index().ToDictionary(node => node.Item, node => node.Index);

    public static string NameOf(RigNode node) => Facts.Known(node.Name, "The name of a node");
}
