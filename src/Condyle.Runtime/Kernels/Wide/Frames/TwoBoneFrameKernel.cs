using System.Runtime.CompilerServices;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Two-bone IK without scale on the way: the joints' frames are those of the solved bones.</summary>
internal static class TwoBoneFrameKernel
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Run(TwoBoneFrameBatch batch, Buffers pose)
    {
        var limbs = Rigs.Of(batch.Limbs);
        var frames = pose.Frames.Each<RigidLimb>();
        for (var i = 0; i < limbs.Length; i += Rigs.Step)
        {
            ref readonly var item = ref limbs[i];
            var root = frames[item.Base] * Each<RigidLimb>.Rigid(item.Root);
            var limb = Unsolved(item, root.Turn);
            var aim = AimOf(item.Aim, batch.Kind, pose);
            limb.Solve(aim, batch.Kind, root.Origin);
            Write(item, limb, root.Origin, pose);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static WideLimb Unsolved(in RigidLimb item, in WideTurn root)
    {
        var line = root.Rotate(Each<RigidLimb>.Vector(item.Bend.Line));
        var side = root.Rotate(Each<RigidLimb>.Vector(item.Bend.Side));
        return new()
        {
            First = root.Rotate(Each<RigidLimb>.Vector(item.First)),
            Second = root.Rotate(Each<RigidLimb>.Vector(item.Second)),
            FirstLength = Each<RigidLimb>.Number(item.FirstLength),
            SecondLength = Each<RigidLimb>.Number(item.SecondLength),
            Reach = Each<RigidLimb>.Number(item.Reach),
            Plane = new() { Line = line, Side = side, Normal = WideVector.Cross(line, side) },
            FirstTurn = Each<RigidLimb>.Turn(item.FirstTurn),
            SecondTurn = Each<RigidLimb>.Turn(item.SecondTurn),
        };
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static WideAim AimOf(in LimbAim aim, LimbKind kind, Buffers pose)
    {
        var frames = pose.Frames.Each<RigidLimb>();
        return new()
        {
            Goal = frames[aim.Goal].Origin,
            Pole = frames[aim.Pole].Origin,
            Stretch = pose.Weights.Each<RigidLimb>()[aim.Stretch],
            Most = Each<RigidLimb>.Number(aim.Most),
            Softness = Each<RigidLimb>.Number(aim.Softness),
            Turn = kind.IsTurned ? pose.Inputs.Each<RigidLimb>()[aim.Turner] - Each<RigidLimb>.Number(aim.Unturned) : Lanes.Create(0f),
        };
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Write(in RigidLimb item, in WideLimb limb, in WideVector at, Buffers pose)
    {
        var frames = pose.Frames.Each<RigidLimb>();
        var middle = limb.FirstTurn.Rotate(Each<RigidLimb>.Vector(item.First) * limb.Factor, at);
        var tip = limb.SecondTurn.Rotate(Each<RigidLimb>.Vector(item.Tip) * limb.Factor, middle);
        frames[item.RootFrame] = new() { Origin = at, Turn = limb.FirstTurn };
        frames[item.MiddleFrame] = new() { Origin = middle, Turn = limb.SecondTurn };
        frames[item.TipFrame] = new() { Origin = tip, Turn = (frames[item.Aim.Goal].Turn * Each<RigidLimb>.Turn(item.Aim.TipInGoal)).Trued() };
    }
}
