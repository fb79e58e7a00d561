using Condyle.Tests.Shared;

namespace Newcomers.Tests;

/// <summary>Whoever arrives is rigged, rests as delivered, and plays as the live rig moves.</summary>
public sealed class ArrivalTests : IDisposable
{
    private readonly Harbour harbour = new();

    public static TheoryData<string> Oddities => [.. Arrivals.All.Keys];

    public void Dispose() => harbour.Dispose();

    /// <summary>Against a playback that reads the written bytes, straight from the text of the glTF 2.0 specification.</summary>
    [Theory]
    [MemberData(nameof(Oddities))]
    public void A_file_is_rigged_whatever_is_odd_about_it(string oddity)
    {
        var file = Arrive(oddity);
        Assert.True(harbour.Run(file) == 0, harbour.Output + harbour.Error);
        Assert.Empty(harbour.Error);

        var live = new LiveNewcomer(file);
        live.AssertRests();
        var written = DoublePlayback.Open(harbour["newcomer-rigged.glb"]);
        foreach (var time in live.Times(60))
        {
            var worlds = written.World("range_of_motion", time);
            live.AssertPlays(time, node => worlds[node]);
        }
    }

    /// <summary>Against gltf-validator, the validator of the standard, and three.js in Node.js: on what other programs may see in another way.</summary>
    [SkippableTheory]
    [InlineData("a root scaled by 100 that brings Z up to Y")]
    [InlineData("uneven scales over turned joints")]
    [InlineData("mirrored joints")]
    [InlineData("matrices rounded to three decimals")]
    [InlineData("a mirrored matrix at the root")]
    [InlineData("rotations rounded to four decimals")]
    [InlineData("names with spaces, dots, colons, brackets and worse")]
    [InlineData("a head of no size")]
    [InlineData("several skins")]
    [InlineData("a skinned mesh above its joints")]
    [InlineData("a skinned mesh, props and a camera below joints")]
    [InlineData("clips of its own, one of them called as ours")]
    [InlineData("morph targets, sparse")]
    [InlineData("extensions and extras")]
    public void The_written_file_is_no_worse_than_the_delivered_one_and_plays_elsewhere(string oddity)
    {
        var file = Arrive(oddity);
        Assert.Equal(0, harbour.Run(file));
        OutsideHarbour.AssertNoWorse(file, harbour["newcomer-rigged.glb"]);
        OutsideHarbour.AssertPlays(file, harbour["newcomer-rigged.glb"], frames: 12);
    }

    [Fact]
    public void A_file_that_was_rigged_can_be_rigged_again()
    {
        harbour.Write("newcomer.glb", Character.Whole().Glb());
        Assert.Equal(0, harbour.Run(harbour["newcomer.glb"]));
        Assert.Equal(0, harbour.Run(harbour["newcomer-rigged.glb"], harbour["again.glb"]));
    }

    [Fact]
    public void A_gltf_with_its_buffer_beside_it_becomes_one_file()
    {
        var json = Character.Whole().Gltf("parts/bo%20dy.bin", out var buffer);
        harbour.Write("parts/bo dy.bin", buffer);
        harbour.Write("newcomer.gltf", System.Text.Encoding.UTF8.GetBytes(json));
        Assert.Equal(0, harbour.Run(harbour["newcomer.gltf"], harbour["out/newcomer.gltf"]));
        Directory.Delete(harbour["parts"], recursive: true);
        Assert.NotEmpty(DoublePlayback.Open(harbour["out/newcomer.gltf"]).World("range_of_motion", 1));
    }

    [Fact]
    public void A_gltf_with_its_buffer_inside_and_a_byte_order_mark_is_read()
    {
        harbour.Write("newcomer.gltf", [0xEF, 0xBB, 0xBF, .. System.Text.Encoding.UTF8.GetBytes(Character.Whole().Gltf())]);
        Assert.Equal(0, harbour.Run(harbour["newcomer.gltf"]));
    }

    [Fact]
    public void What_breaks_the_standard_elsewhere_is_noted_and_stays()
    {
        var character = Character.Whole();
        character.List("accessors")[0]!["max"] = Character.Numbers(1, 1, 1);
        harbour.Write("newcomer.glb", character.Glb());
        Assert.Equal(0, harbour.Run(harbour["newcomer.glb"]));
        Assert.Contains("note: Accessor[0]", harbour.Output, StringComparison.Ordinal);
    }

    private string Arrive(string oddity) => harbour.Write("newcomer.glb", Arrivals.All[oddity]().Glb());
}
