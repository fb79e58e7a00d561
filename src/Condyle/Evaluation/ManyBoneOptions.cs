using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>What a many-bone IK was told beside its goal and its pole.</summary>
/// <param name="Tolerance">How near to the goal the tip must be, as a share of the chain's length, so that it grows with the character.</param>
/// <param name="Rounds">After how many rounds it ends at the latest.</param>
/// <param name="Cones">How far each bone may turn from where it rests, in radians; none where no bone is limited.</param>
internal sealed record ManyBoneOptions(double Tolerance, int Rounds, double[]? Cones)
{
    public const double DefaultTolerance = 1e-6;

    public const int DefaultRounds = 32;

    private const int MostRounds = 1000;

    /// <exception cref="RigGeometryException">An option isn't known, or is out of its range.</exception>
    public static ManyBoneOptions Of(RigManyBone solver, RestPose rest)
    {
        if (solver.ConesAreOpen)
            throw new RigGeometryException($"The limits of {solver.Title} aren't known.");
        var end = Facts.Known(solver.End, $"When {solver.Title} ends");
        var metres = end is null ? 0 : Facts.Known(end.Metres, $"How near to its goal {solver.Title} must come");
        var rounds = end is null ? DefaultRounds : Facts.Known(end.Rounds, $"After how many rounds {solver.Title} ends");
        if (end is not null && !(metres > 0))
            throw new RigGeometryException($"{solver.Title} ends {Invariant.Print(metres)} m from its goal. Give a distance above zero.", solver);
        if (rounds is < 1 or > MostRounds)
            throw new RigGeometryException($"{solver.Title} ends after {rounds} rounds. Give from 1 to {MostRounds}.", solver);
        var length = ChainLength.AtRest(solver.Copy!, rest);
        return new(end is not null && length > 0 ? metres / length : DefaultTolerance, rounds, solver.Cones.Count == 0 ? null : ConesOf(solver));
    }

    private static double[] ConesOf(RigManyBone solver)
    {
        var joints = solver.Copy!.Joints;
        var cones = Enumerable.Repeat(Math.PI, joints.Count - 1).ToArray();
        foreach (var cone in solver.Cones)
        {
            var at = joints.FindIndex(joint => joint == cone.Joint || joint.Original == cone.Joint);
            if (at < 0 || at >= cones.Length)
                throw new RigGeometryException($"Which bone of {solver.Title} is limited isn't known.");
            var degrees = Facts.Known(cone.Degrees, $"The limit of {joints[at].Title}");
            if (!(degrees >= 0 && degrees <= 180))
                throw new RigGeometryException($"{solver.Title} limits {joints[at].Title} to {Invariant.Print(degrees)}°. Give from 0 to 180 degrees.", solver);
            cones[at] = degrees * Math.PI / 180;
        }

        return cones;
    }
}
