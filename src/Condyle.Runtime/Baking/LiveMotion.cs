using System.Numerics;
using Condyle.Evaluation;

namespace Condyle.Runtime.Baking;

/// <summary>A clip played on the rig, many moments side by side, with the way taken off or moved as the settings ask.</summary>
internal sealed class LiveMotion(ClipPlayer player, Travel? travel, float from, CancellationToken cancellation)
{
    /// <summary>How many moments are evaluated together.</summary>
    private const int Together = 64;

    private RigCrowd? crowd;

    public CompiledRig Rig => player.Rig;

    public Clip Clip => player.Clip;

    public Travel? Travel => travel;

    /// <summary>Evaluates moments of the bake and hands them on in order, with their index.</summary>
    public void Play(IEnumerable<double> moments, Action<int, LiveMoment> take) => PlayTogether(moments, (first, live) =>
    {
        for (var moment = 0; moment < live.Length; moment++)
            take(first + moment, live[moment]);
    });

    /// <summary>The same, as many at a time as are evaluated together: reading a joint of all of them, then the next, stays in the processor's cache.</summary>
    public void PlayTogether(IEnumerable<double> moments, LiveMoments take)
    {
        crowd ??= Rig.NewCrowd(Together);
        var live = new LiveMoment[Together];
        var (first, count) = (0, 0);
        foreach (var moment in moments)
        {
            player.Pose(crowd[count++], (float)(from + moment));
            if (count == Together)
                Flush();
        }

        if (count > 0)
            Flush();

        void Flush()
        {
            cancellation.ThrowIfCancellationRequested();
            crowd.Evaluate();
            for (var member = 0; member < count; member++)
                live[member] = new LiveMoment(crowd[member], travel);
            take(first, live.AsSpan(0, count));
            (first, count) = (first + count, 0);
        }
    }
}

/// <summary>Takes moments that were evaluated together.</summary>
/// <param name="first">The index of the first one.</param>
/// <param name="live">The rig at each of them; good until the next ones.</param>
internal delegate void LiveMoments(int first, ReadOnlySpan<LiveMoment> live);

/// <summary>The rig at one moment, as it is to be baked.</summary>
internal readonly struct LiveMoment(RigInstance live, Travel? travel)
{
    public RigInstance Live { get; } = live;

    /// <summary>The way that has been gone; none when it stays where it is.</summary>
    public Affine3d Way { get; } = travel?.Way(live) ?? Affine3d.Identity;

    public Affine3d World(int joint) => travel?.World(Live, joint, Way) ?? Live.World(joint);

    public (Vector3 Translation, Quaternion Rotation, Vector3 Scale) Channels(int joint)
    {
        if (travel is null || !travel.Changes(joint))
            return (Live.JointTranslation(joint), Live.JointRotation(joint), Live.JointScale(joint));
        var (t, r, s) = travel.Channels(Live, joint, Way);
        return (new((float)t.X, (float)t.Y, (float)t.Z), r.ToSingle(), new((float)s.X, (float)s.Y, (float)s.Z));
    }
}
