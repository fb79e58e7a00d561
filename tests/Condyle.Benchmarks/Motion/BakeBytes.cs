using Condyle.Benchmarks.Measuring;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;

namespace Condyle.Benchmarks.Motion;

/// <summary>What a clip takes in a file.</summary>
internal static class BakeBytes
{
    private const int Frames = 10_000;

    public static IEnumerable<Result> Measure()
    {
        var folder = Directory.CreateTempSubdirectory("condyle-bake-");
        try
        {
            var (clip, bare, full) = (new LongClip(Frames), Path.Combine(folder.FullName, "bare.glb"), Path.Combine(folder.FullName, "full.glb"));
            GltfFile.Read(clip.Delivered).Write(bare);
            clip.Bake(full);
            var baked = Condyle.Runtime.Bake.Run(clip.Rig, clip.Player.Clip, clip.Settings);
            var needed = (sizeof(float) * (long)baked.Times.Count)
                + baked.Tracks.Sum(track => (12L * (track.Translations?.Length ?? 0)) + (16L * (track.Rotations?.Length ?? 0)) + (12L * (track.Scales?.Length ?? 0)));
            var taken = new FileInfo(full).Length - new FileInfo(bare).Length;
            var reduced = Condyle.Runtime.Bake.Run(clip.Rig, clip.Player.Clip, clip.Settings with { Keys = new BakeTolerance(0.0005, 0.1) }).Report;
            return
            [
                new("a clip in the file, against its tracks and one list of times", (double)taken / needed, MotionGoals.Bytes, FormattableString.Invariant($"{baked.Tracks.Count} joints move: {taken} bytes, {needed} needed")),
                new("keys within 0.5 mm and 0.1° at every joint, against all", (double)reduced.Keys / reduced.KeysOfEveryFrame, null, FormattableString.Invariant($"{reduced.Keys} of {reduced.KeysOfEveryFrame}; {reduced.OnFrames.Metres.Value * 1000:0.000} mm and {reduced.OnFrames.Degrees.Value:0.0000}° off at most")),
            ];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
