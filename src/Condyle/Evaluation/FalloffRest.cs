using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>How a joint takes its share of a source's turn and move.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Source">What is turned.</param>
/// <param name="Share">The joint's share.</param>
/// <param name="Axes">From axes of turns in the source's own frame at rest to those in the joint's.</param>
/// <param name="Moves">From moves in the source's channels to the same in the joint's at rest, by the share; none where it takes none.</param>
internal sealed record FalloffShare(RigNode Joint, RigNode Source, double Share, Quaterniond Axes, Affine3d? Moves)
{
    /// <summary>
    /// With q the source's rotation from rest in its channels and s the share, the joint's rotation R becomes R · axes · q^s · axes⁻¹, and its translation T + moves · t.
    /// All powers of q turn about one axis, which the joints above carry with them, so the turns add up: the last joint is turned by q to the sum of the shares.
    /// </summary>
    /// <remarks>q^s takes q the short way; not continuous where q is a half turn.</remarks>
    public Trs On(Trs own, PoseFrames frames)
    {
        var (rest, now) = (RestPose.ChannelsOf(Source), frames.MeasuredChannelsOf(Source));
        var turn = Axes * Slerp.Between(Quaterniond.Identity, rest.Rotation.Inverse * now.Rotation, Share) * Axes.Inverse;
        return own with
        {
            Rotation = own.Rotation * turn,
            Translation = Moves is { } moves ? own.Translation + moves.Turn(now.Translation - rest.Translation) : own.Translation,
        };
    }
}

/// <summary>What a falloff's rest gives it: the shares of its joints.</summary>
internal static class FalloffRest
{
    /// <summary>Shares that add up to less than this can't be scaled to a total.</summary>
    private const double None = 1e-6;

    /// <summary>The shares of a falloff; none where the sentence is unfinished.</summary>
    /// <exception cref="RigGeometryException">Something isn't known, or the shares can't be scaled to their total.</exception>
    public static IReadOnlyList<FalloffShare> Of(RigFalloff falloff, RestPose rest)
    {
        if (Facts.Known(falloff.Source, $"The control of {falloff.Title}") is not { } source)
            return [];
        var joints = falloff.Joints ?? throw new RigGeometryException($"The joints of {falloff.Title} aren't known.");
        var (shares, moves) = (SharesOf(falloff, joints.Count), Facts.Known(falloff.Moves, $"Whether {falloff.Title} moves its joints"));
        var axes = AxesOf(source, rest);
        return [.. joints.Zip(shares, (joint, share) => new FalloffShare(
            joint, source, share, AxesOf(joint, rest).Inverse * axes, moves ? StandOf(joint, rest).Inverse() * StandOf(source, rest) * Scaled(share) : null))];
    }

    private static IReadOnlyList<double> SharesOf(RigFalloff falloff, int count)
    {
        if (Facts.Known(falloff.Shares, $"The shares of {falloff.Title}") is not { } said)
            return [.. Enumerable.Repeat(1.0 / count, count)];
        var total = Facts.Known(said.Total, $"What the shares of {falloff.Title} add up to");
        var shares = TwistRest.Evenly(Facts.Known(said.First, $"The first share of {falloff.Title}"), Facts.Known(said.Last, $"The last share of {falloff.Title}"), count).ToList();
        var sum = shares.Sum();
        if (Math.Abs(sum) <= None * shares.Sum(Math.Abs))
            throw new RigGeometryException($"The shares of {falloff.Title} add up to nothing, so that they can't be scaled to {Invariant.Print(total)}. Give a first and a last share that don't cancel.", falloff);
        return [.. shares.Select(share => share * total / sum)];
    }

    private static Affine3d StandOf(RigNode node, RestPose rest) =>
        (node.Parent.TryKnown(out var parent) && parent is not null ? rest.WorldOf(parent) : Affine3d.Identity) * rest.PlacementOf(node);

    /// <summary>
    /// From axes of turns in a node's own frame to those in the world. An axis of a turn is a pseudovector: a mirrored frame turns the other way round,
    /// which goes for its X and Y axes, and for Z too, which <see cref="Affine3d.Rotation"/> has turned already.
    /// </summary>
    private static Quaterniond AxesOf(RigNode node, RestPose rest)
    {
        var frame = StandOf(node, rest) * Affine3d.Rigid(Vector3d.Zero, RestPose.ChannelsOf(node).Rotation);
        return frame.Determinant < 0 ? frame.Rotation * Quaterniond.About(Vector3d.UnitZ, Math.PI) : frame.Rotation;
    }

    private static Affine3d Scaled(double factor) => new(Vector3d.UnitX * factor, Vector3d.UnitY * factor, Vector3d.UnitZ * factor, Vector3d.Zero);
}
