using System.Diagnostics;
using System.Globalization;
using System.Text;
using Condyle.Host.Sheets;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;
using Xunit.Abstractions;

namespace Condyle.Host.Tests.Trust;

/// <summary>
/// Damaged files are read or refused with one clear error: never a crash, never long, never in much more memory than they are large.
/// The suite tries 2 000; <c>CONDYLE_FUZZ=200000</c> tries so many. A number that fails here fails again: it makes the same file.
/// </summary>
public sealed class FuzzTests(ITestOutputHelper output) : IDisposable
{
    private const int InSuite = 2000;

    /// <summary>Seconds that one file may take.</summary>
    private const double Longest = 5;

    /// <summary>Bytes beside ten times the file's own.</summary>
    private const long Allowance = 64L << 20;

    private static readonly CompiledRig Rig = RigCompiler.Compile(Condyle.Rig.Build(new Hoist()));

    private static readonly RigSheet Sheet = SheetWriter.Of(Condyle.Rig.Examine(new Derrick()));

    private readonly TestProgram program = new(typeof(Hoist));

    public void Dispose() => program.Dispose();

    [Fact]
    public void Glb_files_of_clips() => Fuzz("glb", Clips(), ReadClips);

    [Theory]
    [InlineData(1179)] // a turn by a quaternion whose length is beyond a float's range
    [InlineData(22158)] // times that the library can't read
    public void What_crashed_once_is_refused(int number) => Assert.True(Try(program["input.glb"], new Mutator(Clips()).Make(number), ReadClips, $"glb input {number}", mustRead: false).IsRefused);

    [Fact]
    public void Gltf_files_of_skeletons_and_motion() => Fuzz("gltf", [Delivered(".gltf"), Delivered(".glb"), Encoding.UTF8.GetBytes(Hoist.Delivered)], ReadSkeleton);

    [Fact]
    public void Model_files() => Fuzz("json", [Encoding.UTF8.GetBytes(SheetFile.ToJson(Sheet))], ReadModel);

    [Fact]
    public void Bvh_files() => Fuzz("bvh", [Encoding.UTF8.GetBytes(Bvh)], path => JointMotion.FromBvh(path));

    private void Fuzz(string extension, IReadOnlyList<byte[]> seeds, Action<string> read)
    {
        var count = int.TryParse(Environment.GetEnvironmentVariable("CONDYLE_FUZZ"), NumberStyles.None, CultureInfo.InvariantCulture, out var asked) ? asked / 4 : InSuite / 4;
        var (mutator, path) = (new Mutator(seeds), program[$"input.{extension}"]);
        foreach (var seed in seeds)
            Try(path, seed, read, "an undamaged file", mustRead: true);
        var (refused, slowest, largest) = (0, 0.0, 0L);
        for (var number = 0; number < count; number++)
        {
            var bytes = mutator.Make(number);
            var (wasRefused, seconds, allocated) = Try(path, bytes, read, $"{extension} input {number}", mustRead: false);
            refused += wasRefused ? 1 : 0;
            (slowest, largest) = (Math.Max(slowest, seconds), Math.Max(largest, allocated));
        }

        output.WriteLine(FormattableString.Invariant($"{extension}: {count} inputs, {refused} refused, the slowest took {slowest:0.000} s, the largest allocated {largest / 1e6:0.0} MB"));
        Assert.InRange(refused, count / 10, count);
    }

    private static (bool IsRefused, double Seconds, long Allocated) Try(string path, byte[] bytes, Action<string> read, string what, bool mustRead)
    {
        File.WriteAllBytes(path, bytes);
        var (start, before) = (Stopwatch.GetTimestamp(), GC.GetAllocatedBytesForCurrentThread());
        var isRefused = false;
        try
        {
            read(path);
        }
        catch (BadInputException problem)
        {
            isRefused = true;
            Assert.False(mustRead, $"{what}: {problem.Message}");
            Assert.DoesNotContain('\n', problem.Message);
            Assert.StartsWith(path, problem.Message, StringComparison.Ordinal);
        }
        catch (Exception crash) when (crash is not Xunit.Sdk.XunitException)
        {
            Assert.Fail($"{what} crashed: {crash}");
        }

        // All that was allocated is more than was ever held at once.
        var (seconds, allocated) = (Stopwatch.GetElapsedTime(start).TotalSeconds, GC.GetAllocatedBytesForCurrentThread() - before);
        // A busy machine may make anyone wait, but not three times: what hangs, hangs again.
        for (var again = 0; again < 2 && seconds >= Longest; again++)
            seconds = Math.Min(seconds, Time(path, read));
        Assert.True(seconds < Longest, $"{what} took {seconds} s");
        Assert.True(allocated <= (10L * bytes.Length) + Allowance, $"{what} of {bytes.Length} bytes allocated {allocated}");
        return (isRefused, seconds, allocated);
    }

    private static double Time(string path, Action<string> read)
    {
        var start = Stopwatch.GetTimestamp();
        try
        {
            read(path);
        }
        catch (BadInputException)
        {
            // It was looked at the first time.
        }

        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }

    private static void ReadClips(string path)
    {
        var file = GltfFile.Read(path);
        _ = GltfSkeleton.Read(file);
        foreach (var clip in ClipFile.Read(path, Rig).Clips)
            new ClipPlayer(Rig, clip).Pose(Rig.NewInstance(), clip.Seconds / 2);
    }

    private void ReadSkeleton(string path)
    {
        var file = GltfFile.Read(path);
        _ = GltfSkeleton.Read(file);
        _ = SkeletonFile.Extract(file);
        file.Append([new GltfClip("fuzzed", [0, 1], [new GltfTrack(0, [default, default])])], replace: true).Write(program["written.glb"]);
        _ = GltfFile.Read(program["written.glb"]);
    }

    private static void ReadModel(string path)
    {
        var read = SheetFile.Read(path);
        _ = SheetComparison.Of(Sheet, read);
        _ = SheetComparison.Of(read, Sheet);
        _ = SheetText.Of(read);
        _ = SheetPicture.Of(read);
    }

    private IReadOnlyList<byte[]> Clips() => [File.ReadAllBytes(ClipFiles.Write(program, "wave", 30)), File.ReadAllBytes(ClipFiles.Write(program, "haul", 70, seconds: 3))];

    /// <summary>A delivered file that holds a clip.</summary>
    private byte[] Delivered(string extension)
    {
        program.Write("hoist.gltf", Hoist.Delivered);
        RigBaker.Run(Rig, program["hoist.gltf"], [.. new HoistClips().Clips()], program["baked" + extension], new BakeSettings { FramesPerSecond = 5 });
        return File.ReadAllBytes(program["baked" + extension]);
    }

    private const string Bvh = """
        HIERARCHY
        ROOT hips
        {
          OFFSET 0 0 0
          CHANNELS 6 Xposition Yposition Zposition Zrotation Xrotation Yrotation
          JOINT spine
          {
            OFFSET 0 10 0
            CHANNELS 3 Zrotation Xrotation Yrotation
            End Site
            {
              OFFSET 0 5 0
            }
          }
        }
        MOTION
        Frames: 2
        Frame Time: 0.0333333
        0 90 0 1 2 3 4 5 6
        0 91 0 2 3 4 5 6 7
        """;
}
