using Condyle.Analyzers.Skeletons;
using Condyle.Runtime.Gltf;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Tests.Skeletons;

/// <summary>Humanoid bones of VRM 1.0: members by what joints are, whatever they are called.</summary>
public class HumanBoneTests
{
    private const string Mapped = """
        "extensions": { "VRMC_vrm": { "specVersion": "1.0", "humanoid": { "humanBones": { "hips": { "node": 0 }, "leftUpperArm": { "node": 1 }, "rightUpperArm": { "node": 2 }, "leftHand": { "node": 3 } } } } },
        """;

    private const string Marked = """
        { "name": "J_01", "children": [1, 2], "extras": { "condyleHumanBone": "hips" } }, { "name": "J_02", "children": [3], "extras": { "condyleHumanBone": "leftUpperArm" } },
        { "name": "J_03", "extras": { "condyleHumanBone": "rightUpperArm" } }, { "name": "J_04", "extras": { "condyleHumanBone": "leftHand" } }
        """;

    private const string Plain = """{ "name": "J_01", "children": [1, 2] }, { "name": "J_02", "children": [3] }, { "name": "J_03" }, { "name": "J_04" }""";

    [Theory]
    [InlineData(Mapped, Plain)]
    [InlineData("", Marked)]
    [InlineData(Mapped, Marked)]
    public void A_joint_is_found_by_the_bone_that_it_is(string mapping, string nodes)
    {
        var run = GeneratorRun.Of(File(mapping, nodes));
        Assert.Empty(run.Result.Diagnostics);
        Assert.Empty(run.Compilation.GetDiagnostics().Where(diagnostic => diagnostic.Severity >= DiagnosticSeverity.Warning));
        Assert.Contains("HumanHips = node0;", run.Code);
        Assert.Contains("HumanUpperArm = new global::Condyle.JointPair(node1, node2);", run.Code);
        Assert.Contains("HumanLeftHand = node3;", run.Code);
        Assert.Contains("The humanoid bones <c>leftUpperArm</c> and <c>rightUpperArm</c> of VRM 1.0: the joints <c>J_02</c> and <c>J_03</c>.", run.Code);
        Assert.Contains("public global::Condyle.Joint J01 { get; }", run.Code);
    }

    [Theory]
    [InlineData("\"extensions\": [],")]
    [InlineData("\"extensions\": { \"VRMC_vrm\": 3 },")]
    [InlineData("\"extensions\": { \"VRMC_vrm\": { \"humanoid\": { \"humanBones\": { \"head\": null } } } },")]
    public void A_mapping_of_another_shape_says_nothing(string mapping)
    {
        var run = GeneratorRun.Of(File(mapping, Plain));
        Assert.Empty(run.Result.Diagnostics);
        Assert.DoesNotContain("Human", run.Code);
    }

    [Theory]
    [InlineData("{ \"hips\": { \"node\": 9 } }", "is 9, but the file has 4 nodes")]
    [InlineData("{ \"hips\": { \"node\": 0 }, \"spine\": { \"node\": 0 } }", "makes one node both 'hips' and 'spine'")]
    [InlineData("{ \"hips\": { \"node\": 0 }, \"hips\": { \"node\": 1 } }", "has two members of one name")]
    public void A_bone_that_cannot_be_is_told(string bones, string told) => Assert.Contains(
        told,
        Assert.Single(GeneratorRun.Of(File($"\"extensions\": {{ \"VRMC_vrm\": {{ \"humanoid\": {{ \"humanBones\": {bones} }} }} }},", Plain)).Result.Diagnostics).GetMessage());

    private const string Place = "/extensions/VRMC_vrm/humanoid/humanBones", Mark = "/nodes/2/extras/condyleHumanBone";

    /// <summary>The generator and the program read the same out of the same file, or refuse it at the same place.</summary>
    [Theory]
    [InlineData("""{ "hips": { "node": 0 }, "leftHand": { "node": 3 } }""", null, "hips 0, leftHand 3")]
    [InlineData(null, "leftHand", "leftHand 2")]
    [InlineData("""{ "hips": { "node": 0 } }""", "leftHand", "hips 0, leftHand 2")]
    [InlineData("""{ "hips": { "node": 0 }, "leftHand": { "node": 2 } }""", "leftHand", "hips 0, leftHand 2")]
    [InlineData("""{ "hips": { "node": 0.0 }, "head": null }""", null, "hips 0")]
    [InlineData("""{ "leftHand": { "node": 3 } }""", "leftHand", Mark)]
    [InlineData("""{ "hips": { "node": 2 } }""", "leftHand", Mark)]
    [InlineData("""{ "hips": { "node": 0 }, "spine": { "node": 0 } }""", null, Place + "/spine/node")]
    [InlineData("""{ "hips": { "node": 9 } }""", null, Place + "/hips/node")]
    [InlineData("""{ "hips": { "node": 0.5 } }""", null, Place + "/hips/node")]
    [InlineData("""{ "hips": { } }""", null, Place + "/hips")]
    [InlineData("""{ "hips": 3 }""", null, Place + "/hips")]
    [InlineData("[]", null, Place)]
    public void The_generator_and_the_program_agree(string? mapping, string? mark, string expected)
    {
        var nodes = mark is null ? Plain : Plain.Replace("{ \"name\": \"J_03\" }", $"{{ \"name\": \"J_03\", \"extras\": {{ \"condyleHumanBone\": \"{mark}\" }} }}", StringComparison.Ordinal);
        var json = File(mapping is null ? "" : $"\"extensions\": {{ \"VRMC_vrm\": {{ \"humanoid\": {{ \"humanBones\": {mapping} }} }} }},", nodes);
        Assert.Equal(expected, Generated(json));
        Assert.Equal(expected, Read(json));
    }

    private static string Generated(string json)
    {
        try
        {
            var joints = SkeletonReader.Read(new Utf8File(SourceText.From(json)), SkeletonNaming.Default, CancellationToken.None);
            return string.Join(", ", joints.Where(joint => joint.HumanBone is not null).OrderBy(joint => joint.Node).Select(joint => $"{joint.HumanBone} {joint.Node}"));
        }
        catch (SkeletonFileException problem)
        {
            return problem.Pointer!;
        }
    }

    private static string Read(string json)
    {
        var folder = Directory.CreateTempSubdirectory("condyle-bones-");
        try
        {
            var path = Path.Combine(folder.FullName, "character.gltf");
            System.IO.File.WriteAllText(path, json);
            var skeleton = GltfSkeleton.Read(GltfFile.Read(path));
            return string.Join(", ", skeleton.HumanBones.Select(bone => (bone.Key, skeleton.Joints[bone.Value].Node)).OrderBy(bone => bone.Node).Select(bone => $"{bone.Key} {bone.Node}"));
        }
        catch (Runtime.BadInputException problem)
        {
            return problem.Place!;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string File(string mapping, string nodes) =>
        "{ \"asset\": { \"version\": \"2.0\" }, " + mapping + " \"nodes\": [" + nodes + "], \"skins\": [ { \"joints\": [0, 1, 2, 3] } ] }";
}
