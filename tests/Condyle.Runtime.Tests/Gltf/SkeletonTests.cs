using System.Numerics;
using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf;
using Condyle.Tests.Shared;
using CsCheck;

namespace Condyle.Runtime.Tests.Gltf;

public sealed class SkeletonTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Joints_their_ancestors_and_what_hangs_below_them_make_the_skeleton()
    {
        var skeleton = GltfSkeleton.Read(Sample());
        // Neither body and boot, which are no joints, nor the lamp, its wick and the camera, which joints carry.
        Assert.Equal(["rig", "pelvis", "knee", "ankle", "node_4", "knee_5"], skeleton.Joints.Select(joint => joint.Name));
        Assert.Equal([-1, 0, 1, 2, 3, 1], skeleton.Joints.Select(joint => joint.Parent));
        Assert.Equal([0, 1, 2, 3, 4, 5], skeleton.Joints.Select(joint => joint.Node));
        Assert.Equal([false, true, true, true, true, false], skeleton.Joints.Select(joint => joint.MovesSkin));
        Assert.Equal(3, skeleton.IndexOf("ankle"));
        Assert.Equal(-1, skeleton.IndexOf("lamp"));
    }

    [Fact]
    public void Each_skin_keeps_its_joints_in_order_and_its_bind_pose()
    {
        var skins = GltfSkeleton.Read(Sample()).Skins;
        Assert.Equal(["leg", null], skins.Select(skin => skin.Name));
        Assert.Equal([1, 2, 3], skins[0].Joints);
        Assert.Equal([3, 4], skins[1].Joints);
        Assert.Equal(new Vector3(-0.1f, -0.05f, 0.02f), skins[0].InverseBind[2].Translation);
    }

    [Fact]
    public void Rest_matrices_equal_the_specifications_in_double_precision()
    {
        var file = Sample();
        var skeleton = GltfSkeleton.Read(file);
        var expected = DoublePlayback.Open(file.Path).World(null, 0);
        foreach (var (joint, world) in skeleton.Joints.Zip(skeleton.RestWorld()))
            Near.AssertEqual(expected[joint.Node], world, 1e-6);
    }

    [Fact]
    public void Children_that_come_first_in_the_file_come_after_their_parents()
    {
        var file = Read("""{"asset":{"version":"2.0"},"nodes":[{"name":"hand"},{"name":"arm","children":[0]},{"name":"trunk","children":[3,1]},{"name":"head"}]}""");
        var skeleton = GltfSkeleton.Read(file);
        Assert.Equal(["trunk", "head", "arm", "hand"], skeleton.Joints.Select(joint => joint.Name));
        Assert.Equal([-1, 0, 0, 2], skeleton.Joints.Select(joint => joint.Parent));
    }

    [Theory]
    [InlineData("[1,0,0,0, 0.5,1,0,0, 0,0,1,0, 0,0,0,1]", "sheared")]
    [InlineData("[1,0,0,0, 0,1,0,0, 0,0,1e-12,0, 0,0,0,1]", "flattens")]
    public void A_joint_matrix_that_translation_rotation_and_scale_cannot_say_is_refused(string matrix, string word)
    {
        var file = Read($$"""{"asset":{"version":"2.0"},"nodes":[{"name":"elbow","matrix":{{matrix}}}]}""");
        var problem = Assert.Throws<BadInputException>(() => GltfSkeleton.Read(file));
        Assert.Equal(("elbow", "/nodes/0/matrix"), (problem.Node, problem.Place));
        Assert.Contains(word, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_without_nodes_has_no_skeleton() =>
        Assert.Throws<BadInputException>(() => GltfSkeleton.Read(Read("""{"asset":{"version":"2.0"}}""")));

    [Fact]
    public void Any_matrix_made_of_translation_rotation_and_scale_is_taken_apart_exactly()
    {
        var number = Gen.Double[-3, 3];
        var factor = Gen.Select(Gen.Double[0.05, 20], Gen.Bool, (size, negative) => negative ? -size : size);
        var parts = Gen.Select(number.Array[3], number.Array[4].Where(q => q.Sum(x => x * x) > 0.01), factor.Array[3]);
        parts.Sample((t, q, s) =>
        {
            var matrix = Compose(t, q, s);
            var path = folder.Write("one.gltf", $$"""{"asset":{"version":"2.0"},"nodes":[{"matrix":{{new JsonArray([.. matrix.Select(x => JsonValue.Create(x))]).ToJsonString()}}}]}""");
            var joint = GltfSkeleton.Read(GltfFile.Read(path)).Joints[0];
            Near.AssertEqual(matrix, joint.Local, 3e-6 * s.Max(Math.Abs));
            Assert.Equal(1, joint.Rotation.Length(), 1e-6f);
        }, iter: 200, threads: 1);
    }

    private static double[] Compose(double[] t, double[] q, double[] s)
    {
        var length = Math.Sqrt(q.Sum(v => v * v));
        var (x, y, z, w) = (q[0] / length, q[1] / length, q[2] / length, q[3] / length);
        return
        [
            s[0] * (1 - 2 * (y * y + z * z)), s[0] * 2 * (x * y + z * w), s[0] * 2 * (x * z - y * w), 0,
            s[1] * 2 * (x * y - z * w), s[1] * (1 - 2 * (x * x + z * z)), s[1] * 2 * (y * z + x * w), 0,
            s[2] * 2 * (x * z + y * w), s[2] * 2 * (y * z - x * w), s[2] * (1 - 2 * (x * x + y * y)), 0,
            t[0], t[1], t[2], 1,
        ];
    }

    private GltfFile Sample() => GltfFile.Read(folder.Write("leg.glb", SampleFile.Glb()));

    private GltfFile Read(string json) => GltfFile.Read(folder.Write("a.gltf", json));
}
