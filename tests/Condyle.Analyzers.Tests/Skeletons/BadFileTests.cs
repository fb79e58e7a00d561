using CsCheck;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Tests.Skeletons;

public class BadFileTests
{
    public static TheoryData<string, string> Wrong => new()
    {
        { "", "small.gltf: the file is empty. Export the skeleton again" },
        { " \n", "small.gltf: the file is empty. Export the skeleton again" },
        { "glTF\u0002\u0000", "small.gltf: this is a binary .glb under another name. Run the 'skeleton' verb of a rig program on the file: it writes a small .gltf with the skeleton" },
        { "[]", "small.gltf: the file should be an object, but is a list. Export the file again" },
        { "{}", "small.gltf: the file has no asset version, so it is no glTF. Export the file as glTF 2.0" },
        { """{"asset": {"version": "1.0"}}""", "small.gltf: asset, version is '1.0', but only glTF 2 can be read. Export the file as glTF 2.0" },
        { """{"asset": {"version": 2}}""", "small.gltf: asset, version should be a text, but is a number. Export the file again" },
        { """{"asset": {"version": "2.0"}}""", "small.gltf: the file has no nodes, so there is no skeleton. Export the file with its skeleton" },
        { """{"asset": {"version": "2.0"}, "nodes": {}}""", "small.gltf: nodes should be a list, but is an object. Export the file again" },
        { SmallFiles.Gltf("7"), "small.gltf: node 0 should be an object, but is a number. Export the file again" },
        { SmallFiles.Gltf("""{"name": "\ud800"}"""), "small.gltf: node 0, name is a text with half a character. Write it again" },
        { SmallFiles.Gltf("""{"\ud800": 1}"""), "small.gltf: the name of a member is a text with half a character. Export the file again" },
        { SmallFiles.Gltf("""{"name": "a", "children": [1]}"""), "small.gltf: node 0 'a', child 0 is 1, but the file has 1 nodes, counted from 0. Export the file again" },
        { SmallFiles.Gltf("""{"name": "a", "children": [-1]}"""), "small.gltf: node 0 'a', child 0 is -1, but the file has 1 nodes, counted from 0. Export the file again" },
        { SmallFiles.Gltf("""{"name": "a", "children": [0.5]}"""), "small.gltf: node 0 'a', child 0 is 0.5, which is no index. Export the file again" },
        { SmallFiles.Gltf("""{"name": "a", "children": [9999999999]}"""), "small.gltf: node 0 'a', child 0 is 9999999999, which is no index. Export the file again" },
        { SmallFiles.Gltf("""{"name": "a", "children": [0]}"""), "small.gltf: node 0 'a' is its own ancestor (node 0 'a'). Break the loop where the file was made" },
        {
            SmallFiles.Gltf("""{"name": "a", "children": [1]}, {"name": "b", "children": [2]}, {"name": "c", "children": [1]}"""),
            "small.gltf: node 2 'c', child 0 is node 1 'b', which is already a child of node 0 'a'. Give each node one parent"
        },
        {
            SmallFiles.Gltf("""{"name": "a"}, {"name": "b", "children": [2]}, {"name": "c", "children": [1]}"""),
            "small.gltf: node 2 'c' is its own ancestor (node 1 'b' > node 2 'c'). Break the loop where the file was made"
        },
        { SmallFiles.Gltf("""{"name": "a"}""", joints: ""), "small.gltf: skin 0 has no joints. Export the file again with its skeleton" },
        { SmallFiles.Gltf("""{"name": "a"}""", joints: "3"), "small.gltf: skin 0, joint 0 is 3, but the file has 1 nodes, counted from 0. Export the file again" },
        { SmallFiles.Gltf("""{"name": "a", "translation": [0, 1e999, 0]}"""), "small.gltf: node 0 'a', translation 1 is 1e999, which is too large to be true. Export the file again" },
        { SmallFiles.Gltf("""{"name": "a", "translation": [0, 1e39, 0]}"""), "small.gltf: node 0 'a', translation 1 is 1e39, which is too large to be true. Export the file again" },
        { SmallFiles.Gltf("""{"name": "a", "translation": [0, "x", 0]}"""), "small.gltf: node 0 'a', translation 1 should be a number, but is a text. Export the file again" },
        { SmallFiles.Gltf("""{"name": "a", "translation": [0, 1]}"""), "small.gltf: node 0 'a', translation has 2 numbers instead of 3. Export the file again" },
        { SmallFiles.Gltf("""{"name": "a", "rotation": [0, 0, 0, 0]}"""), "small.gltf: node 0 'a', rotation is a zero quaternion, which turns nowhere. Write [0, 0, 0, 1] for no rotation" },
        { SmallFiles.Gltf("""{"name": "a", "rotation": [0, 0, 0, 2]}"""), "small.gltf: node 0 'a', rotation is a quaternion of length 2, not 1. Normalise it" },
        {
            SmallFiles.Gltf("""{"name": "a", "matrix": [1,0,0,0, 0.5,1,0,0, 0,0,1,0, 0,0,0,1]}"""),
            "small.gltf: node 0 'a', matrix is sheared, which no translation, rotation and scale can say. Take the shear out where the file was made"
        },
        {
            SmallFiles.Gltf("""{"name": "a", "matrix": [0,0,0,0, 0,1,0,0, 0,0,1,0, 0,0,0,1]}"""),
            "small.gltf: node 0 'a', matrix flattens an axis to nothing, so its rotation is lost. Give the node as translation, rotation and scale"
        },
        {
            SmallFiles.Gltf("""{"name": "a", "matrix": [1,0,0,1, 0,1,0,0, 0,0,1,0, 0,0,0,1]}"""),
            "small.gltf: node 0 'a', matrix is no affine matrix: its last row isn't 0 0 0 1. Give the node as translation, rotation and scale"
        },
        {
            SmallFiles.Gltf("""{"name": "a", "matrix": [1,0,0,0, 0,1,0,0, 0,0,1,0, 0,0,0,1], "scale": [1, 1, 1]}"""),
            "small.gltf: node 0 'a', matrix stands beside a translation, rotation or scale. Keep one of the two"
        },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_file_that_cannot_be_read_is_one_diagnostic_that_says_why(string json, string message)
    {
        var run = GeneratorRun.Of(json);

        Assert.Null(run.Result.Exception);
        Assert.Empty(run.Result.GeneratedSources);
        Assert.Equal("CDY9101", run.Problem.Id);
        Assert.Equal(DiagnosticSeverity.Error, run.Problem.Severity);
        Assert.Equal("small.gltf", run.Problem.Location.GetLineSpan().Path);
        Assert.Equal(message, run.Problem.GetMessage());
    }

    [Fact]
    public void A_truncated_file_is_found_where_it_ends()
    {
        var run = GeneratorRun.Of("{\n  \"asset\": {\"version\": \"2.0\"},\n  \"nodes\": [");

        Assert.StartsWith("small.gltf: line 3, column 13 is not valid JSON: ", run.Problem.GetMessage());
        Assert.EndsWith(" Export the file again", run.Problem.GetMessage());
        Assert.Equal("(2,12)", Start(run.Problem));
    }

    [Fact]
    public void A_place_behind_letters_of_several_bytes_is_counted_in_characters()
    {
        var run = GeneratorRun.Of("{\n  \"größe\": \"日本\", !}");

        Assert.Equal("(1,17)", Start(run.Problem));
    }

    [Fact]
    public void A_wrong_value_is_found_where_it_stands()
    {
        var run = GeneratorRun.Of(
            """
            {
              "extras": {"nodes": [[1, 2], {"x": 3}], "größe": 1},
              "asset": {"version": "2.0"},
              "nodes": [
                {"name": "a", "children": [1], "extras": [[]]},
                {"name": "b",
                 "rotation": [0, 0, 0, 0]}
              ]
            }
            """);

        Assert.Equal("(6,17)", Start(run.Problem));
    }

    [Fact]
    public void A_file_nested_too_deep_is_refused() =>
        Assert.Contains("is not valid JSON", GeneratorRun.Of(new string('[', 100_000)).Problem.GetMessage(), StringComparison.Ordinal);

    [Fact]
    public void A_hierarchy_may_be_deep()
    {
        const int depth = 20_000;
        var nodes = string.Join(",", Enumerable.Range(0, depth).Select(i => i + 1 < depth ? $$"""{"children":[{{i + 1}}]}""" : "{}"));

        Assert.Empty(GeneratorRun.Of(SmallFiles.Gltf(nodes)).Result.Diagnostics);
    }

    [Theory]
    [InlineData("hand.glb")]
    [InlineData("hand.txt")]
    public void A_file_of_another_kind_is_told_how_to_become_a_gltf(string path) => Assert.Equal(
        $"{path}: only text .gltf files can be read here. Run the 'skeleton' verb of a rig program on the file: it writes a small .gltf with the skeleton",
        GeneratorRun.Of("junk", path).Problem.GetMessage());

    [Fact]
    public void A_file_that_cannot_be_opened_is_named() => Assert.Equal(
        "gone.gltf: the file can't be opened. Check that it is there and is text",
        GeneratorRun.Of([new Extra("gone.gltf", null)]).Problem.GetMessage());

    [Theory]
    [InlineData("two words")]
    [InlineData("class")]
    public void A_class_name_that_is_none_is_refused(string name) => Assert.Equal(
        $"small.gltf: its ClassName is '{name}', which can't be the name of a class. Give a C# identifier",
        GeneratorRun.Of([new Extra("small.gltf", "{}", ("CondyleSkeleton", "true"), ("CondyleSkeletonName", name))]).Problem.GetMessage());

    [Fact]
    public void Two_files_of_one_class_name_are_both_told()
    {
        var json = SmallFiles.Gltf("""{"name": "a"}""");
        var run = GeneratorRun.Of([new Extra("one/crane.gltf", json), new Extra("two/Crane.gltf", json), new Extra("gull.gltf", json)]);

        Assert.Equal("GullSkeleton.g.cs", run.Result.GeneratedSources.Single().HintName);
        Assert.Equal(["one/crane.gltf", "two/Crane.gltf"], run.Result.Diagnostics.Select(problem => problem.Location.GetLineSpan().Path).Order());
        Assert.All(run.Result.Diagnostics, problem => Assert.Contains("another skeleton file also makes the class 'CraneSkeleton'. Give one of them another by ClassName=\"...\" on its CondyleSkeleton", problem.GetMessage(), StringComparison.Ordinal));
    }

    [Fact]
    public void No_damage_to_a_real_file_makes_the_generator_throw()
    {
        var whole = File.ReadAllText(Repository.PathTo("sample-rigs", "Quayside", "stevedore.gltf"));
        string[] damages = ["", "\"", "{", "}", "[", "]", ",", "-", "1e999", "null", "\\", "\u0000", "9"];
        Gen.Select(Gen.Int[0, 12_000], Gen.Int[0, 3], Gen.Int[0, damages.Length - 1]).Sample(
            (at, removed, damage) =>
            {
                var run = GeneratorRun.Of(whole[..at] + damages[damage] + whole[(at + removed)..]);
                Assert.Null(run.Result.Exception);
                Assert.Equal(1, run.Result.GeneratedSources.Length + run.Result.Diagnostics.Length);
            },
            iter: 300);
    }

    private static string Start(Diagnostic problem) => problem.Location.GetLineSpan().StartLinePosition is var start ? $"({start.Line},{start.Character})" : "";
}
