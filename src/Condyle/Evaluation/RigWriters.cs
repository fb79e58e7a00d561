using System.Diagnostics.CodeAnalysis;
using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>Writes a node's channels.</summary>
internal interface IChannelWriter
{
    Trs ChannelsOf(RigNode node, PoseFrames frames);
}

/// <summary>Writes a node's channels so that it stands in a frame that doesn't depend on what it hangs under.</summary>
internal interface IFrameWriter : IChannelWriter
{
    /// <summary>The frame in the world; none where it leaves the node at rest.</summary>
    Affine3d? FrameOf(RigNode node, PoseFrames frames);
}

/// <summary>Writes a node's placement.</summary>
internal interface IPlacementWriter
{
    Affine3d PlacementOf(RigNode node, PoseFrames frames);
}

/// <summary>Which sentences of the rig write a node's channels and which its placement. Where several do, the one begun last has it.</summary>
internal sealed class RigWriters
{
    private readonly Dictionary<int, ChannelOwners<IChannelWriter>> channels = [];
    private readonly Dictionary<int, IPlacementWriter> placements = [];

    private RigWriters()
    {
    }

    public IReadOnlyList<(IChannelWriter Writer, Channels Has)> ChannelsOf(RigNode node) => channels.TryGetValue(node.Id, out var owners) ? owners : [];

    public IPlacementWriter? PlacementOf(RigNode node) => placements.TryGetValue(node.Id, out var writer) ? writer : null;

    public static RigWriters Of(RigModel model, RestPose rest)
    {
        var writers = new RigWriters();
        foreach (var sentence in model.WritingSentences)
        {
            switch (sentence)
            {
                case RigDrive drive: writers.Add(drive); break;
                case RigBlend { Sources.Count: > 0 } blend: writers.Add(blend); break;
                case RigTwoBone solver: writers.Add(solver); break;
                case RigManyBone solver: writers.Add(solver); break;
                case RigCurve curve: writers.Add(curve, rest); break;
                case RigAim aim: writers.Add(aim, rest); break;
                case RigTwist twist: writers.Add(twist, model, rest); break;
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
            var (written, scales) = DrivenChannels.Of(drive);
            if (said.Way == DriveWay.Matrix)
                placements[target.Id] = new MatrixDrive(source, keeps);
            else
                Write(target, new ChannelDrive(source, keeps, scales), written);
        }
    }

    private void Add(RigBlend blend)
    {
        if (blend.SourcesAreOpen)
            throw new RigGeometryException($"The sources of {blend.Title} aren't known.");
        if (blend.Node is { } node)
            Write(node, new BlendedNode(blend));
        if (blend.Chain is null)
            return;
        var blended = new BlendedChain(blend);
        foreach (var joint in blended.Joints)
            Write(joint, blended);
    }

    private void Add(RigTwoBone solver)
    {
        if (Ends(solver, out var copy, out var goal, out var pole) && copy.Joints.Count == 3)
            Solve(copy, new SolvedTwoBone(solver, goal, pole));
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

    private void Add(RigAim aim, RestPose rest)
    {
        if (AimRest.Of(aim, rest) is { } atRest)
            Write(atRest.Node, new AimedNode(atRest), Channels.Turn);
    }

    private void Add(RigTwist twist, RigModel model, RestPose rest)
    {
        if (TwistRest.Of(twist, model, rest) is not { } atRest)
            return;
        var shared = new SharedTwist(atRest);
        foreach (var joint in atRest.Joints)
            Write(joint.Node, shared, Channels.Turn);
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
            Write(joint, solver);
    }

    private void Write(RigNode node, IChannelWriter writer, Channels written = Channels.All)
    {
        if (!channels.TryGetValue(node.Id, out var owners))
            channels[node.Id] = owners = new();
        owners.Add(writer, written);
    }
}
