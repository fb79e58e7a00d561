using Condyle.Analyzers.Tests.Reading;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>A slip in a helper that only shows with the number that a rig hands to it is found, however the rig gets at the helper.</summary>
public class ReachTests
{
    private const string Slip = "rig.Group($\"crate{number}\");";

    private static readonly string[] Found = ["CDY1001 $\"crate{number}\""];

    [Fact]
    public Task By_its_type() => Reaches("Stacks.Add(rig, 1);", $"public static class Stacks {{ public static void Add(RigDraft rig, int number) {{ {Slip} }} }}");

    [Fact]
    public Task Over_another_file() => Reaches(
        "Quay.Fill(rig);",
        $"public static class Stacks {{ public static void Add(RigDraft rig, int number) {{ {Slip} }} }}",
        "public static class Quay { public static void Fill(RigDraft rig) => Stacks.Add(rig, 1); }");

    [Fact]
    public Task By_another_name_for_its_type() => Reaches(
        "Piles.Add(rig, 1);",
        $"public static class Stacks {{ public static void Add(RigDraft rig, int number) {{ {Slip} }} }}",
        "",
        "global using Piles = Stacks;");

    [Fact]
    public Task By_a_member_alone() => Reaches(
        "Add(rig, 1);",
        $"public static class Stacks {{ public static void Add(RigDraft rig, int number) {{ {Slip} }} }}",
        "",
        "global using static Stacks;");

    [Fact]
    public Task As_an_extension() => Reaches("rig.Add(1);", $"public static class Stacks {{ public static void Add(this RigDraft rig, int number) {{ {Slip} }} }}");

    [Fact]
    public Task As_an_extension_that_the_compiler_calls() => Reaches(
        "foreach (var pile in new Piles(rig, 1)) { }",
        $"public static class Stacks {{ public static IEnumerator<int> GetEnumerator(this Piles piles) {{ piles.Pile(); yield break; }} }}",
        $"public sealed class Piles(RigDraft rig, int number) {{ public void Pile() {{ {Slip} }} }}");

    [Fact]
    public Task As_a_type_inside_a_base_type() => Reaches(
        "new Tower.Floor().Add(rig, 1);",
        $"public class Stacks {{ public sealed class Floor {{ public void Add(RigDraft rig, int number) {{ {Slip} }} }} }}",
        "public sealed class Tower : Stacks { }");

    [Fact]
    public Task As_another_part_of_the_rig() => Reaches("Add(rig, 1);", $"public sealed partial class Docker {{ private static void Add(RigDraft rig, int number) {{ {Slip} }} }}");

    [Fact]
    public Task Without_a_name_of_its_own() => Reaches(
        "Quay.Pile().Add(rig, 1);",
        $"public sealed class Stacks {{ public void Add(RigDraft rig, int number) {{ {Slip} }} }}",
        "public static class Quay { public static Stacks Pile() => new(); }");

    private static async Task Reaches(string body, string helper, string between = "", string everywhere = "")
    {
        var rig = $"public sealed partial class Docker : IRigDefinition {{ public void Define(RigDraft rig) {{ {body} }} }}";
        Assert.Equal(Found, await Findings.InFiles(
            ("rig.cs", Oracle.Usings + rig),
            ("helper.cs", Oracle.Usings + helper),
            ("between.cs", Oracle.Usings + between),
            ("everywhere.cs", everywhere)));
    }
}
