using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Tests.Skeletons;

public class MemberTests
{
    [Theory]
    [InlineData("JointSetPair IndexJoints", "index_2_left", "index_1_left", "index_1_right", "index_2_right")]
    [InlineData("JointPair Index2", "index_2_left", "index_1_left", "index_1_right", "index_2_right")]
    [InlineData("JointSet SpineJoints", "spine", "spine1", "spine2")]
    [InlineData("JointSet FinJointsLeft", "fin_1_left", "fin_2_left")]
    [InlineData("Joint Fin1Left", "fin_1_left", "fin_2_left")]
    [InlineData("JointPair Hand", "hand_left", "hand_right")]
    [InlineData("Joint HandLeft", "hand_left", "hook")]
    [InlineData("Joint InJoint", "in", "hook")]
    [InlineData("Joint ToStringJoint", "to_string", "hook")]
    [InlineData("Joint SmallSkeletonJoint", "small_skeleton", "hook")]
    [InlineData("Joint Joint7th", "7th", "hook")]
    [InlineData("Joint Joint", "!?", "hook")]
    [InlineData("Joint ClassJoint", "Class", "class")]
    [InlineData("Joint AB", "a:b", "hook")]
    [InlineData("Joint Größe", "größe", "hook")]
    public void Joints_get_the_property(string property, params string[] joints) =>
        Assert.Contains("public global::Condyle." + property + " { get; }", GeneratorRun.Of(SmallFiles.Gltf(SmallFiles.Named(joints))).Code);

    [Fact]
    public void With_one_mark_for_both_sides_nothing_is_paired() =>
        Assert.Contains("Joint HandX ", GeneratorRun.Of(SmallFiles.Gltf(SmallFiles.Named("hand_x")), properties: [("CondyleLeftMark", "_x"), ("CondyleRightMark", "_x")]).Code);

    [Fact]
    public void One_numbered_joint_is_no_series() =>
        Assert.DoesNotContain("JointSet", GeneratorRun.Of(SmallFiles.Gltf(SmallFiles.Named("hook_1", "hook"))).Code);

    [Fact]
    public void A_series_is_in_the_order_of_its_numbers() =>
        Assert.Contains("RopeJoints = new global::Condyle.JointSet(node2, node3, node1);",
            GeneratorRun.Of(SmallFiles.Gltf(SmallFiles.Named("hook", "rope_10", "rope_2", "rope_9"))).Code);

    [Fact]
    public void Whatever_the_joints_are_called_the_class_compiles()
    {
        string[] names =
        [
            "root", "", "root", "root_2", "node_1", "class", "Class", "in", "In", "equals", "9", "_", "__", "a b", "a-b", "a.b", "<c>&amp;", "\\\"quoted\\\"", "line\\nbreak", "\\u2028",
            "index_1_left", "index_2_left", "index_joints", "elbow_twist_1_left", "elbow_twist_2_left", "elbow_twists_left", "_left", "_right", "left", "\\ud83d\\ude00", "日本", "rig", "skeleton", "node0",
            "tail_99999999999", "tail_1", "tail_2", "get_root", "set_root", "__left", "__right",
        ];
        var run = GeneratorRun.Of(SmallFiles.Gltf(SmallFiles.Named(names), joints: string.Join(", ", Enumerable.Range(0, names.Length))), properties: ("RootNamespace", "my-rigs.class.2nd"));

        Assert.Empty(run.Result.Diagnostics);
        Assert.Empty(run.Compilation.GetDiagnostics().Where(diagnostic => diagnostic.Severity >= DiagnosticSeverity.Warning));
        var properties = Regex.Matches(run.Code, @"public global::Condyle\.\w+ (\S+) \{").Select(match => match.Groups[1].Value).ToList();
        Assert.Equal(properties.Distinct(), properties);
        Assert.Contains("namespace my_rigs.@class._2nd", run.Code);
    }
}
