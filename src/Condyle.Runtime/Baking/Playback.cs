using System.Numerics;
using Condyle.Evaluation;

namespace Condyle.Runtime.Baking;

/// <summary>
/// Plays baked tracks in double precision: sampled as glTF 2.0 says (specification, appendix C, "Linear Interpolation" and "Spherical Linear Interpolation")
/// and carried down the joints' hierarchy.
/// </summary>
internal sealed class Playback
{
    /// <summary>Below this angle between two keys, in radians, a slerp is a line.</summary>
    private const double Line = 1e-9;

    private readonly CompiledRig rig;
    private readonly IReadOnlyList<JointRest> rest;
    private readonly BakedTrack?[] tracks;
    private readonly Affine3d[] worlds;

    public Playback(CompiledRig rig, IReadOnlyList<JointRest> rest, IReadOnlyList<BakedTrack> baked)
    {
        (this.rig, this.rest) = (rig, rest);
        tracks = new BakedTrack?[rig.Joints.Count];
        foreach (var track in baked)
            tracks[track.Joint] = track;
        worlds = new Affine3d[rig.Joints.Count];
    }

    /// <summary>Where each joint is in the world; good until the next call.</summary>
    /// <param name="frame">The frame at or before the time asked for.</param>
    /// <param name="amount">How far on to the next frame, from 0 to 1; zero on the last frame.</param>
    public ReadOnlySpan<Affine3d> At(int frame, double amount)
    {
        foreach (var joint in rig.Joints)
        {
            var track = tracks[joint.Index];
            var local = new Trs(
                Sample(track?.Translations, rest[joint.Index].Translation, frame, amount),
                Sample(track?.Rotations, rest[joint.Index].Rotation, frame, amount),
                Sample(track?.Scales, rest[joint.Index].Scale, frame, amount)).ToAffine();
            worlds[joint.Index] = joint.Parent < 0 ? local : worlds[joint.Parent] * local;
        }

        return worlds;
    }

    private static Vector3d Sample(Vector3[]? values, Vector3 otherwise, int frame, double amount) =>
        values is null ? otherwise
        : amount == 0 ? values[frame]
        : Vector3d.Lerp(values[frame], values[frame + 1], amount);

    private static Quaterniond Sample(Quaternion[]? values, Quaternion otherwise, int frame, double amount) =>
        (values is null ? otherwise : amount == 0 ? values[frame] : Slerp(values[frame], values[frame + 1], amount)).Normalized();

    private static Quaterniond Slerp(Quaterniond from, Quaterniond to, double amount)
    {
        var dot = Quaterniond.Dot(from, to);
        if (dot < 0)
            (to, dot) = (-to, -dot);
        var angle = Math.Acos(Math.Min(1, dot));
        return angle < Line
            ? (from * (1 - amount)) + (to * amount)
            : (from * (Math.Sin((1 - amount) * angle) / Math.Sin(angle))) + (to * (Math.Sin(amount * angle) / Math.Sin(angle)));
    }
}
