using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Two-bone IK without scale on the way: the joints' frames are those of the solved bones.</summary>
/// <remarks>What is handed to a method that isn't inlined lies in memory from then on, so the usual way has only one, and does nothing after it.</remarks>
internal static class TwoBoneFrameKernel
{
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Run(TwoBoneFrameBatch batch, Buffers pose)
    {
        var kind = batch.Kind;
        var limbs = Rigs.Of(batch.Limbs);
        for (var i = 0; i < limbs.Length; i += Rigs.Step)
        {
            ref readonly var item = ref limbs[i];
            var line = LineOf(item, kind, pose);
            var plane = WidePlane.Facing(line.ToGoal, line.Distance, line.ToPole, line.Near, line.FarOut, out var isThere);
            if (kind.IsTurned || !Rigs.Every(isThere))
                SolveApart(item, kind, pose);
            else
                Write(item, kind, plane, Solved(item, line, kind, pose), line.Root, pose);
        }
    }

    /// <summary>Solves limbs whose plane isn't given by goal and pole alone.</summary>
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void SolveApart(in RigidLimb item, LimbKind kind, Buffers pose)
    {
        var line = LineOf(item, kind, pose);
        var plane = Unsolved(item, pose).Towards(line.ToGoal, line.Distance, line.ToPole, line.Near, line.FarOut);
        if (kind.IsTurned)
            plane = plane.Turned((pose.Inputs.Each<RigidLimb>()[item.Aim.Turner] - Each<RigidLimb>.Number(item.Aim.Unturned)) * Lanes.Create(MathF.PI / 180));
        Write(item, kind, plane, Solved(item, line, kind, pose), line.Root, pose);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static WideLine LineOf(in RigidLimb item, LimbKind kind, Buffers pose)
    {
        var frames = pose.Frames.Each<RigidLimb>();
        var carrier = frames[item.Base];
        var root = carrier.Turn.Rotate(Each<RigidLimb>.Vector(item.Root.Origin), carrier.Origin);
        var goal = frames[item.Aim.Goal].Origin;
        var toGoal = goal - root;
        return new()
        {
            Root = root,
            ToGoal = toGoal,
            ToPole = kind.HasPole ? frames[item.Aim.Pole].Origin - root : WideVector.Zero,
            Distance = toGoal.Length,
            FarOut = goal.Span + root.Span,
            Near = (Each<RigidLimb>.Number(item.FirstBone.Length) + Each<RigidLimb>.Number(item.SecondBone.Length)) * Lanes.Create(SolverEnds.Near),
        };
    }

    /// <summary>The plane of the unsolved limb.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static WidePlane Unsolved(in RigidLimb item, Buffers pose)
    {
        var root = pose.Frames.Each<RigidLimb>()[item.Base].Turn * Each<RigidLimb>.Turn(item.Root.Turn);
        var line = root.Rotate(Each<RigidLimb>.Vector(item.Bend.Line));
        var side = root.Rotate(Each<RigidLimb>.Vector(item.Bend.Side));
        return new() { Line = line, Side = side, Normal = WideVector.Cross(line, side) };
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static SolvedLimb Solved(in RigidLimb item, in WideLine line, LimbKind kind, Buffers pose)
    {
        var limb = new WideLimb() { First = BoneOf(item.FirstBone), Second = BoneOf(item.SecondBone), Reach = Each<RigidLimb>.Number(item.Reach) };
        return limb.Solve(line.Distance, line.FarOut, kind, kind.IsPlain ? default : new()
        {
            Stretch = pose.Weights.Each<RigidLimb>()[item.Aim.Stretch],
            Most = Each<RigidLimb>.Number(item.Aim.Most),
            Softness = Each<RigidLimb>.Number(item.Aim.Softness),
        });
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static WideBone BoneOf(in LimbBone bone) =>
        new() { Direction = Each<RigidLimb>.Vector(bone.Direction), Length = Each<RigidLimb>.Number(bone.Length), Over = Each<RigidLimb>.Number(bone.Over) };

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Write(in RigidLimb item, LimbKind kind, in WidePlane plane, in SolvedLimb limb, in WideVector at, Buffers pose)
    {
        var frames = pose.Frames.Each<RigidLimb>();
        var middle = plane.Out(limb.First * (Each<RigidLimb>.Number(item.FirstBone.Length) * limb.Factor)) + at;
        var tip = plane.Out(limb.Second * (Each<RigidLimb>.Number(item.SecondBone.Length) * limb.Factor)) + middle;
        var frame = plane.LongFrame(out var squared);
        var first = WideBone.Frame(frame, squared, limb.First, kind.Leans) * Each<RigidLimb>.Turn(item.FirstTurn);
        var second = WideBone.Frame(frame, squared, limb.Second, kind.Leans) * Each<RigidLimb>.Turn(item.SecondTurn);
        frames[item.RootFrame] = new() { Origin = at, Turn = first };
        frames[item.MiddleFrame] = new() { Origin = middle, Turn = second };
        frames[item.TipFrame] = new() { Origin = tip, Turn = (frames[item.Aim.Goal].Turn * Each<RigidLimb>.Turn(item.Aim.TipInGoal)).Trued() };
    }

    /// <summary>From the root to what the limb reaches and faces.</summary>
    private struct WideLine
    {
        public WideVector Root;
        public WideVector ToGoal;
        public WideVector ToPole;
        public Lane Distance;
        public Lane FarOut;
        public Lane Near;
    }
}
