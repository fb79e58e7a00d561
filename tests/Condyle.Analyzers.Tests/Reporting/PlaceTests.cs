using Condyle.Analyzers.Reading;
using Condyle.Analyzers.Reporting;
using Condyle.Analyzers.Tests.Reading;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>Where findings point, and which further places they name.</summary>
public class PlaceTests
{
    [Fact]
    public Task A_helper_names_the_call_that_makes_the_group() => Points(
        "Parts.Of(rig, \"arm\");",
        "internal static class Parts { public static Group Of(RigDraft rig, string name) => rig.Group(name); }",
        "\"arm\"",
        "Group(name)");

    [Fact]
    public Task A_text_that_names_two_groups_names_both_calls() => Points(
        """
        var name = "arm";
        rig.Group(name);
        rig.Group(name).Under(rig.Control("world"));
        """,
        "",
        "\"arm\"",
        "Group(name)",
        "Group(name)");

    [Fact]
    public Task A_blend_names_its_sentence_and_its_sources() => Points(
        """
        var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left);
        var blend = rig.Blend(arm);
        blend.From(ik, amount);
        blend.From(fk, amount);
        """,
        "",
        "amount",
        "From(ik, amount)",
        "Blend(arm)",
        "From(fk, amount)");

    [Fact]
    public Task A_drive_names_where_its_sentence_begins() => Points(
        """
        var joints = Stage.Joints(rig, Side.Left);
        var drive = rig.Drive(joints.Elbow);
        drive.ByMatrix(rig.Control("hand"));
        """,
        "",
        "ByMatrix(rig.Control(\"hand\"))",
        "Drive(joints.Elbow)");

    [Fact]
    public async Task A_literal_in_generated_code_is_flagged_where_it_is_used()
    {
        var finding = Assert.Single(await FrontEnds.Read([
            .. new RigSnippet("rig.Group(Arm);").PlainFiles.Select(file => (file.Path, file.Source.Replace("sealed class", "sealed partial class"))),
            ("/0/names.g.cs", "partial class Docker { private const string Arm = \"arm\"; }"),
        ]));
        Assert.Equal("Arm", TextAt(finding.Location));
    }

    [Fact]
    public async Task What_generated_code_says_wrong_is_flagged_where_that_is_called()
    {
        var finding = Assert.Single(await FrontEnds.Read([
            .. new RigSnippet("Buoy.In(rig);").PlainFiles,
            ("/0/buoy.g.cs", "internal static class Buoy { public static void In(RigDraft rig) { var skeleton = rig.Skeleton(\"buoy\"); skeleton.Root(\"hull\"); skeleton.Root(\"lamp\"); } }"),
        ]), found => found.Id == "CDY4004");
        Assert.Equal("Buoy.In(rig)", TextAt(finding.Location));
        Assert.Contains("/0/buoy.g.cs", finding.AdditionalLocations.Select(place => place.SourceTree!.FilePath));
    }

    [Fact]
    public async Task A_text_that_another_definition_uses_rightly_is_flagged_where_it_is_used_wrongly()
    {
        var finding = Assert.Single(await FrontEnds.Read([
            .. new RigSnippet("rig.Group(Names.Arm);").PlainFiles,
            ("/0/crane.cs", "public sealed class Crane : IRigDefinition { public void Define(RigDraft rig) => rig.Control(Names.Arm); }"),
            ("/0/names.cs", "internal static class Names { private static readonly string part = \"arm\"; public static string Arm => part; }"),
        ]));
        Assert.Equal("Names.Arm", TextAt(finding.Location));
    }

    [Fact]
    public async Task A_text_that_all_definitions_use_wrongly_is_flagged_once()
    {
        var finding = Assert.Single(await FrontEnds.Read([
            .. new RigSnippet("rig.Group(Names.Arm);").PlainFiles,
            ("/0/crane.cs", "public sealed class Crane : IRigDefinition { public void Define(RigDraft rig) => rig.Group(Names.Arm); }"),
            ("/0/names.cs", "internal static class Names { private static readonly string part = \"arm\"; public static string Arm => part; }"),
        ]));
        Assert.Equal("\"arm\"", TextAt(finding.Location));
        Assert.Equal(["/0/crane.cs", "/0/rig.cs"], finding.AdditionalLocations.Select(place => place.SourceTree!.FilePath).Order());
    }

    [Fact]
    public async Task A_constant_that_another_part_of_the_class_names_a_control_by_is_flagged_where_it_is_used()
    {
        var finding = Assert.Single(await FrontEnds.Read([
            .. new RigSnippet("rig.Group(Arm);\nAdd(rig);", "private const string Arm = \"arm\";").PlainFiles
                .Select(file => (file.Path, file.Source.Replace("sealed class", "sealed partial class"))),
            ("/0/part.cs", "partial class Docker { private static void Add(RigDraft rig) => rig.Control($\"{Arm}_root\"); }"),
        ]));
        Assert.Equal("Arm", TextAt(finding.Location));
    }

    [Theory]
    [InlineData("[new string('a', 30000)]", "new string('a', 30000)")]
    [InlineData("[.. new int[3].Select(i => $\"b{1 / i}\")]", "1 / i")]
    public async Task An_initialiser_in_the_file_of_another_part_is_blamed_there(string words, string place)
    {
        var findings = await FrontEnds.Read([
            ("/0/docker.cs", Oracle.Usings + "public sealed partial class Docker : IRigDefinition { public Docker() { } public void Define(RigDraft rig) { foreach (var word in words) rig.Group(word); } }"),
            ("/0/words.cs", $"{Oracle.Usings}// {new string('x', 200)}\npartial class Docker {{ private readonly List<string> words = {words}; }}"),
        ]);
        var finding = Assert.Single(findings);
        Assert.Equal(place, TextAt(finding.Location));
        Assert.Equal("Docker", TextAt(finding.AdditionalLocations[0]));
    }

    [Theory]
    [InlineData(Limits.LiveDefinitionsForAHelper, true, true)]
    [InlineData(Limits.LiveDefinitionsForAHelper + 1, true, false)]
    [InlineData(Limits.LiveDefinitionsForAHelper + 1, false, true)]
    public async Task A_helper_of_many_rigs_is_blamed_while_typing_but_repaired_only_when_all_its_rigs_were_read(int rigs, bool isLive, bool isRepaired)
    {
        (string, string)[] files = [
            .. new RigSnippet("Parts.Of(rig);", More: "internal static class Parts { public static Group Of(RigDraft rig) => rig.Group(\"parts\"); }").PlainFiles,
            .. Enumerable.Range(1, rigs - 1).Select(i => ($"/0/crate{i}.cs", $"public sealed class Crate{i} : IRigDefinition {{ public void Define(RigDraft rig) => Parts.Of(rig); }}")),
        ];
        var finding = Assert.Single(await FrontEnds.Read(files, isLive), found => RigSnippet.Rules.Contains(found.Id));
        Assert.Equal("\"parts\"", TextAt(finding.Location));
        Assert.Equal(isRepaired, RepairProperties.Read(finding.Properties).Count == 1);
    }

    private static async Task Points(string body, string more, string place, params string[] further)
    {
        var files = new RigSnippet(body, More: more).PlainFiles;
        var finding = Assert.Single(await FrontEnds.Read(files), found => RigSnippet.Rules.Contains(found.Id));
        Assert.Equal(place, TextAt(finding.Location));
        Assert.Equal(further, finding.AdditionalLocations.Select(TextAt));
        await FrontEnds.Agree(files);
    }

    private static string TextAt(Location place) => place.SourceTree!.GetText().ToString(place.SourceSpan);
}
