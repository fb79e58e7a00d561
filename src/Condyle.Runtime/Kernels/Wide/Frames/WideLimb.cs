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

    public Lane FirstLength;

    public Lane SecondLength;

    /// <summary>How far the tip is from the root.</summary>
    public Lane Reach;

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
    /// <param name="kind">What all limbs beside it have in common.</param>
    /// <param name="root">Where its root is in the world.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public void Solve(in WideAim aim, LimbKind kind, in WideVector root)
    {
        var toGoal = aim.Goal - root;
        var distance = toGoal.Length;
        var length = FirstLength + SecondLength;
        var near = length * Lanes.Create(SolverEnds.Near);
        var after = Plane.Towards(toGoal, distance, kind.HasPole ? aim.Pole - root : WideVector.Zero, near);
        if (kind.IsTurned)
            after = after.Turned(aim.Turn * Lanes.Create(MathF.PI / 180));

        distance = WideReach.Settle(distance, Reach, FirstLength, SecondLength, aim.Goal.Span + root.Span + length);
        var reach = kind.IsPlain
            ? WideReach.Plain(distance, Reach, FirstLength, SecondLength)
            : WideReach.Of(aim, distance, Reach, FirstLength, SecondLength);
        var (foot, height) = Triangle(reach, near);
        var bone = WideVector.MultiplyAdd(after.Line, foot, (kind.Leans ? Leaning(after, height) : after.Side) * height);
        var other = WideVector.MultiplyAdd(after.Line, reach.Distance, -bone);
        var isElsewhere = Lanes.OnesComplement(Lanes.Equals(reach.Distance, Reach));
        if (!Rigs.Every(isElsewhere))
        {
            bone = WideVector.Choose(isElsewhere, bone, Plane.Brought(First, after));
            other = WideVector.Choose(isElsewhere, other, Plane.Brought(Second, after));
        }

        FirstTurn = (after.Bone(Lasting(bone, FirstLength, near)) * FirstTurn).Trued();
        SecondTurn = (after.Bone(Lasting(other, SecondLength, near)) * SecondTurn).Trued();
        Factor = reach.Factor;
    }

    /// <summary>A bone's frame in its plane; a bone of no length takes the line's.</summary>
    public static WideTurn Frame(in WidePlane plane, in WideVector bone, Lane near) => plane.Bone(Lasting(bone, bone.Length, near));

    /// <summary>Where the middle joint stands over the line from root to tip: how far along it and how high above it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly (Lane Foot, Lane Height) Triangle(in WideReach reach, Lane near)
    {
        // Heron's formula (Metrica I.8): no difference of squares, which would lose the height of an almost straight limb; exactly zero where the reach is at its end.
        var sum = FirstLength + SecondLength;
        var difference = FirstLength - SecondLength;
        var area = (sum + reach.Distance) * reach.Short * ((reach.Distance + difference) * (reach.Distance - difference));
        var half = Lanes.Create(0.5f) / reach.Distance;
        var foot = Lanes.FusedMultiplyAdd(difference * sum, half, reach.Distance * Lanes.Create(0.5f));
        var height = Lanes.Sqrt(Lanes.MaxNative(area, Lanes.Create(0f))) * half;
        var isFolded = Lanes.LessThanOrEqual(reach.Distance, near) & Lanes.LessThanOrEqual(Lanes.Abs(difference), near);
        return (Lanes.ConditionalSelect(isFolded, Lanes.Create(0f), foot), Lanes.ConditionalSelect(isFolded, FirstLength, height));
    }

    /// <summary>The side to which the first bone goes, leaning to the bend beside the plane that the unsolved limb has.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private readonly WideVector Leaning(in WidePlane after, Lane height)
    {
        var beside = First.Across(Plane.Line);
        var lean = height + WideVector.Dot(beside, Plane.Side) - beside.Length;
        var side = WideVector.MultiplyAdd(after.Side, lean, after.Normal * WideVector.Dot(beside, Plane.Normal)).Direction(out var isThere);
        return WideVector.Choose(isThere, side, after.Side);
    }

    private static WideVector Lasting(in WideVector bone, Lane length, Lane near) => WideVector.Choose(Lanes.LessThan(near, length), bone, WideVector.Zero);
}

/// <summary>What a limb reaches and faces, for each of several rigs.</summary>
internal struct WideAim
{
    /// <summary>Where the goal is in the world.</summary>
    public WideVector Goal;

    /// <summary>Where the pole is.</summary>
    public WideVector Pole;

    /// <inheritdoc cref="LimbAim.Stretch"/>
    public Lane Stretch;

    /// <inheritdoc cref="LimbAim.Most"/>
    public Lane Most;

    /// <inheritdoc cref="LimbAim.Softness"/>
    public Lane Softness;

    /// <summary>By how much the plane is turned, in degrees.</summary>
    public Lane Turn;
}
