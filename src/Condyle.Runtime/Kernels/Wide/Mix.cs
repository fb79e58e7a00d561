using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>The weighted mean of a blend's sources: origins by their mean, rotations by their spherical average. Weights are divided by their sum.</summary>
internal static class Mix
{
    /// <inheritdoc cref="Evaluation.BlendWeights.None"/>
    public const float None = (float)Evaluation.BlendWeights.None;

    /// <summary>The iteration ends at a step below this, in radians of the half angle: a float's rounding.</summary>
    private const float Tolerance = 1e-7f;

    /// <summary>The iteration ends after this many steps.</summary>
    private const int MostSteps = 200;

    /// <summary>The mean of a blend's sources, in the world or, in a chain, each in the source joint before it.</summary>
    /// <param name="sources">The sources.</param>
    /// <param name="isChain">Whether they are joints of a chain after its first one.</param>
    /// <param name="pose">Where their frames and weights are.</param>
    /// <param name="isThere">Whether any has a weight.</param>
    public static WideRigid Mean(ReadOnlySpan<BlendSource> sources, bool isChain, Buffers pose, out Lane isThere)
    {
        if (sources.Length == 2)
            return Two(FrameOf(sources[0], isChain, pose), WeightOf(sources[0], pose), FrameOf(sources[1], isChain, pose), WeightOf(sources[1], pose), out isThere);
        var gathered = new Gathered(pose);
        foreach (ref readonly var source in sources)
            gathered.Add(FrameOf(source, isChain, pose), WeightOf(source, pose));
        return gathered.Mean(out isThere);
    }

    /// <summary>A source's weight; one below zero counts as zero.</summary>
    private static Lane WeightOf(in BlendSource source, Buffers pose) => Lanes.MaxNative(Lane.Zero, pose.Weights.Wide(source.Weight));

    private static WideRigid FrameOf(in BlendSource source, bool isChain, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        return isChain ? frames[source.Frame].In(frames[source.Before]) : frames[source.Frame];
    }

    private static WideRigid Two(in WideRigid a, Lane weightOfA, in WideRigid b, Lane weightOfB, out Lane isThere)
    {
        var sum = weightOfA + weightOfB;
        isThere = Lanes.LessThan(Lanes.Create(None), sum);
        return WideRigid.Between(a, b, weightOfB / Lanes.MaxNative(sum, Lanes.Create(None)));
    }

    /// <summary>
    /// The weighted spherical average of the rotations that were gathered (Buss and Fillmore 2001, "Spherical averages and applications to spherical splines and
    /// interpolation"), algorithm A1, from the first rotation of the largest weight.
    /// </summary>
    /// <param name="pose">Its <see cref="Buffers.MixTurns"/> and <see cref="Buffers.MixWeights"/> are averaged.</param>
    /// <param name="count">How many there are.</param>
    /// <param name="sum">What the weights add up to, above zero.</param>
    public static WideTurn Average(Buffers pose, int count, Lane sum)
    {
        var mean = pose.MixTurns.Wide(0);
        var largest = pose.MixWeights.Wide(0);
        for (var i = 1; i < count; i++)
        {
            var weight = pose.MixWeights.Wide(i);
            var isLarger = Lanes.LessThan(largest, weight);
            mean = WideTurn.Choose(isLarger, pose.MixTurns.Wide(i), mean);
            largest = Lanes.ConditionalSelect(isLarger, weight, largest);
        }

        var over = Lanes.Create(1f) / sum;
        var isDone = Lanes.LessThan(over, over);
        for (var steps = 0; steps < MostSteps; steps++)
        {
            var step = WideVector.Zero;
            for (var i = 0; i < count; i++)
                step = WideVector.MultiplyAdd((mean.Inverse * pose.MixTurns.Wide(i)).Log(), pose.MixWeights.Wide(i) * over, step);
            // Who is there already waits for the others as it is.
            mean = WideTurn.Choose(isDone, mean, (mean * WideTurn.Exp(step)).Normalized());
            isDone = Lanes.ConditionalSelect(isDone, isDone, Lanes.LessThan(step.LengthSquared, Lanes.Create(Tolerance * Tolerance)));
            if (Rigs.Every(isDone))
                break;
        }

        return mean;
    }
}

/// <summary>Gathers any number of weighted frames.</summary>
internal ref struct Gathered(Buffers pose)
{
    private int count;
    private Lane sum = Lanes.Create(0f);
    private WideVector origins = WideVector.Zero;

    public void Add(in WideRigid frame, Lane weight)
    {
        pose.MixTurns.Set(count, frame.Turn);
        pose.MixWeights.Set(count, weight);
        count++;
        sum += weight;
        origins = WideVector.MultiplyAdd(frame.Origin, weight, origins);
    }

    public readonly WideRigid Mean(out Lane isThere)
    {
        isThere = Lanes.LessThan(Lanes.Create(Mix.None), sum);
        var all = Lanes.MaxNative(sum, Lanes.Create(Mix.None));
        var turn = count switch
        {
            1 => pose.MixTurns.Wide(0),
            2 => WideTurn.Slerp(pose.MixTurns.Wide(0), pose.MixTurns.Wide(1), pose.MixWeights.Wide(1) / all),
            _ => Mix.Average(pose, count, all),
        };
        return new() { Origin = origins * (Lanes.Create(1f) / all), Turn = turn };
    }
}
