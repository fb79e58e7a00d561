namespace Condyle.Evaluation;

/// <summary>
/// The weighted average of rotations: the one from which the weighted squares of the angles to all of them add up to the least
/// (Buss and Fillmore 2001, "Spherical averages and applications to spherical splines and interpolation", ACM TOG 20(2), algorithm A1).
/// For two rotations that is the shortest-arc slerp.
/// </summary>
/// <remarks>
/// Starts at the first rotation with the largest weight, and takes of each rotation the quaternion on the side of the estimate, since
/// opposite quaternions are the same rotation. Stops at a step of <see cref="Tolerance"/> radians or after <see cref="MostSteps"/> steps.
/// The average is unique while all rotations lie within a quarter turn of some rotation; beyond that it is the least near the start,
/// and not continuous where that changes.
/// </remarks>
internal static class SphericalAverage
{
    public const double Tolerance = 1e-14;

    public const int MostSteps = 200;

    /// <param name="rotations">Unit quaternions.</param>
    /// <param name="weights">Not negative, not all zero.</param>
    public static Quaterniond Of(IReadOnlyList<Quaterniond> rotations, IReadOnlyList<double> weights)
    {
        var counted = Enumerable.Range(0, rotations.Count).Where(i => weights[i] > 0).ToList();
        if (counted.Count == 1)
            return rotations[counted[0]];
        if (counted.Count == 2)
            return Slerp.Between(rotations[counted[0]], rotations[counted[1]], weights[counted[1]] / (weights[counted[0]] + weights[counted[1]]));

        var sum = counted.Sum(i => weights[i]);
        var estimate = rotations[counted.OrderByDescending(i => weights[i]).First()];
        for (var step = 0; step < MostSteps; step++)
        {
            var mean = Vector3d.Zero;
            foreach (var i in counted)
                mean += Log(estimate.Inverse * rotations[i]) * (weights[i] / sum);
            estimate = (estimate * Exp(mean)).Normalized();
            if (mean.Length < Tolerance)
                break;
        }

        return estimate;
    }

    /// <summary>The half-angle vector of a rotation, at most a quarter turn long: where the sphere's tangent at no rotation meets it.</summary>
    private static Vector3d Log(Quaterniond q)
    {
        if (q.W < 0)
            q = -q;
        var sine = q.Vector.Length;
        return sine > Vector3d.Tiny ? q.Vector * (Math.Atan2(sine, q.W) / sine) : Vector3d.Zero;
    }

    private static Quaterniond Exp(Vector3d halfAngle)
    {
        var angle = halfAngle.Length;
        var v = angle > Vector3d.Tiny ? halfAngle * (Math.Sin(angle) / angle) : Vector3d.Zero;
        return new Quaterniond(v.X, v.Y, v.Z, Math.Cos(angle));
    }
}
