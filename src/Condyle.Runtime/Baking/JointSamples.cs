using System.Numerics;

namespace Condyle.Runtime.Baking;

/// <summary>One exported joint's channels on every frame.</summary>
internal sealed class JointSamples(CompiledJoint joint, int frames)
{
    /// <summary>
    /// A channel that never leaves its rest by more than this is dropped: what is left of it is rounding. It lies far below the deviation that a bake may have,
    /// and the report counts it, since it compares what the file will play.
    /// </summary>
    private const float RestMetres = 2e-6f, RestTurn = 1e-6f, RestScale = 1e-6f;

    private readonly Vector3[] translations = new Vector3[frames];
    private readonly Quaternion[] rotations = new Quaternion[frames];
    private readonly Vector3[] scales = new Vector3[frames];

    /// <summary>Takes the joint's channels on a frame; false when they are no finite numbers.</summary>
    public bool TryTake(RigInstance instance, int frame)
    {
        var (t, r, s) = (instance.JointTranslation(joint.Index), instance.JointRotation(joint.Index), instance.JointScale(joint.Index));
        if (!float.IsFinite(t.LengthSquared()) || !float.IsFinite(s.LengthSquared()) || !(r.LengthSquared() is > 0 and < float.PositiveInfinity))
            return false;
        var before = frame == 0 ? joint.RestRotation : rotations[frame - 1];
        r = Quaternion.Normalize(r);
        (translations[frame], rotations[frame], scales[frame]) = (t, Quaternion.Dot(before, r) < 0 ? -r : r, s);
        return true;
    }

    /// <summary>What has to be stored to play the joint from this rest.</summary>
    /// <param name="rest">The joint's rest in the file.</param>
    /// <param name="unit">How many metres of the world a unit of the joint's translation is at rest.</param>
    public BakedTrack ToTrack(JointRest rest, float unit) => new(
        joint.Index,
        translations.All(value => Vector3.Distance(value, rest.Translation) * unit <= RestMetres) ? null : translations,
        rest.IsExact && IsAtRest(rest.Rotation) ? null : rotations,
        scales.All(value => Vector3.Distance(value, rest.Scale) <= RestScale) ? null : scales);

    /// <summary>All of the rotation, even at rest: a clip in which nothing moves needs one track to exist.</summary>
    public BakedTrack ToStillTrack() => new(joint.Index, null, rotations, null);

    private bool IsAtRest(Quaternion rest) =>
        rotations.All(value => (value - (Quaternion.Dot(value, rest) < 0 ? -rest : rest)).Length() <= RestTurn);
}
