namespace Condyle.Runtime.Kernels;

/// <summary>The weighted mean of a blend's sources: origins by their mean, rotations by their spherical average. Weights are divided by their sum.</summary>
internal static class Mix
{
    /// <summary>A sum of weights below this is no weight at all: nobody has the target. It is what a float's rounding leaves of weights that cancel.</summary>
    public const float None = 1e-6f;

    /// <summary>The iteration ends at a step below this, in radians of the half angle: a float's rounding.</summary>
    private const float Tolerance = 1e-7f;

    /// <summary>The iteration ends after this many steps.</summary>
    private const int MostSteps = 200;

    /// <summary>The mean of two frames.</summary>
    public static WideRigid<TLane> Two<TLane>(in WideRigid<TLane> a, TLane weightOfA, in WideRigid<TLane> b, TLane weightOfB, out TLane isThere)
        where TLane : struct, ILane<TLane>
    {
        var sum = weightOfA + weightOfB;
        isThere = TLane.Less(TLane.All(None), sum);
        var amount = weightOfB / TLane.Max(sum, TLane.All(None));
        return new(WideVector<TLane>.MultiplyAdd(b.Origin - a.Origin, amount, a.Origin), WideTurn<TLane>.Slerp(a.Turn, b.Turn, amount));
    }

    /// <summary>
    /// The weighted spherical average of the rotations that were gathered (Buss and Fillmore 2001, "Spherical averages and applications to spherical splines and
    /// interpolation"), algorithm A1, from the first rotation of the largest weight.
    /// </summary>
    /// <param name="pose">Its <see cref="Buffers.MixTurns"/> and <see cref="Buffers.MixWeights"/> are averaged.</param>
    /// <param name="count">How many there are.</param>
    /// <param name="sum">What the weights add up to, above zero.</param>
    public static WideTurn<TLane> Average<TLane>(Buffers pose, int count, TLane sum)
        where TLane : struct, ILane<TLane>
    {
        var mean = pose.MixTurns.Wide<TLane>(0);
        var largest = pose.MixWeights.Wide<TLane>(0);
        for (var i = 1; i < count; i++)
        {
            var weight = pose.MixWeights.Wide<TLane>(i);
            var isLarger = TLane.Less(largest, weight);
            mean = WideTurn<TLane>.Choose(isLarger, pose.MixTurns.Wide<TLane>(i), mean);
            largest = TLane.Choose(isLarger, weight, largest);
        }

        var over = TLane.All(1) / sum;
        var isDone = TLane.Less(over, over);
        for (var steps = 0; steps < MostSteps; steps++)
        {
            var step = WideVector<TLane>.Zero;
            for (var i = 0; i < count; i++)
                step = WideVector<TLane>.MultiplyAdd((mean.Inverse * pose.MixTurns.Wide<TLane>(i)).Log(), pose.MixWeights.Wide<TLane>(i) * over, step);
            // Who is there already waits for the others as it is.
            mean = WideTurn<TLane>.Choose(isDone, mean, (mean * WideTurn<TLane>.Exp(step)).Normalized());
            isDone = TLane.Choose(isDone, isDone, TLane.Less(step.LengthSquared, TLane.All(Tolerance * Tolerance)));
            if (TLane.Every(isDone))
                break;
        }

        return mean;
    }
}

/// <summary>Gathers any number of weighted frames.</summary>
internal ref struct Gathered<TLane>(Buffers pose)
    where TLane : struct, ILane<TLane>
{
    private int count;
    private TLane sum = TLane.All(0);
    private WideVector<TLane> origins = WideVector<TLane>.Zero;

    public void Add(in WideRigid<TLane> frame, TLane weight)
    {
        pose.MixTurns.Set(count, frame.Turn);
        pose.MixWeights.Set(count, weight);
        count++;
        sum += weight;
        origins = WideVector<TLane>.MultiplyAdd(frame.Origin, weight, origins);
    }

    public readonly WideRigid<TLane> Mean(out TLane isThere)
    {
        isThere = TLane.Less(TLane.All(Mix.None), sum);
        var all = TLane.Max(sum, TLane.All(Mix.None));
        return new(origins * (TLane.All(1) / all), count == 1 ? pose.MixTurns.Wide<TLane>(0) : Mix.Average(pose, count, all));
    }
}
