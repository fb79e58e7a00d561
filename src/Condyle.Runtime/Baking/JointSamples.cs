using System.Numerics;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Baking;

/// <summary>One exported joint's channels on every sample, as far as they leave the joint's rest in the file.</summary>
internal sealed class JointSamples
{
    /// <summary>
    /// A channel that never leaves its rest by more than this is dropped: what is left of it is rounding. It lies far below the deviation that a bake may have,
    /// and the report counts it, since it compares what the file will play. It shows where some joints of a long chain are dropped whose rounding others take back: the crane's load clip is
    /// 0.015 mm off so, at the hook, and 0.004 mm with every turn kept.
    /// </summary>
    private const float RestMetres = 2e-6f, RestTurn = 1e-6f, RestScale = 1e-6f;

    private readonly int joint;
    private readonly JointRest rest;
    private readonly float restMetres;
    private readonly ChannelSamples<Vector3> translations;
    private readonly ChannelSamples<Quaternion> rotations;
    private readonly ChannelSamples<Vector3> scales;

    /// <param name="joint">Its index.</param>
    /// <param name="count">How many samples there are.</param>
    /// <param name="rest">The joint's rest in the file.</param>
    /// <param name="unit">How many metres of the world a unit of the joint's translation is at rest.</param>
    public JointSamples(int joint, int count, JointRest rest, float unit)
    {
        (this.joint, this.rest, restMetres) = (joint, rest, RestMetres / unit);
        (translations, rotations, scales) = (new(count, rest.Translation), new(count, rest.Rotation), new(count, rest.Scale));
        if (!rest.IsExact)
            rotations.Keep();
    }

    /// <summary>Takes the joint's channels on samples side by side; false when they are no finite numbers. Most channels never leave their rest, which shows on all samples at once.</summary>
    public bool TryTake(int first, int count, JointChannels now)
    {
        var areFinite = true;
        if (translations.Values is not null || !now.IsMoveNear(rest.Translation, restMetres))
            areFinite &= now.TryCopyMoves(translations.Room(first, count));
        if (rotations.Values is not null || !now.IsTurnNear(rest.Rotation, RestTurn))
        {
            var turns = rotations.Room(first, count);
            areFinite &= now.TryCopyTurns(turns);
            KeepSigns(rotations.Before(first), turns);
        }

        if (scales.Values is not null || !now.IsScaleNear(rest.Scale, RestScale))
            areFinite &= now.TryCopyScales(scales.Room(first, count));
        return areFinite;
    }

    /// <summary>Makes the last sample the first one; the rotation keeps its sign, so that it is reached the short way.</summary>
    public void Close()
    {
        if (translations.Values is { } t)
            t[^1] = t[0];
        if (rotations.Values is { } r)
            r[^1] = Quaternion.Dot(r[0], r[^1]) < 0 ? -r[0] : r[0];
        if (scales.Values is { } s)
            s[^1] = s[0];
    }

    public BakedTrack ToTrack() => new(joint, translations.Values, rotations.Values, scales.Values);

    /// <summary>All of the rotation, even at rest: a clip in which nothing moves needs one track to exist.</summary>
    public BakedTrack ToStillTrack()
    {
        rotations.Keep();
        return ToTrack();
    }

    private static void KeepSigns(Quaternion before, Span<Quaternion> turns)
    {
        foreach (ref var turn in turns)
        {
            if (Quaternion.Dot(before, turn) < 0)
                turn = -turn;
            before = turn;
        }
    }
}
