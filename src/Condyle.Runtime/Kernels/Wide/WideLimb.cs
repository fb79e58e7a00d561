using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>A limb of two bones in the world, for each of several rigs: how its solver finds it, then how it is solved.</summary>
internal struct WideLimb
{
    /// <summary>From root to middle joint.</summary>
    public WideVector First;

    /// <summary>From middle joint to tip.</summary>
    public WideVector Second;

    /// <summary>The plane in which it bends.</summary>
    public WidePlane Plane;

    /// <summary>How the root is turned; before it is solved, from the frame of the first bone in its plane.</summary>
    public WideTurn FirstTurn;

    /// <summary>How the middle joint is turned; before it is solved, from that of the second.</summary>
    public WideTurn SecondTurn;

    /// <summary>How many times as long its bones become.</summary>
    public Lane Factor;

    /// <summary>Solves it.</summary>
    /// <param name="aim">What it reaches and faces.</param>
    /// <param name="root">Where its root is in the world.</param>
    /// <param name="pose">Where its goal and its pole are.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public void Solve(in LimbAim aim, in WideVector root, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var goal = frames[aim.Goal].Origin;
        var toGoal = goal - root;
        var (first, second) = (First.Length, Second.Length);
        var length = first + second;
        var near = length * Lanes.Create(SolverEnds.Near);
        var after = Plane.Towards(toGoal, aim.HasPole ? frames[aim.Pole].Origin - root : WideVector.Zero, near);
        if (aim.Turner != LimbAim.NoTurner)
            after = after.Turned((pose.Inputs.Wide(aim.Turner) - Lanes.Create(aim.Unturned)) * Lanes.Create(MathF.PI / 180));

        var atRest = (First + Second).Length;
        var distance = WideReach.Settle(toGoal.Length, atRest, goal.Length + root.Length + length);
        var reach = WideReach.Of(aim, pose.Weights.Wide(aim.Stretch), distance, atRest, first, second);
        var bone = Bone(first, second, after, reach, near);
        var other = WideVector.MultiplyAdd(after.Line, reach.Distance, -bone);
        var isElsewhere = Lanes.OnesComplement(Lanes.Equals(reach.Distance, atRest));
        if (!Rigs.Every(isElsewhere))
        {
            bone = WideVector.Choose(isElsewhere, bone, Plane.Brought(First, after));
            other = WideVector.Choose(isElsewhere, other, Plane.Brought(Second, after));
        }

        FirstTurn = (after.Bone(Lasting(bone, first, near)) * FirstTurn).Trued();
        SecondTurn = (after.Bone(Lasting(other, second, near)) * SecondTurn).Trued();
        Factor = reach.Factor;
    }

    /// <summary>A bone's frame in its plane; a bone of no length takes the line's.</summary>
    public static WideTurn Frame(in WidePlane plane, in WideVector bone, Lane near) => plane.Bone(Lasting(bone, bone.Length, near));

    /// <summary>The first bone of the triangle in its plane, leaning to the bend beside the plane that the unsolved limb has.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private readonly WideVector Bone(Lane first, Lane second, in WidePlane after, in WideReach reach, Lane near)
    {
        // Heron's formula (Metrica I.8): no difference of squares, which would lose the height of an almost straight limb; exactly zero where the reach is at its end.
        var (sum, difference, distance) = (first + second, first - second, reach.Distance);
        var area = (sum + distance) * reach.Short * ((distance + difference) * (distance - difference));
        var half = Lanes.Create(0.5f) / distance;
        var foot = Lanes.FusedMultiplyAdd(difference * sum, half, distance * Lanes.Create(0.5f));
        var height = Lanes.Sqrt(Lanes.MaxNative(area, Lanes.Create(0f))) * half;
        var isFolded = Lanes.LessThanOrEqual(distance, near) & Lanes.LessThanOrEqual(Lanes.Abs(difference), near);
        foot = Lanes.ConditionalSelect(isFolded, Lanes.Create(0f), foot);
        height = Lanes.ConditionalSelect(isFolded, first, height);

        var beside = First.Across(Plane.Line);
        var lean = height + WideVector.Dot(beside, Plane.Side) - beside.Length;
        var side = WideVector.MultiplyAdd(after.Side, lean, after.Normal * WideVector.Dot(beside, Plane.Normal)).Direction(out var isThere);
        side = WideVector.Choose(isThere, side, after.Side);
        return WideVector.MultiplyAdd(after.Line, foot, side * height);
    }

    private static WideVector Lasting(in WideVector bone, Lane length, Lane near) => WideVector.Choose(Lanes.LessThan(near, length), bone, WideVector.Zero);
}
