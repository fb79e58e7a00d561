using System.Text;

namespace Newcomers.Tests;

/// <summary>What can't be rigged gets one line that says why, exit code 2, and leaves nothing behind.</summary>
public sealed class BadFileTests : IDisposable
{
    private readonly Harbour harbour = new();

    public static TheoryData<string, string, byte[]> Files => new()
    {
        { "empty.glb", "the file is empty", [] },
        { "words.gltf", "the JSON is malformed", Encoding.UTF8.GetBytes("hello") },
        { "cut.glb", "the .glb is damaged", Character.Whole().Glb()[..900] },
        { "picture.gltf", "is no glTF file", Encoding.UTF8.GetBytes("{}") },
        { "nothing.gltf", "no nodes", Encoding.UTF8.GetBytes("""{"asset":{"version":"2.0"}}""") },
        { "zero.glb", "'chest' at /nodes/1/rotation is a zero quaternion", Character.Whole((bone, node) => _ = bone is "chest" ? node["rotation"] = Character.Numbers(0, 0, 0, 0) : null).Glb() },
        { "long.glb", "'chest' at /nodes/1/rotation is a quaternion of length 1.05", Character.Whole((bone, node) => _ = bone is "chest" ? node["rotation"] = Character.Numbers(0, 0, 0, 1.05f) : null).Glb() },
        { "sheared.glb", "'chest' at /nodes/1/matrix is sheared", Character.Whole(Shear).Glb() },
        { "lost.gltf", "the file 'body.bin' isn't there", Encoding.UTF8.GetBytes(Character.Whole().Gltf("body.bin", out _)) },
        { "tide.glb", "HARBOUR_tide", Requiring("HARBOUR_tide").Glb() },
    };

    public void Dispose() => harbour.Dispose();

    [Theory]
    [MemberData(nameof(Files))]
    public void It_is_told_in_one_line(string name, string words, byte[] bytes)
    {
        harbour.Write(name, bytes);
        AssertRefused(words, harbour[name]);
        Assert.Equal([name], harbour.FileNames);
    }

    [Theory]
    [InlineData("isn't there", "gone.glb")]
    [InlineData("extension is neither .glb nor .gltf", "newcomer.glb", "out.fbx")]
    [InlineData("the output is the delivered file itself", "newcomer.glb", "newcomer.glb")]
    [InlineData("can't be written", "newcomer.glb", "newcomer.glb/out.glb")]
    public void So_is_a_path_that_cannot_be(string words, params string[] names)
    {
        harbour.Write("newcomer.glb", Character.Whole().Glb());
        AssertRefused(words, [.. names.Select(name => harbour[name])]);
        Assert.Equal(["newcomer.glb"], harbour.FileNames);
    }

    [Theory]
    [InlineData("isn't understood", "--fast", "newcomer.glb")]
    [InlineData("isn't understood", "a.glb", "b.glb", "c.glb")]
    public void So_is_a_command_line_that_means_nothing(string words, params string[] arguments) => AssertRefused(words, arguments);

    [Fact]
    public void Without_a_file_the_program_says_what_it_takes()
    {
        Assert.Equal(2, harbour.Run());
        Assert.Contains("FILE [OUT]", harbour.Output, StringComparison.Ordinal);
    }

    private void AssertRefused(string words, params string[] arguments)
    {
        Assert.Equal(2, harbour.Run(arguments));
        Assert.StartsWith("error: ", harbour.Error, StringComparison.Ordinal);
        Assert.Contains(words, harbour.Error, StringComparison.Ordinal);
        Assert.Single(harbour.Error.TrimEnd().Split('\n'));
    }

    private static void Shear(string bone, System.Text.Json.Nodes.JsonObject node)
    {
        if (bone is "chest" && node.Remove("translation"))
            node["matrix"] = Character.Numbers(1, 0, 0, 0, 0.3f, 1, 0, 0, 0, 0, 1, 0, 0, 0.35f, 0, 1);
    }

    private static Character Requiring(string extension)
    {
        var character = Character.Whole();
        character.List("extensionsUsed").Add(extension);
        character.List("extensionsRequired").Add(extension);
        return character;
    }
}
