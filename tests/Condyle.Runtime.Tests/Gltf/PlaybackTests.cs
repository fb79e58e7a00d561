using System.Numerics;
using Condyle.Runtime.Gltf;
using Condyle.Tests.Shared;
using CsCheck;

namespace Condyle.Runtime.Tests.Gltf;

/// <summary>Appended clips play back to the motion that was handed in, here and in programs that nobody here made.</summary>
public sealed class PlaybackTests : IDisposable
{
    private static readonly string[] Targets = ["out.glb", "out.gltf"];

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Against SharpGLTF's own playback, <c>Node.GetWorldMatrix(animation, time)</c>.</summary>
    [Fact]
    public void Random_clips_read_back_to_the_same_world_matrices_at_their_keys()
    {
        var file = GltfFile.Read(folder.Write("leg.glb", SampleFile.Glb()));
        Clips.Sample(clip =>
        {
            foreach (var target in Targets)
            {
                file.Append([clip]).Write(folder[target]);
                var playback = DoublePlayback.Open(folder[target]);
                var model = GltfFile.Read(folder[target]).Model;
                var animation = model.LogicalAnimations.Single(item => item.Name == clip.Name);
                foreach (var time in clip.Times)
                {
                    var expected = playback.World(clip.Name, time);
                    foreach (var node in model.LogicalNodes)
                        Near.AssertEqual(expected[node.LogicalIndex], node.GetWorldMatrix(animation, time), 2e-5);
                }
            }
        }, iter: 40, threads: 1);
    }

    /// <summary>What comes out of the double playback at a key is what the clip said, so that the playback itself is held to the clip.</summary>
    [Fact]
    public void The_double_playback_shows_the_clips_own_values_at_its_keys()
    {
        var file = GltfFile.Read(folder.Write("leg.glb", SampleFile.Glb()));
        var still = GltfSkeleton.Read(file).Joints.ToDictionary(joint => joint.Node);
        Clips.Sample(clip =>
        {
            file.Append([clip]).Write(folder["out.glb"]);
            var playback = DoublePlayback.Open(folder["out.glb"]);
            for (var key = 0; key < clip.Times.Length; key++)
            {
                var world = playback.World(clip.Name, clip.Times[key]);
                foreach (var track in clip.Tracks)
                {
                    var rest = still[track.Node];
                    var local = (rest with
                    {
                        Translation = track.Translations?[key] ?? rest.Translation,
                        Rotation = track.Rotations?[key] ?? rest.Rotation,
                        Scale = track.Scales?[key] ?? rest.Scale,
                    }).Local;
                    var parent = still[track.Node].Parent is var above and >= 0 ? ToMatrix(world[above]) : Matrix4x4.Identity;
                    Near.AssertEqual(world[track.Node], local * parent, 2e-5);
                }
            }
        }, iter: 60, threads: 1);
    }

    /// <summary>Against gltf-validator and three.js (GLTFLoader, AnimationMixer), on and between keys.</summary>
    [SkippableFact]
    public void The_standards_validator_finds_nothing_new_and_three_js_plays_the_same_motion()
    {
        var source = folder.Write("leg.glb", SampleFile.Glb());
        var before = OutsideChecks.Validate(source);
        Assert.True(before is { Errors: 0 }, string.Join("\n", before.Messages));
        GltfClip? clip = null;
        Clips.Sample(sample => clip ??= sample, iter: 1, seed: "0000KOIkZ_t3", threads: 1);
        var file = GltfFile.Read(source).Append([clip!]);

        foreach (var target in Targets)
        {
            file.Write(folder[target]);
            var report = OutsideChecks.Validate(folder[target]);
            Assert.Equal((before.Errors, before.Warnings), (report.Errors, report.Warnings));

            double[] times = [0, .. clip!.Times.Select(time => (double)time), .. clip.Times.Zip(clip.Times.Skip(1), (a, b) => (double)(a + (b - a) * 0.3f)), 100];
            int[] nodes = [.. Enumerable.Range(0, 11)];
            var playback = DoublePlayback.Open(folder[target]);
            foreach (var name in (string[])[clip.Name, "wave"])
            {
                var played = OutsideChecks.Play(folder[target], name, times, nodes);
                foreach (var (index, time) in times.Index())
                {
                    var expected = playback.World(name, time);
                    foreach (var node in nodes)
                        Near.AssertEqual(expected[node], played[index][node], 1e-5, $"{target}, {name}, node {node} at {time} s:");
                }
            }
        }
    }

    /// <summary>Neighbouring rotations stay within a quarter turn, where every way of playing LINEAR agrees on the short way.</summary>
    private static Gen<GltfClip> Clips
    {
        get
        {
            var vector = Gen.Select(Gen.Float[-1, 1], Gen.Float[-1, 1], Gen.Float[-1, 1], (x, y, z) => new Vector3(x, y, z));
            var turn = Gen.Select(vector.Where(axis => axis.Length() > 0.1f), Gen.Float[-1.5f, 1.5f],
                (axis, angle) => Quaternion.CreateFromAxisAngle(Vector3.Normalize(axis), angle));
            var factor = vector.Select(v => Vector3.One + v / 4);
            return Gen.Select(Gen.Float[0.01f, 0.5f].Array[1, 8], Gen.Int[1, 7].Array[5], Gen.Float[0, 1]).SelectMany((gaps, channels, start) =>
            {
                var count = gaps.Length;
                int[] joints = [SampleFile.Rig, SampleFile.Pelvis, SampleFile.Knee, SampleFile.Ankle, SampleFile.Toes];
                return Gen.Select(vector.Array[5 * count], turn.Array[5 * count], factor.Array[5 * count], (t, r, s) => new GltfClip("lift a crate",
                    [.. gaps.Select((_, i) => start + gaps.Take(i).Sum())],
                    [.. joints.Select((node, i) => new GltfTrack(node,
                        (channels[i] & 1) != 0 ? t[(i * count)..((i + 1) * count)] : null,
                        (channels[i] & 2) != 0 ? Walked(r[(i * count)..((i + 1) * count)]) : null,
                        (channels[i] & 4) != 0 ? s[(i * count)..((i + 1) * count)] : null))]));
            });
        }
    }

    private static Quaternion[] Walked(Quaternion[] turns)
    {
        for (var i = 1; i < turns.Length; i++)
            turns[i] = Quaternion.Normalize(turns[i] * turns[i - 1]);
        return turns;
    }

    private static Matrix4x4 ToMatrix(double[] m) => new(
        (float)m[0], (float)m[1], (float)m[2], (float)m[3], (float)m[4], (float)m[5], (float)m[6], (float)m[7],
        (float)m[8], (float)m[9], (float)m[10], (float)m[11], (float)m[12], (float)m[13], (float)m[14], (float)m[15]);
}
