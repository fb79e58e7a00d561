using Condyle.Runtime.Baking;
using Condyle.Runtime.Matching.Motions;

namespace Condyle.Runtime;

/// <summary>Makes one clip of a clip and what lies over it, with a key of everything on each frame.</summary>
internal static class ClipSampling
{
    public static Clip Flat(CompiledRig rig, Clip clip)
    {
        var times = FrameTimes.Of(clip, new BakeSettings()).Times;
        var (player, instance, keys) = (new ClipPlayer(rig, clip), rig.NewInstance(), new MotionKeys(rig, times));
        foreach (var (frame, time) in times.Index())
        {
            player.Pose(instance, time);
            keys.Take(instance, frame);
        }

        var flat = keys.ToClip(clip.Name, clip.Seconds, new Dictionary<int, float>());
        foreach (var marker in clip.Markers)
            flat.Mark(marker.At, marker.Name);
        return flat;
    }
}
