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
    private readonly Place[] places;
    private readonly Affine3d?[] scaled;

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

        places = new Place[rig.Joints.Count];
        scaled = new Affine3d?[rig.Joints.Count];
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
    public ReadOnlySpan<Place> At(int frame, double amount)
    {
        foreach (var joint in rig.Joints)
            Carry(joint.Index, joint.Parent, Local(joint.Index, frame, amount));
        return places;
    }

    /// <summary>A joint's frame with the scale that reaches it, where it was played last.</summary>
    public Affine3d World(int joint) => scaled[joint] ?? places[joint].ToAffine();

    /// <summary>How many metres of the world a unit in a joint's space is at most, where it was played last.</summary>
    public double Unit(int joint) => scaled[joint] is var (x, y, z, _) ? Math.Max(x.Length, Math.Max(y.Length, z.Length)) : 1;

    // Rotations are taken out of axes only where scale makes that necessary.
    private void Carry(int joint, int parent, in Trs local)
    {
        if (local.Scale == Vector3d.One && (parent < 0 || scaled[parent] is null))
        {
            var place = new Place(local.Translation, local.Rotation);
            (places[joint], scaled[joint]) = (parent < 0 ? place : places[parent] * place, null);
            return;
        }

        var world = parent < 0 ? local.ToAffine() : World(parent) * local.ToAffine();
        (places[joint], scaled[joint]) = (Place.Of(world), world);
    }
}
