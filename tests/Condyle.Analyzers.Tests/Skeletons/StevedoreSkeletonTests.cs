using System.Globalization;
using System.Numerics;
using System.Runtime.Loader;
using System.Text.Json;
using Condyle.Model;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Analyzers.Tests.Skeletons;

/// <summary>The class of a real file, compiled and run against Condyle itself.</summary>
public class StevedoreSkeletonTests
{
    private const string Definition =
        """
        internal sealed class Everything : Condyle.IRigDefinition
        {
            public System.Collections.Generic.List<string> Said { get; } = new System.Collections.Generic.List<string>();

            public void Define(Condyle.RigDraft rig)
            {
                StevedoreSkeleton joints = StevedoreSkeleton.In(rig);
                Said.Add(joints.Pelvis.Name);
                foreach (var side in Condyle.Side.Both)
                {
                    Said.Add(joints.Shoulder[side].Name);
                    foreach (var twist in joints.ElbowTwists[side])
                        Said.Add(twist.Name);
                    foreach (var joint in joints.LittleJoints[side])
                        Said.Add(joint.Name);
                    Said.Add(joints.ShoulderTwists[side].Count + " of " + joints.HipTwists[side][0].Name);
                }
            }
        }
        """;

    private static readonly Lazy<(List<string> Said, RigModel Model)> Built = new(Build);

    private static string Json => File.ReadAllText(Repository.PathTo("sample-rigs", "Quayside", "stevedore.gltf"));

    [Fact]
    public void Joints_are_reached_by_side_and_by_series() => Assert.Equal(
        [
            "pelvis",
            "shoulder_left", "elbow_twist_1_left", "elbow_twist_2_left", "little_1_left", "little_2_left", "little_3_left", "1 of hip_twist_left",
            "shoulder_right", "elbow_twist_1_right", "elbow_twist_2_right", "little_1_right", "little_2_right", "little_3_right", "1 of hip_twist_right",
        ],
        Built.Value.Said);

    [Fact]
    public void Every_joint_stands_as_it_was_delivered()
    {
        using var document = JsonDocument.Parse(Json);
        var nodes = document.RootElement.GetProperty("nodes").EnumerateArray().Where(node => !node.TryGetProperty("mesh", out _)).ToList();
        var declared = Built.Value.Model.Nodes.ToDictionary(node => node.Name.ToString());

        Assert.Equal(nodes.Select(Name).Order(), declared.Keys.Order());
        foreach (var node in nodes)
        {
            Assert.True(declared[Name(node)].Rest.TryKnown(out var rest));
            Assert.Equal(new Vector3(Numbers(node, "translation")), rest.Translation);
            var rotation = Numbers(node, "rotation");
            Assert.InRange((new Quaternion(rotation[0], rotation[1], rotation[2], rotation[3]) - rest.Rotation).Length(), 0, 2e-7);
            Assert.Equal(Vector3.One, rest.Scale);
            foreach (var child in node.TryGetProperty("children", out var children) ? children.EnumerateArray() : [])
            {
                Assert.True(declared[Name(document.RootElement.GetProperty("nodes")[child.GetInt32()])].Parent.TryKnown(out var parent));
                Assert.Same(declared[Name(node)], parent);
            }
        }
    }

    [Theory]
    [InlineData("root", JointRole.Helper)]
    [InlineData("grip_left", JointRole.Helper)]
    [InlineData("elbow_twist_2_right", JointRole.Twist)]
    [InlineData("elbow_right", JointRole.Deform)]
    public void Every_joint_has_its_role(string joint, JointRole role)
    {
        Assert.True(Built.Value.Model.Nodes.Single(node => node.Name.ToString() == joint).Role.TryKnown(out var declared));
        Assert.Equal(role, declared);
    }

    private static (List<string> Said, RigModel Model) Build()
    {
        var run = GeneratorRun.Of(Json, "stevedore.gltf");
        var compilation = run.Compilation.AddSyntaxTrees(CSharpSyntaxTree.ParseText(Definition, (CSharpParseOptions)run.Compilation.SyntaxTrees.Single().Options));
        using var assembly = new MemoryStream();
        var emitted = compilation.Emit(assembly);
        Assert.Empty(emitted.Diagnostics);
        assembly.Position = 0;

        var type = AssemblyLoadContext.Default.LoadFromStream(assembly).GetType("Everything", throwOnError: true)!;
        var definition = (IRigDefinition)Activator.CreateInstance(type)!;
        return ((List<string>)type.GetProperty("Said")!.GetValue(definition)!, Rig.Examine(definition).Model);
    }

    private static string Name(JsonElement node) => node.GetProperty("name").GetString()!;

    private static float[] Numbers(JsonElement node, string member) =>
        [.. node.GetProperty(member).EnumerateArray().Select(number => float.Parse(number.GetRawText(), CultureInfo.InvariantCulture))];
}
