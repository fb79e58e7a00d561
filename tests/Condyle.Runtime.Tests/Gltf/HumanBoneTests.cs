using Condyle.Runtime.Gltf;

namespace Condyle.Runtime.Tests.Gltf;

/// <summary>Humanoid bones as VRM 1.0 maps them, and files with several scenes and skins and with joints outside a skin.</summary>
public sealed class HumanBoneTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_humanoid_bone_is_found_whatever_its_joint_is_called()
    {
        var skeleton = Read(Humanoid("""{ "hips": { "node": 0 }, "leftUpperArm": { "node": 1 }, "leftLowerArm": { "node": 2 } }"""));
        Assert.Equal("J_Bip_L_17", skeleton.HumanBone("leftUpperArm").Name);
        Assert.Equal(["hips", "leftLowerArm", "leftUpperArm"], skeleton.HumanBones.Keys.Order(StringComparer.Ordinal));
        Assert.Contains("The nearest that it has: 'leftUpperArm'", Assert.Throws<ArgumentException>(() => skeleton.HumanBone("leftUperArm")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_doesnt_say_has_no_bones()
    {
        var skeleton = Read(Humanoid("{}").Replace("VRMC_vrm", "OTHER_vrm", StringComparison.Ordinal));
        Assert.Empty(skeleton.HumanBones);
        Assert.Contains("which humanoid bone it is", Assert.Throws<ArgumentException>(() => skeleton.HumanBone("hips")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "hips": { "node": 9 } }""", "/extensions/VRMC_vrm/humanoid/humanBones/hips/node")]
    [InlineData("""{ "hips": { "node": 0 }, "spine": { "node": 0 } }""", "/extensions/VRMC_vrm/humanoid/humanBones/spine/node")]
    [InlineData("""{ "hips": 3 }""", "/extensions/VRMC_vrm/humanoid/humanBones/hips")]
    [InlineData("[]", "/extensions/VRMC_vrm/humanoid/humanBones")]
    public void A_bone_that_cant_be_is_told_with_its_place(string bones, string place) =>
        Assert.Equal(place, Assert.Throws<BadInputException>(() => Read(Humanoid(bones))).Place);

    [Fact]
    public void An_extension_that_the_file_forgot_to_declare_is_read_all_the_same()
    {
        var undeclared = Humanoid("""{ "hips": { "node": 0 } }""").Replace("\"extensionsUsed\": [\"VRMC_vrm\"],", "", StringComparison.Ordinal)
            .Replace("{ \"name\": \"J_Bip_L_18\" }", "{ \"name\": \"J_Bip_L_18\", \"extensions\": { \"VRMC_node_constraint\": { \"specVersion\": \"1.0\" } } }", StringComparison.Ordinal);
        Assert.DoesNotContain("extensionsUsed", undeclared, StringComparison.Ordinal);
        Assert.Equal("J_Bip_C_01", Read(undeclared).HumanBone("hips").Name);
        GltfFile.Read(folder["character.gltf"]).Append([new GltfClip("nod", [0], [new GltfTrack(1, Rotations: [System.Numerics.Quaternion.Identity])])]).Write(folder["out.glb"]);
        Assert.Equal("hips", Assert.Single(GltfSkeleton.Read(GltfFile.Read(folder["out.glb"])).HumanBones).Key);
    }

    [Fact]
    public void A_packed_file_says_what_to_do()
    {
        var packed = Humanoid("{}").Replace("\"extensionsUsed\": [\"VRMC_vrm\"],", "\"extensionsUsed\": [\"EXT_meshopt_compression\"], \"extensionsRequired\": [\"EXT_meshopt_compression\"],", StringComparison.Ordinal);
        Assert.EndsWith(
            " at /extensionsRequired/0 is 'EXT_meshopt_compression': the file's data are packed, and can't be unpacked here. Export it without that compression, and compress what is baked when the engine's files are made.",
            Assert.Throws<BadInputException>(() => Read(packed)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_extension_survives_a_bake()
    {
        var path = folder.Write("character.gltf", Humanoid("""{ "hips": { "node": 0 } }"""));
        GltfFile.Read(path).Append([new GltfClip("nod", [0], [new GltfTrack(1, Rotations: [System.Numerics.Quaternion.Identity])])]).Write(folder["out.glb"]);
        Assert.Equal("hips", Assert.Single(GltfSkeleton.Read(GltfFile.Read(folder["out.glb"])).HumanBones).Key);
    }

    [Fact]
    public void Several_scenes_and_skins_make_one_skeleton_and_joints_outside_a_skin_belong_to_it()
    {
        var skeleton = Read("""
            {
              "asset": { "version": "2.0" }, "scene": 1,
              "scenes": [ { "nodes": [0] }, { "nodes": [0, 3] } ],
              "nodes": [ { "name": "hips", "children": [1, 2] }, { "name": "spine" }, { "name": "prop_socket" }, { "name": "gull", "children": [4] }, { "name": "wing" } ],
              "skins": [ { "joints": [0, 1] }, { "joints": [4] } ]
            }
            """);
        Assert.Equal(["hips", "spine", "prop_socket", "gull", "wing"], skeleton.Joints.Select(joint => joint.Name));
        Assert.Equal([true, true, false, false, true], skeleton.Joints.Select(joint => joint.MovesSkin));
        Assert.Equal([[0, 1], [4]], skeleton.Skins.Select(skin => skin.Joints));
    }

    private GltfSkeleton Read(string json) => GltfSkeleton.Read(GltfFile.Read(folder.Write("character.gltf", json)));

    private static string Humanoid(string bones) => $$"""
        {
          "asset": { "version": "2.0" }, "extensionsUsed": ["VRMC_vrm"],
          "nodes": [ { "name": "J_Bip_C_01", "children": [1] }, { "name": "J_Bip_L_17", "children": [2] }, { "name": "J_Bip_L_18" } ],
          "extensions": { "VRMC_vrm": { "specVersion": "1.0", "humanoid": { "humanBones": {{bones}} } } }
        }
        """;
}
