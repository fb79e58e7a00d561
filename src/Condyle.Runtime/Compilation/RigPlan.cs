using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Compilation;

/// <summary>Turns a model into planned nodes with their bases and writers. Where several sentences write a node, the one begun last has it.</summary>
internal sealed class RigPlan
{
    private readonly Dictionary<int, PlannedNode> nodes;
    private readonly RestPose rest;
    private readonly Dictionary<PlannedNode, RigChoice> spaces = [];

    private RigPlan(RigModel model)
    {
        Inputs = new InputTable(model);
        Measures = new MeasurePlan(this);
        rest = RestPose.Of(model);
        nodes = model.Nodes.ToDictionary(node => node.Id, node => new PlannedNode(node, RestPose.ChannelsOf(node)));
        foreach (var node in nodes.Values)
            node.HangUnder(Facts.Known(node.Node.Parent, $"What {node.Node.Title} hangs under") is { } parent ? this[parent] : null, rest.PlacementOf(node.Node));
        var turns = new TurnPlan(this, model, rest);
        foreach (var sentence in model.WritingSentences)
        {
            switch (sentence)
            {
                case RigDrive drive: Add(drive); break;
                case RigBlend blend: Add(blend); break;
                case RigTwoBone solver: Add(SolverPlan.Of(solver, this, rest)); break;
                case RigManyBone solver: Add(SolverPlan.Of(solver, this, rest)); break;
                case RigCurve curve: Add(SolverPlan.Of(curve, this, rest)); break;
                case RigAim aim: turns.Add(aim); break;
                case RigTwist twist: turns.Add(twist); break;
                case RigSpace { Parents.Count: > 0 } space: Add(space); break;
            }
        }

        turns.Finish();
        Morphs = new ResponsePlan(RigResponses.Of(model), this).Morphs;
        Ordered = EvaluationOrder.Of(nodes.Values);
        foreach (var solver in Ordered.Select(node => node.Writer).OfType<CopyWriter>().Distinct())
            CheckIsWhole(solver);
        foreach (var node in Ordered)
            node.Settle();
    }

    /// <summary>The nodes, each after all that it needs.</summary>
    public IReadOnlyList<PlannedNode> Ordered { get; }

    /// <summary>The slots of what is set or measured beside the channels.</summary>
    public InputTable Inputs { get; }

    /// <summary>What measures angles.</summary>
    public MeasurePlan Measures { get; }

    /// <summary>The morph targets that something sets, by index.</summary>
    public IReadOnlyList<MorphWriter> Morphs { get; }

    /// <summary>The controls that ride one of several nodes and have nothing else that moves them, each after all that it needs.</summary>
    public IReadOnlyList<(PlannedNode Control, RigChoice Choice)> Riders =>
        [.. Ordered.Where(node => node.Base is not null && node.Writers.Count == 0 && spaces.ContainsKey(node.Base)).Select(node => (node, spaces[node.Base!]))];

    public PlannedNode this[RigNode node] => nodes[node.Id];

    /// <exception cref="RigGeometryException">Something isn't known, or nodes need each other in a loop.</exception>
    public static RigPlan Of(RigModel model) => new(model);

    private void Add(RigDrive drive)
    {
        foreach (var said in drive.Sources)
        {
            if (drive.Target is null || said.Source is null || !said.IsCertain)
                throw new RigGeometryException($"What {drive.Title} follows isn't known.");
            var (target, source) = (this[drive.Target], this[said.Source]);
            var offset = Facts.Known(drive.KeepsOffset, $"Whether {drive.Title} keeps its offset")
                ? rest.WorldOf(said.Source).Inverse() * rest.WorldOf(drive.Target)
                : Affine3d.Identity;
            var channels = DrivenChannels.Of(drive);
            if (said.Way == DriveWay.Matrix)
                target.HoldByMatrix(source, offset);
            else
                target.Write(new DriveWriter(target, source, offset, channels));
        }
    }

    private void Add(RigBlend blend)
    {
        if (blend.SourcesAreOpen)
            throw new RigGeometryException($"The sources of {blend.Title} aren't known.");
        if (blend.Sources.Count == 0)
            return; // an unfinished sentence moves nothing
        if (blend.Node is not null)
            AddLone(blend, this[blend.Node]);
        else if (blend.Chain?.Joints is { } joints)
            AddChain(blend, joints);
        else
            throw new RigGeometryException($"The joints of {blend.Title} aren't known.");
    }

    private void AddLone(RigBlend blend, PlannedNode target) =>
        target.Write(new BlendWriter(target, before: null, [.. blend.Sources.Select(source => new BlendInput(
            this[source.Node ?? throw new RigGeometryException($"A source of {blend.Title} isn't known.")], Before: null, WeightOf(source, blend)))]));

    private void AddChain(RigBlend blend, IReadOnlyList<RigNode> joints)
    {
        var copies = blend.Sources.Select(source => source.Copy is { IsUnknown: false } copy
            ? copy.Joints.ToDictionary(joint => joint.Original!.Id, joint => this[joint])
            : throw new RigGeometryException($"A source of {blend.Title} isn't known.")).ToList();
        var weights = blend.Sources.Select(source => WeightOf(source, blend)).ToList();
        RigNode? before = null;
        foreach (var joint in joints.Where(joint => copies.All(copy => copy.ContainsKey(joint.Id))))
        {
            var sources = copies.Zip(weights, (copy, weight) => new BlendInput(copy[joint.Id], before is null ? null : copy[before.Id], weight)).ToList();
            this[joint].Write(new BlendWriter(this[joint], before is null ? null : this[before], sources));
            before = joint;
        }
    }

    private void Add(CopyWriter? solver)
    {
        foreach (var joint in solver?.Joints ?? [])
            joint.Write(solver!);
    }

    private void Add(RigSpace space)
    {
        var blend = SpaceBlend.Of(space);
        var control = this[space.Control ?? throw new RigGeometryException($"The control of {space.Title} isn't known.")];
        var sources = blend.Parents.Select(parent => new SpaceInput(this[parent.Node], RestOffset.Between(parent.Node, control.Node, keeps: true, rest), parent.Weight)).ToList();
        if (!blend.Rest.Equals(WeightPolynomial.Zero))
            sources.Add(new SpaceInput(control.Parent, rest.PlacementOf(control.Node), blend.Rest));
        var carrier = Add(space.Carrier, parent: null, Affine3d.Identity, new SpaceWriter(sources));
        spaces[carrier] = space.Choice!;
        control.HoldByMatrix(carrier, Affine3d.Identity);
    }

    /// <summary>Adds a node that isn't one of the rig's.</summary>
    public PlannedNode Add(RigNode node, PlannedNode? parent, Affine3d placement, Writer? writer)
    {
        var added = nodes[node.Id] = new PlannedNode(node, Trs.Identity);
        added.HangUnder(parent, placement);
        if (writer is not null)
            added.Write(writer);
        return added;
    }

    private static void CheckIsWhole(CopyWriter solver)
    {
        foreach (var joint in solver.Joints.Skip(1))
        {
            if (joint.IsHeldByMatrix)
                throw new RigGeometryException($"{joint.Node.Title} is a joint of {solver.Title} and follows {joint.Base!.Node.Title} by matrix. It can't do both: remove one of the two sentences.", joint.Node);
        }
    }

    private static WeightPolynomial WeightOf(BlendSource source, RigBlend blend) =>
        Facts.Known(source.Weight, $"The weight of {source.Title} in {blend.Title}");
}
