using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Two-bone IK without scale on the way: the joints' frames are those of the solved bones.</summary>
internal static class TwoBoneFrameKernel
{
    public static void Run(TwoBoneFrameBatch batch, Buffers pose)
    {
        foreach (ref readonly var item in batch.Limbs.AsSpan())
            Solve(item, pose);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Solve(in RigidLimb item, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var root = frames[item.Base] * WideRigid.All(item.Root);
        var limb = Unsolved(item, root.Turn);
        limb.Solve(item.Aim, root.Origin, pose);

        root.Turn = limb.FirstTurn;
        var middle = new WideRigid { Origin = root.Turn.Rotate(WideVector.All(item.First) * limb.Factor, root.Origin), Turn = limb.SecondTurn };
        frames[item.RootFrame] = root;
        frames[item.MiddleFrame] = middle;
        frames[item.TipFrame] = new()
        {
            Origin = middle.Turn.Rotate(WideVector.All(item.Tip) * limb.Factor, middle.Origin),
            Turn = (frames[item.Aim.Goal].Turn * WideTurn.All(item.Aim.TipInGoal)).Trued(),
        };
    }

    private static WideLimb Unsolved(in RigidLimb item, in WideTurn root)
    {
        var line = root.Rotate(WideVector.All(item.Bend.Line));
        var side = root.Rotate(WideVector.All(item.Bend.Side));
        return new()
        {
            First = root.Rotate(WideVector.All(item.First)),
            Second = root.Rotate(WideVector.All(item.Second)),
            Plane = new() { Line = line, Side = side, Normal = WideVector.Cross(line, side) },
            FirstTurn = WideTurn.All(item.FirstTurn),
            SecondTurn = WideTurn.All(item.SecondTurn),
        };
    }
}
