using Condyle.Evaluation;

namespace Condyle.Runtime.Baking;

/// <summary>
/// Plays baked tracks in double precision: sampled as glTF 2.0 says (specification, appendix C, "Linear Interpolation" and "Spherical Linear Interpolation")
/// and carried down the joints' hierarchy.
/// </summary>
internal sealed class Playback
{
    private readonly CompiledRig rig;
    private readonly Trs[] rest;
    private readonly (VectorChannel? Translation, TurnChannel? Rotation, VectorChannel? Scale)[] channels;
    private readonly Affine3d[] worlds;

    public Playback(CompiledRig rig, IReadOnlyList<JointRest> rest, IReadOnlyList<BakedTrack> baked, float[] times)
    {
        this.rig = rig;
        this.rest = [.. rest.Select(joint => new Trs(joint.Translation, ((Quaterniond)joint.Rotation).Normalized(), joint.Scale))];
        channels = new (VectorChannel?, TurnChannel?, VectorChannel?)[rig.Joints.Count];
        foreach (var track in baked)
        {
            channels[track.Joint] = (
                track.Translations is { } moves ? new VectorChannel(moves, track.TranslationKeys, times) : null,
                track.Rotations is { } turns ? new TurnChannel(turns, track.RotationKeys, times) : null,
                track.Scales is { } scales ? new VectorChannel(scales, track.ScaleKeys, times) : null);
        }

        worlds = new Affine3d[rig.Joints.Count];
    }

    /// <summary>A joint's channels.</summary>
    /// <param name="joint">Its index.</param>
    /// <param name="frame">The sample at or before the time asked for.</param>
    /// <param name="amount">How far on to the next sample, from 0 to 1; zero on the last one.</param>
    public Trs Local(int joint, int frame, double amount)
    {
        var (translation, rotation, scale) = channels[joint];
        return new Trs(
            translation?.At(frame, amount) ?? rest[joint].Translation,
            rotation?.At(frame, amount) ?? rest[joint].Rotation,
            scale?.At(frame, amount) ?? rest[joint].Scale);
    }

    /// <summary>Where each joint is in the world; good until the next call.</summary>
    /// <param name="frame">The sample at or before the time asked for.</param>
    /// <param name="amount">How far on to the next sample, from 0 to 1; zero on the last one.</param>
    public ReadOnlySpan<Affine3d> At(int frame, double amount)
    {
        foreach (var joint in rig.Joints)
        {
            var local = Local(joint.Index, frame, amount).ToAffine();
            worlds[joint.Index] = joint.Parent < 0 ? local : worlds[joint.Parent] * local;
        }

        return worlds;
    }
}
