namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>Types of the framework whose answers depend on nothing but what they are given: paths as texts, durations, random numbers of a seed, the text of vectors.</summary>
public class PureTypeTests
{
    [Fact]
    public void Random_numbers_of_many_seeds() => FrameworkOracle.Agrees(
        """
        foreach (var seed in Enumerable.Range(-400, 800).Select(turn => turn * 2_684_354).Concat([0, 1, -1, int.MaxValue, int.MinValue, 161803398]))
        {
            var random = new Random(seed);
            var shuffled = new[] { "a", "b", "c", "d", "e" };
            rig.Control(Text($"{random.Next()}_{random.Next(100)}_{random.Next(-5, 5)}_{random.NextDouble():R}_{random.NextSingle():R}_{random.Next(int.MinValue, int.MaxValue)}_{random.Next(3, 3)}"));
            random.Shuffle(shuffled);
            rig.Control(All(shuffled) + Text($"{random.Next()}"));
        }

        rig.Control(Try(() => new Random(3).Next(-1)) + Try(() => new Random(3).Next(2, 1)));
        """);

    [Theory]
    [InlineData("a/b/hook.gltf")]
    [InlineData("hook.gltf")]
    [InlineData("a.b/c")]
    [InlineData("")]
    [InlineData("/x/y.")]
    [InlineData("a/")]
    [InlineData(".hidden")]
    [InlineData("a/.b.c")]
    public void Parts_of_paths(string path) => FrameworkOracle.Agrees(
        $$"""
        var path = "{{path}}";
        rig.Control($"{Path.GetFileName(path)}_{Path.GetExtension(path)}_{Path.GetFileNameWithoutExtension(path)}_{Path.HasExtension(path)}_{Path.IsPathRooted(path)}");
        rig.Control($"{Path.ChangeExtension(path, "x")}_{Path.ChangeExtension(path, ".y")}_{Path.ChangeExtension(path, null)}_{Path.ChangeExtension(path, "")}");
        rig.Control(Path.GetFileName(Path.Combine("a/", path, "/b")) + Path.Combine("a", "/" + path) + Path.Join("a/", path) + Path.Combine("", path));
        """.Replace("Path.", "System.IO.Path.", StringComparison.Ordinal));

    [Fact]
    public async Task What_platforms_do_otherwise_is_open() => Assert.Equal(
        ["CDY1001 Group(System.IO.Path.Combine(\"a\", \"b_grp\"))"],
        await Findings.In("rig.Group(System.IO.Path.GetFileName(@\"a\\b\")); rig.Group(System.IO.Path.Combine(\"a\", \"b_group\")); rig.Group(System.IO.Path.Combine(\"a\", \"b_grp\"));"));

    [Fact]
    public void Durations() => FrameworkOracle.Agrees(
        """
        foreach (var time in new[] { TimeSpan.Zero, TimeSpan.FromMinutes(90), TimeSpan.FromSeconds(1.5), TimeSpan.FromSeconds(0.1 + 0.2), new TimeSpan(1, 2, 3), new TimeSpan(1, 2, 3, 4, 5), TimeSpan.FromHours(1, 2), -TimeSpan.FromDays(2), TimeSpan.FromMilliseconds(0.4), TimeSpan.FromTicks(7) })
        {
            rig.Control(Text($"{time}_{time.Days}_{time.Hours}_{time.Minutes}_{time.Seconds}_{time.Milliseconds}_{time.Ticks}_{time.TotalDays:R}_{time.TotalHours:R}_{time.TotalMinutes:R}_{time.TotalSeconds:R}_{time.TotalMilliseconds:R}"));
            rig.Control(Text($"{time * 1.5}_{2 * time}_{time / 4}_{time / TimeSpan.FromSeconds(3):R}_{time + TimeSpan.FromSeconds(1)}_{time - TimeSpan.FromSeconds(1)}_{time.Duration()}_{time.Negate()}"));
            rig.Control($"{time > TimeSpan.Zero}_{time <= TimeSpan.Zero}_{time == TimeSpan.FromSeconds(5400)}_{time.Equals(TimeSpan.Zero)}_{time.CompareTo(TimeSpan.FromSeconds(1))}");
        }

        rig.Control(Try(() => TimeSpan.FromDays(1e20)) + Try(() => TimeSpan.FromSeconds(double.NaN)) + Try(() => TimeSpan.MaxValue + TimeSpan.FromTicks(1)) + Try(() => TimeSpan.FromDays(int.MaxValue)));
        """);

    [Fact]
    public void Texts_of_vectors() => FrameworkOracle.Agrees(
        "rig.Control(new Vector3(1.5f, -2, 1e-7f).ToString(\"F2\", CultureInfo.InvariantCulture) + new Vector2(0.1f, 3).ToString(null, CultureInfo.InvariantCulture) + Text($\"{new Vector4(1, 2, 3, 4.25f):0.0}_{new Vector2(1e10f, -0f)}\"));");
}
