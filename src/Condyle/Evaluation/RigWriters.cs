using System.Diagnostics.CodeAnalysis;
using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>Writes a node's channels.</summary>
internal interface IChannelWriter
{
    Trs ChannelsOf(RigNode node, PoseFrames frames);
}

/// <summary>Writes a node's placement.</summary>
internal interface IPlacementWriter
{
    Affine3d PlacementOf(RigNode node, PoseFrames frames);
}

/// <summary>Which sentence of the rig writes a node's channels and which its placement. Where several do, the one begun last has it.</summary>
internal sealed class RigWriters
{
    private readonly Dictionary<int, IChannelWriter> channels = [];
    private readonly Dictionary<int, IPlacementWriter> placements = [];

    private RigWriters()
    {
    }

    public IChannelWriter? ChannelsOf(RigNode node) => channels.TryGetValue(node.Id, out var writer) ? writer : null;

    public IPlacementWriter? PlacementOf(RigNode node) => placements.TryGetValue(node.Id, out var writer) ? writer : null;

    public static RigWriters Of(RigModel model, RestPose rest)
    {
        var writers = new RigWriters();
        var sentences = model.Drives.Cast<RigElement>().Concat(model.Blends).Concat(model.TwoBones).Concat(model.ManyBones).Concat(model.Curves).Concat(model.Spaces).OrderBy(sentence => sentence.Id);
        foreach (var sentence in sentences)
        {
            switch (sentence)
            {
                case RigDrive drive: writers.Add(drive); break;
                case RigBlend { Sources.Count: > 0 } blend: writers.Add(blend); break;
                case RigTwoBone solver: writers.Add(solver); break;
                case RigManyBone solver: writers.Add(solver); break;
                case RigCurve curve: writers.Add(curve, rest); break;
                case RigSpace { Parents.Count: > 0, Control: { } control } space: writers.placements[control.Id] = SpaceBlend.Of(space); break;
            }
        }

        return writers;
    }

    private void Add(RigDrive drive)
    {
        foreach (var said in drive.Sources)
        {
            if (drive.Target is not { } target || said.Source is not { } source || !said.IsCertain || !drive.KeepsOffset.TryKnown(out var keeps))
                throw new RigGeometryException($"What {drive.Title} follows isn't known.");
            if (said.Way == DriveWay.Matrix)
                placements[target.Id] = new MatrixDrive(source, keeps);
            else if (drive.WritesScale.TryKnown(out var scales))
                channels[target.Id] = new ChannelDrive(source, keeps, scales);
            else
                throw new RigGeometryException($"Whether {drive.Title} writes scale isn't known.");
        }
    }

    private void Add(RigBlend blend)
    {
        if (blend.SourcesAreOpen)
            throw new RigGeometryException($"The sources of {blend.Title} aren't known.");
        if (blend.Node is { } node)
            channels[node.Id] = new BlendedNode(blend);
        if (blend.Chain is null)
            return;
        var blended = new BlendedChain(blend);
        foreach (var joint in blended.Joints)
            channels[joint.Id] = blended;
    }

    private void Add(RigTwoBone solver)
    {
        if (Ends(solver, out var copy, out var goal, out var pole) && copy.Joints.Count == 3)
            Solve(copy, new SolvedTwoBone(solver, copy, goal, pole));
    }

    private void Add(RigManyBone solver)
    {
        if (Ends(solver, out var copy, out var goal, out var pole) && copy.Joints.Count >= 2)
            Solve(copy, new SolvedManyBone(solver, copy, goal, pole));
    }

    private void Add(RigCurve curve, RestPose rest)
    {
        if (CurveRest.Of(curve, rest) is { } atRest)
            Solve(curve.Copy!, new SolvedCurve(atRest, curve.Copy!));
    }

    private static bool Ends(RigSolver solver, out RigCopy copy, [NotNullWhen(true)] out RigNode? goal, out RigNode? pole)
    {
        if (solver.Copy is not { IsUnknown: false } known || !solver.Goal.TryKnown(out goal) || !solver.Pole.TryKnown(out pole))
            throw new RigGeometryException($"The copy, the goal or the pole of {solver.Title} isn't known.");
        copy = known;
        return goal is not null;
    }

    private void Solve(RigCopy copy, IChannelWriter solver)
    {
        foreach (var joint in copy.Joints)
            channels[joint.Id] = solver;
    }
}
