namespace Condyle.Runtime.Matching.Fitting;

/// <summary>
/// Finds the arguments for which the squares of a function's values have the least sum, by damped Gauss-Newton steps
/// (Marquardt 1963, "An algorithm for least-squares estimation of nonlinear parameters", Journal of the SIAM 11(2)), with slopes by differences.
/// </summary>
/// <remarks>
/// It finds the valley that it starts in. An argument that changes nothing stays as it is. What isn't finite counts as further off than all else.
/// A numerical library would do the same, and would come with every game that embeds the runtime.
/// </remarks>
internal sealed class LeastSquares(Func<double[], double[]> values, double step)
{
    private const int MostSteps = 200;
    private const double FirstDamping = 1e-3, LeastDamping = 1e-12, MostDamping = 1e12;

    /// <summary>Damping falls faster than it rises: a narrow valley that bends is followed in steps as long as it allows.</summary>
    private const double Rises = 2, Falls = 10;

    /// <summary>A step that takes less than this share of the sum away is the last one.</summary>
    private const double Settled = 1e-8;

    /// <summary>So much of the largest is added to each diagonal element, for arguments that change nothing.</summary>
    private const double Idle = 1e-12;

    /// <param name="start">Where it starts; not changed.</param>
    /// <param name="enough">The sum of squares at which it may stop.</param>
    /// <returns>The best arguments found, and the sum of squares there.</returns>
    public (double[] Arguments, double Sum) Minimize(double[] start, double enough)
    {
        var (at, found) = (start, values(start));
        var (sum, damping) = (SumOf(found), FirstDamping);
        for (var steps = 0; steps < MostSteps && sum > enough && double.IsFinite(sum); steps++)
        {
            var (normal, gradient) = NormalEquations(at, found);
            var before = sum;
            for (; damping <= MostDamping; damping *= Rises)
            {
                if (Cholesky.Solve(Damped(normal, damping), gradient) is not { } change)
                    continue;
                double[] next = [.. at.Zip(change, (argument, by) => argument - by)];
                var there = values(next);
                if (!(SumOf(there) < sum))
                    continue;
                (at, found, sum) = (next, there, SumOf(there));
                damping = Math.Max(damping / Falls, LeastDamping);
                break;
            }

            if (!(before - sum > Settled * before))
                break;
        }

        return (at, sum);
    }

    /// <summary>Of J the slopes of the values: Jᵀ·J, and Jᵀ times the values.</summary>
    private (double[,] Normal, double[] Gradient) NormalEquations(double[] at, double[] found)
    {
        var slopes = new double[at.Length][];
        for (var i = 0; i < at.Length; i++)
        {
            var beside = (double[])at.Clone();
            beside[i] += step;
            slopes[i] = [.. values(beside).Zip(found, (there, here) => (there - here) / step)];
        }

        var normal = new double[at.Length, at.Length];
        for (var row = 0; row < at.Length; row++)
        {
            for (var column = 0; column < at.Length; column++)
                normal[row, column] = Dot(slopes[row], slopes[column]);
        }

        return (normal, [.. slopes.Select(slope => Dot(slope, found))]);
    }

    private static double[,] Damped(double[,] normal, double damping)
    {
        var damped = (double[,])normal.Clone();
        var largest = Enumerable.Range(0, normal.GetLength(0)).Max(i => normal[i, i]);
        for (var i = 0; i < normal.GetLength(0); i++)
            damped[i, i] += damping * (normal[i, i] + (Idle * largest)) + (Idle * Idle * largest);
        return damped;
    }

    private static double SumOf(double[] values) => Dot(values, values) is var sum && double.IsNaN(sum) ? double.PositiveInfinity : sum;

    private static double Dot(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).Sum();
}
