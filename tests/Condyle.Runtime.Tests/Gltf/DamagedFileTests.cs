using System.Buffers.Binary;
using System.Numerics;
using Condyle.Runtime.Gltf;
using CsCheck;

namespace Condyle.Runtime.Tests.Gltf;

/// <summary>Whatever is wrong with a file, it is either read or refused by the one exception; nothing else gets out.</summary>
public sealed class DamagedFileTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_glb_cut_at_any_length_is_refused()
    {
        var whole = SampleFile.Glb();
        for (var length = 0; length < whole.Length; length++)
            Assert.Throws<BadInputException>(() => GltfFile.Read(folder.Write("cut.glb", whole[..length])));
    }

    [Fact]
    public void A_glb_cut_at_any_length_whose_header_agrees_is_refused()
    {
        var whole = SampleFile.Glb();
        for (var length = 12; length < whole.Length; length++)
        {
            var cut = whole[..length];
            BinaryPrimitives.WriteInt32LittleEndian(cut.AsSpan(8), length);
            Assert.Throws<BadInputException>(() => GltfFile.Read(folder.Write("cut.glb", cut)));
        }
    }

    [Fact]
    public void A_gltf_cut_at_any_length_is_refused()
    {
        var whole = System.Text.Encoding.UTF8.GetBytes(SampleFile.GltfWithDataUri());
        for (var length = 0; length < whole.Length - 1; length++)
            Assert.Throws<BadInputException>(() => GltfFile.Read(folder.Write("cut.gltf", whole[..length])));
    }

    [Fact]
    public void Bytes_changed_at_random_are_read_or_refused_and_nothing_else()
    {
        var whole = SampleFile.Glb();
        var change = Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte);
        change.Array[1, 6].Sample(changes =>
        {
            var bytes = (byte[])whole.Clone();
            foreach (var (at, value) in changes)
                bytes[at] = value;
            ReadOrRefuse(bytes);
        }, iter: 600, seed: "0000KOIkZ_t3", threads: 1);
    }

    [Fact]
    public void Digits_changed_at_random_are_read_or_refused_and_nothing_else()
    {
        // Counts, offsets, indices and sizes that lie, in JSON that stays well formed.
        var whole = SampleFile.Glb();
        var digits = Enumerable.Range(20, whole.Length - 20).Where(at => whole[at] is >= (byte)'0' and <= (byte)'9').ToArray();
        var change = Gen.Select(Gen.Int[0, digits.Length - 1], Gen.Int['0', '9']);
        change.Array[1, 4].Sample(changes =>
        {
            var bytes = (byte[])whole.Clone();
            foreach (var (at, value) in changes)
                bytes[digits[at]] = (byte)value;
            ReadOrRefuse(bytes);
        }, iter: 600, seed: "0000KOIkZ_t3", threads: 1);
    }

    [Fact]
    public void A_buffer_is_read_through_links_only_below_the_files_folder()
    {
        folder.Write("secret.bin", "harbour");
        folder.Write("work/data/good.bin", "harbour");
        File.CreateSymbolicLink(folder["work/within.bin"], Path.Combine("data", "good.bin"));
        File.CreateSymbolicLink(folder["work/secret.bin"], Path.Combine("..", "secret.bin"));
        Directory.CreateSymbolicLink(folder["work/up"], "..");
        Assert.Equal("harbour"u8, Read("within.bin").Buffers[0].Bytes.Span);
        foreach (var uri in new[] { "secret.bin", "up/secret.bin", "%2e%2e/secret.bin" })
            Assert.Contains($"'{uri}' lies outside the file's folder", Assert.Throws<BadInputException>(() => Read(uri)).Message, StringComparison.Ordinal);

        GltfFile Read(string uri) => GltfFile.Read(folder.Write("work/crate.gltf", $$"""{ "asset": { "version": "2.0" }, "buffers": [ { "byteLength": 7, "uri": "{{uri}}" } ] }"""));
    }

    private void ReadOrRefuse(byte[] bytes)
    {
        try
        {
            var file = GltfFile.Read(folder.Write("changed.glb", bytes));
            _ = GltfSkeleton.Read(file);
            _ = SkeletonFile.Extract(file);
            var clip = new GltfClip("nod", [0], [new GltfTrack(SampleFile.Knee, Rotations: [Quaternion.Identity])]);
            _ = file.Append([clip], replace: true).Model;
        }
        catch (BadInputException problem)
        {
            Assert.Equal(folder["changed.glb"], problem.File);
            Assert.DoesNotContain('\n', problem.Message);
        }
    }
}
