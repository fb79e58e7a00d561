using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>A limb of two bones as it is unsolved, for each of several rigs. It is solved in its plane; where that stands in the world makes no difference.</summary>
internal struct WideLimb
{
    /// <summary>From root to middle joint.</summary>
    public WideBone First;

    /// <summary>From middle joint to tip.</summary>
    public WideBone Second;

    /// <summary>How far the tip is from the root.</summary>
    public Lane Reach;

    /// <summary>Solves it: how its bones point in its plane, and how many times as long they become.</summary>
    /// <param name="toGoal">How far the goal is from the root.</param>
    /// <param name="farOut">How far both are from the world's origin: rounding goes with it.</param>
    /// <param name="kind">What all limbs beside it have in common.</param>
    /// <param name="stretch">How it stretches and softens; not read of a plain one.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly SolvedLimb Solve(Lane toGoal, Lane farOut, LimbKind kind, in WideStretch stretch)
    {
        var distance = WideReach.Settle(toGoal, Reach, First.Length, Second.Length, farOut + First.Length + Second.Length);
        var reach = kind.IsPlain
            ? WideReach.Plain(distance, Reach, First.Length, Second.Length)
            : WideReach.Of(stretch, distance, Reach, First.Length, Second.Length);
        var first = Triangle(reach);
        if (kind.Leans)
            first = Leaning(first);
        var second = new WideVector() { X = reach.Distance - first.X, Y = -first.Y, Z = -first.Z };
        first = WideBone.Pointing(first, First.Over);
        second = WideBone.Pointing(second, Second.Over);
        var isElsewhere = Lanes.OnesComplement(Lanes.Equals(reach.Distance, Reach));
        if (!Rigs.Every(isElsewhere))
        {
            first = WideVector.Choose(isElsewhere, first, First.Direction);
            second = WideVector.Choose(isElsewhere, second, Second.Direction);
        }

        return new() { First = first, Second = second, Factor = reach.Factor };
    }

    /// <summary>Where the middle joint stands over the line from root to tip: how far along it and how high above it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly WideVector Triangle(in WideReach reach)
    {
        // Heron's formula (Metrica I.8): no difference of squares, which would lose the height of an almost straight limb; exactly zero where the reach is at its end.
        var sum = First.Length + Second.Length;
        var difference = First.Length - Second.Length;
        var area = (sum + reach.Distance) * reach.Short * ((reach.Distance + difference) * (reach.Distance - difference));
        var half = Lanes.Create(0.5f) / reach.Distance;
        var foot = Lanes.FusedMultiplyAdd(difference * sum, half, reach.Distance * Lanes.Create(0.5f));
        var height = Lanes.Sqrt(Lanes.MaxNative(area, Lanes.Create(0f))) * half;
        var near = sum * Lanes.Create(SolverEnds.Near);
        var isFolded = Lanes.LessThanOrEqual(reach.Distance, near) & Lanes.LessThanOrEqual(Lanes.Abs(difference), near);
        return new()
        {
            X = Lanes.ConditionalSelect(isFolded, Lanes.Create(0f), foot),
            Y = Lanes.ConditionalSelect(isFolded, First.Length, height),
            Z = Lanes.Create(0f),
        };
    }

    /// <summary>The first bone leaning to the bend beside the plane that the unsolved limb has.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly WideVector Leaning(in WideVector bone)
    {
        var (side, beside) = (First.Direction.Y * First.Length, First.Direction.Z * First.Length);
        var lean = bone.Y + side - Lanes.Sqrt(Lanes.FusedMultiplyAdd(side, side, beside * beside));
        var length = Lanes.Sqrt(Lanes.FusedMultiplyAdd(lean, lean, beside * beside));
        var isThere = Lanes.LessThan(Lanes.Create(Rotation.Tiny), length);
        var over = bone.Y / length;
        return new()
        {
            X = bone.X,
            Y = Lanes.ConditionalSelect(isThere, lean * over, bone.Y),
            Z = Lanes.ConditionalSelect(isThere, beside * over, Lanes.Create(0f)),
        };
    }
}

/// <summary>How a limb stretches and softens, for each of several rigs.</summary>
internal struct WideStretch
{
    /// <inheritdoc cref="LimbAim.Stretch"/>
    public Lane Stretch;

    /// <inheritdoc cref="LimbAim.Most"/>
    public Lane Most;

    /// <inheritdoc cref="LimbAim.Softness"/>
    public Lane Softness;
}

/// <summary>A limb that is solved, in its plane.</summary>
internal struct SolvedLimb
{
    /// <summary>The direction of the first bone.</summary>
    public WideVector First;

    /// <summary>The direction of the second.</summary>
    public WideVector Second;

    /// <summary>How many times as long they become.</summary>
    public Lane Factor;
}
