using Condyle.Benchmarks.Measuring;

namespace Condyle.Benchmarks.Motion;

/// <summary>What a longer clip takes in memory. All that is allocated is counted, held or not, so it is at least what was held at once.</summary>
internal static class BakeMemory
{
    private const int Short = 10_000, Long = 40_000;

    public static IEnumerable<Result> Measure()
    {
        var folder = Directory.CreateTempSubdirectory("condyle-bake-");
        try
        {
            var output = Path.Combine(folder.FullName, "stevedore.glb");
            var (brief, lasting) = (new LongClip(Short), new LongClip(Long));
            brief.BakeWithoutProof(output);
            var (memory, bytes) = Growth(brief.BakeWithoutProof, lasting.BakeWithoutProof);
            brief.Bake(output);
            var (proved, _) = Growth(brief.Bake, lasting.Bake);
            var frames = lasting.Frames - brief.Frames;
            return
            [
                new("a frame more: bytes allocated by a bake, against bytes in the file", memory / bytes, MotionGoals.Memory, FormattableString.Invariant($"{memory / frames:0} bytes allocated, {bytes / frames:0} in the file")),
                new("a frame more: bytes allocated by a bake with its proof, against bytes in the file", proved / bytes, null, FormattableString.Invariant($"{proved / frames:0} bytes allocated, most of them let go at once")),
            ];

            (double Memory, double Bytes) Growth(Action<string> brief, Action<string> lasting)
            {
                var first = Memory.AllocatedBy(() => brief(output));
                var size = new FileInfo(output).Length;
                var second = Memory.AllocatedBy(() => lasting(output));
                return (second - first, new FileInfo(output).Length - size);
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
