using System.Text.Json.Nodes;
using Condyle.Runtime;

namespace Quayside.Tests;

/// <summary>What an animator gets: the dock worker's controls, as his controls file has them.</summary>
public sealed class StevedoreControlsTests : IDisposable
{
    /// <summary>What goes anywhere: the character as a whole, what limbs reach for, and what the head looks at.</summary>
    private static readonly HashSet<string> Unbounded = new(StringComparer.Ordinal)
    {
        "world", "offset", "body", "look",
        "hand_left", "hand_right", "elbow_pole_left", "elbow_pole_right", "foot_left", "foot_right", "knee_pole_left", "knee_pole_right",
    };

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("quayside-");
    private readonly List<JsonObject> controls;

    public StevedoreControlsTests()
    {
        var file = Path.Combine(folder.FullName, "controls.gltf");
        ControlsFile.Write(RigCompiler.Compile(Condyle.Rig.Build(new Stevedore())), Path.Combine(AppContext.BaseDirectory, "stevedore.gltf"), file);
        controls = [.. JsonNode.Parse(File.ReadAllText(file))!["nodes"]!.AsArray().Select(node => node!.AsObject()).Where(node => Extra(node, "condyleControl") is not null)];
    }

    [Fact]
    public void Each_has_a_shape_a_tint_and_a_layer() =>
        Assert.All(controls, control => Assert.All(["condyleShape", "condyleTint", "condyleLayer"], said => Assert.NotNull(Extra(control, said))));

    [Fact]
    public void Each_stands_at_zero() =>
        Assert.All(controls, control => Assert.True(
            Is(control["translation"], 0, 0, 0) && Is(control["rotation"], 0, 0, 0, 1) && Is(control["scale"], 1, 1, 1), $"{control["name"]} isn't at zero"));

    [Fact]
    public void Each_channel_is_locked_or_limited_but_for_those_of_what_goes_anywhere() =>
        Assert.All(controls.Where(control => !Unbounded.Contains((string)control["name"]!)), control =>
        {
            var held = (Extra(control, "condyleLocked")?.AsArray().Select(channel => (string)channel!) ?? [])
                .Concat(Extra(control, "condyleLimits")?.AsArray().Select(limit => (string)limit!["channel"]!) ?? []).ToHashSet(StringComparer.Ordinal);
            foreach (var channel in from kind in new[] { "move", "turn" } from axis in new[] { "X", "Y", "Z" } select $"{kind} {axis}")
                Assert.True(held.Contains(channel), $"'{control["name"]}' can be brought anywhere by its {channel}");
        });

    /// <summary>Turns are about X, then Y, then Z: with Y at a quarter, X and Z turn about one axis.</summary>
    [Fact]
    public void None_loses_an_axis_within_its_limits() =>
        Assert.All(controls.SelectMany(control => Extra(control, "condyleLimits")?.AsArray().Where(limit => (string)limit!["channel"]! == "turn Y") ?? []), limit =>
            Assert.True((double)limit!["from"]! >= -85 && (double)limit["to"]! <= 85, limit.ToJsonString()));

    public void Dispose() => folder.Delete(recursive: true);

    private static JsonNode? Extra(JsonObject node, string name) => node["extras"]?[name];

    private static bool Is(JsonNode? given, params double[] numbers) => given is null || given.AsArray().Select(number => (double)number!).SequenceEqual(numbers);
}
