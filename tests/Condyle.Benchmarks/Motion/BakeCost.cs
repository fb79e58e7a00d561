using Condyle.Benchmarks.Measuring;

namespace Condyle.Benchmarks.Motion;

/// <summary>What a bake of 10 000 frames takes beside evaluating them: sampling, signs, writing, and the proof.</summary>
internal static class BakeCost
{
    private const int Frames = 10_000, Rounds = 11;

    public static IEnumerable<Result> Measure()
    {
        var folder = Directory.CreateTempSubdirectory("condyle-bake-");
        try
        {
            var (clip, output) = (new LongClip(Frames), Path.Combine(folder.FullName, "stevedore.glb"));
            var times = SideBySide.Run(
                warmUp: 8,
                Rounds,
                settles: true,
                () => clip.Evaluate,
                () => () => clip.BakeWithoutProof(output),
                () => () => clip.Bake(output));
            string Say(int way) => FormattableString.Invariant($"{clip.Frames} frames evaluated in {times.Seconds(0) * 1e3:0.0} ms, baked in {times.Seconds(way) * 1e3:0.0} ms");
            return
            [
                new("a bake of the stevedore: evaluated, sampled and written, against evaluated alone", times.Ratio(1, 0), MotionGoals.Bake, Say(1)),
                new("a bake of the stevedore with its proof, on frames and between them, against evaluated alone", times.Ratio(2, 0), null, Say(2)),
            ];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
