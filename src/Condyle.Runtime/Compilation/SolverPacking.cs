using Condyle.Evaluation;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Gathers solvers of copies into the arrays of a batch.</summary>
internal sealed class SolverPacking(Slots slots, WeightTable weights)
{
    public ScaledLimb Scaled(TwoBoneWriter solver)
    {
        var joints = solver.Joints;
        return new(
            AimOf(solver),
            BendOf(solver),
            Slots.WorldOf(joints[0].Stand.Root),
            Pack.Single(joints[0].Stand.Offset),
            Pack.Single(joints[1].Fixed),
            Pack.Single(joints[2].Fixed),
            Again(joints[1]),
            Again(joints[2]),
            slots.ChannelsOf(joints[0], solver),
            slots.ChannelsOf(joints[1], solver),
            slots.ChannelsOf(joints[2], solver));
    }

    public RigidLimb Rigid(TwoBoneWriter solver)
    {
        var joints = solver.Joints;
        var (first, second) = (joints[1].Fixed.Origin, joints[1].Fixed.Turn(joints[2].Fixed.Origin));
        var plane = solver.Bend.In(Affine3d.Identity);
        var near = SolverEnds.Near * (first.Length + second.Length);
        return new(
            AimOf(solver),
            BendOf(solver),
            Slots.WorldOf(joints[0].Stand.Root),
            Pack.Rigid(joints[0].Stand.Offset),
            BoneOf(first),
            BoneOf(second),
            (float)(first + second).Length,
            TurnIn(first, Quaterniond.Identity),
            TurnIn(second, joints[1].Fixed.Rotation),
            slots.FrameOf(joints[0]),
            slots.FrameOf(joints[1]),
            slots.FrameOf(joints[2]));

        LimbBone BoneOf(Vector3d bone)
        {
            var isBone = bone.Length > near;
            var (x, y, z) = isBone ? (Vector3d.Dot(bone, plane.Line), Vector3d.Dot(bone, plane.Side), Vector3d.Dot(bone, plane.Normal)) : (1, 0, 0);
            var over = isBone ? 1 / bone.Length : 0;
            return new((new Vector3d(x, y, z) * (isBone ? over : 1)).ToSingle(), (float)bone.Length, (float)over);
        }

        // The kernels' frame of a bone has the third axis nearest to the plane's normal, the reference's the second.
        System.Numerics.Quaternion TurnIn(Vector3d bone, Quaterniond joint)
        {
            var frame = plane.Bone(bone.Length > near ? bone : Vector3d.Zero);
            return (Quaterniond.FromAxes(frame.Rotate(Vector3d.UnitX), -frame.Rotate(Vector3d.UnitZ), frame.Rotate(Vector3d.UnitY)).Inverse * joint).ToSingle();
        }
    }

    public ManyBoneBatch ManyBones(IReadOnlyList<ManyBoneWriter> solvers) => new()
    {
        Chains = ChainsOf(solvers),
        Ends = EndsOf(solvers),
        Tolerances = [.. solvers.Select(solver => (float)solver.Options.Tolerance)],
        Rounds = [.. solvers.Select(solver => solver.Options.Rounds)],
        Cones = [.. solvers.Select(solver => (solver.Options.Cones ?? []).Select(cone => new BoneCone((float)Math.Cos(cone), (float)Math.Sin(cone))).ToArray())],
    };

    public CurveChainBatch CurveChains(IReadOnlyList<CurveChainWriter> curves)
    {
        var joints = curves.SelectMany(curve => curve.Rest.Joints).ToList();
        return new()
        {
            Chains = ChainsOf(curves),
            NodeEnds = EndsOf(curves.Select(curve => curve.Nodes.Count)),
            Nodes = [.. curves.SelectMany(curve => curve.Nodes).Select(node => node.WorldSlot)],
            Starts = EndsOf([.. curves.Select(curve => curve.Rest.Start)]),
            Ends = EndsOf([.. curves.Select(curve => curve.Rest.End)]),
            Lengths = [.. curves.Select(curve => (float)curve.Rest.Length)],
            ChainLengths = [.. curves.Select(curve => (float)curve.Rest.ChainLength)],
            Stretches = [.. curves.Select(curve => weights.SlotOf(curve.Rest.Stretch))],
            At = [.. joints.Select(joint => (float)joint.At)],
            Offsets = Pack.Vectors([.. joints.Select(joint => joint.Offset)]),
            Turns = Pack.Rotations([.. joints.Select(joint => joint.Turn)]),
            Bones = Pack.Vectors([.. joints.Select(joint => joint.Bone)]),
        };
    }

    /// <summary>The room that solvers need while they work.</summary>
    public static RoomSizes RoomOf(IReadOnlyList<Writer> writers)
    {
        var joints = writers.OfType<CopyWriter>().Select(solver => solver.Joints.Count).DefaultIfEmpty(0).Max();
        var nodes = writers.OfType<CurveChainWriter>().Select(curve => curve.Nodes.Count).DefaultIfEmpty(0).Max();
        return new(joints, nodes == 0 ? 0 : ((nodes - 1) * FramedCurve.PiecesASpan) + 1, nodes);
    }

    private LimbAim AimOf(TwoBoneWriter solver) => new(
        solver.Goal.WorldSlot,
        (solver.Pole ?? solver.Goal).WorldSlot,
        solver.TipInGoal.ToSingle(),
        weights.SlotOf(solver.Options.Stretch),
        (float)solver.Options.Most,
        (float)solver.Options.Softness,
        solver.Turner ?? 0,
        (float)solver.Options.Unturned);

    private static LimbBend BendOf(TwoBoneWriter solver) => new(solver.Bend.Line.ToSingle(), solver.Bend.Side.ToSingle());

    private static System.Numerics.Vector3 Again(PlannedNode joint) => joint.Fixed.Inverse().Turn(joint.Fixed.Origin).ToSingle();

    private CopyChains ChainsOf(IReadOnlyList<CopyWriter> solvers)
    {
        var joints = solvers.SelectMany(solver => solver.Joints).ToList();
        return new()
        {
            Bases = [.. solvers.Select(solver => Slots.WorldOf(solver.Joints[0].Stand.Root))],
            Roots = Pack.Frames([.. solvers.Select(solver => solver.Joints[0].Stand.Offset)]),
            Ends = EndsOf(solvers.Select(solver => solver.Joints.Count)),
            Placements = Pack.Frames([.. joints.Select(joint => joint.Fixed)]),
            Doublings = Pack.Vectors([.. joints.Select(joint => joint.Fixed.Inverse().Turn(joint.Fixed.Origin))]),
            Channels = [.. solvers.SelectMany(solver => solver.Joints.Select(joint => slots.ChannelsOf(joint, solver)))],
        };
    }

    private static SolverEnds EndsOf(IReadOnlyList<ReachingWriter> solvers) => new()
    {
        Goals = [.. solvers.Select(solver => solver.Goal.WorldSlot)],
        Poles = [.. solvers.Select(solver => solver.Pole?.WorldSlot ?? SolverEnds.NoPole)],
        Lines = Pack.Vectors([.. solvers.Select(solver => solver.Bend.Line)]),
        Sides = Pack.Vectors([.. solvers.Select(solver => solver.Bend.Side)]),
        TipsInGoals = Pack.Rotations([.. solvers.Select(solver => solver.TipInGoal)]),
    };

    private static CurveEnds EndsOf(IReadOnlyList<CurveEnd> ends) => new()
    {
        Along = Pack.Vectors([.. ends.Select(end => end.Along)]),
        Across = Pack.Vectors([.. ends.Select(end => end.Across)]),
    };

    private static int[] EndsOf(IEnumerable<int> counts)
    {
        var end = 0;
        return [.. counts.Select(count => end += count)];
    }
}
