using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>What was read of files that didn't change is kept while somebody types, and the findings are those of a compilation that nobody has seen before.</summary>
public class KeptCodeTests
{
    private static readonly (string Path, string Source)[] Files =
    [
        ("rig.cs", "using Yard;\n" + Oracle.Usings +
            """
            public sealed partial class Docker : IRigDefinition
            {
                public void Define(RigDraft rig)
                {
                    Names.Greet(1);
                    var holder = rig.Group(Names.Holder);
                    Stacks.Add(rig, holder, Names.Sort.Large);
                    Stacks.Pair(rig);
                    rig.Control(Own);
                    Name(rig);
                    rig.Group(Fleet.Suffix);
                    Length = 2;
                    rig.Group($"crate_{Length}");
                    rig.Group(Fleet.Words[0]);
                    rig.Group(Gate.Name());
                    Stacks.Count(rig);
                }
            }
            """),
        ("fleet.cs", Oracle.Usings +
            """
            public static class Fleet
            {
                public static string Suffix = "fleet";
                public static readonly List<string> Words = ["word"];
                public static void Call() => Rig.Examine(Fit(new Docker()));
                private static Docker Fit(Docker docker) => docker;
                private static void Unused() { }
                private static void Spell() => Words[0] = "word_group";
            }
            """),
        ("names.cs", Oracle.Usings +
            """
            public static class Names
            {
                public enum Sort { Small, Large }
                public static void Greet(int times) { /* here */ }
                private const string Base = "holder";
                internal const string Holder = Base;
                public static void Say(RigDraft rig) => rig.Control(Base);
                public static string Line([System.Runtime.CompilerServices.CallerLineNumber] int line = 0) => $"line_{line}";
            }
            public sealed partial class Docker
            {
                private static void Before() { /* there */ }
                private const string Own = "own";
                private static void Name(RigDraft rig)
                {
                    rig.Group(Own);
                    rig.Group(Names.Line());
                }
                private static int Length { get => 1; set => GC.KeepAlive(value); }
            }
            """),
        ("yard.cs",
            """
            namespace Yard;
            public static class Fence
            {
                public static void Close() { /* shut */ }
            }
            public static class Gate
            {
                public static string Name() => "gate";
            }
            """),
        ("stacks.cs", Oracle.Usings +
            """
            public static class Stacks
            {
                private static readonly string[] Words = ["crate", "barrel"];
                private static readonly Func<int, string> Numbered = number =>
                {
                    if (number > 0)
                    {
                        return "first";
                    }

                    return "none_group";
                };
                public static void Add(RigDraft rig, Group holder, Names.Sort sort)
                {
                    foreach (var word in Words)
                        rig.Group(sort == Names.Sort.Large ? $"large_{word}" : $"{word}_group").Under(holder);
                }
                public static void Pair(RigDraft rig, string name = "pair") => rig.Group(name);
                public static void Count(RigDraft rig) => rig.Group(Numbered(1));
            }
            """),
    ];

    [Theory]
    [InlineData("rig.cs", "Names.Greet(1);", "Names.Greet(12); Names.Say(rig);")]
    [InlineData("names.cs", "/* here */", "/* here and further down */")]
    [InlineData("names.cs", "/* there */", "/* a long way off */")]
    [InlineData("names.cs", "/* there */", "/* some lines\n\n off */")]
    [InlineData("names.cs", "    private static void Before()", "#pragma warning disable CDY1001\n    private static void Before()")]
    [InlineData("names.cs", "private static void Before() { /* there */ }", "private static void Before() { }\n#line 100\n")]
    [InlineData("names.cs", "Group(Own);", "Group(Own + \"_group\");")]
    [InlineData("stacks.cs", "foreach (var word in Words)", "rig.Group(\"pile\"); foreach (var word in Words)")]
    [InlineData("names.cs", "\"holder\"", "\"holder_group\"")]
    [InlineData("names.cs", "{ Small, Large }", "{ Large, Small }")]
    [InlineData("names.cs", "Own = \"own\"", "Own = \"own_group\"")]
    [InlineData("fleet.cs", "=> docker", "{ Suffix = \"x_group\"; return docker; }")]
    [InlineData("fleet.cs", "=> docker", "{ Spell(); return docker; }")]
    [InlineData("fleet.cs", "Unused() { }", "Unused() { Suffix = \"x_group\"; }")]
    [InlineData("fleet.cs", "Unused() { }", "Unused() { Suffix = \"x_group\"; Call(); }")]
    [InlineData("fleet.cs", "Unused() { }", "Fit(int unused) { Suffix = \"x_group\"; }")]
    [InlineData("fleet.cs", "Unused() { }", "Unused() { } static Fleet() { Spell(); }")]
    [InlineData("rig.cs", "Names.Greet(1);", "Fleet.Suffix = \"fleet_group\";")]
    [InlineData("names.cs", "=> 1;", "=> field;")]
    [InlineData("names.cs", "=> GC.KeepAlive(value)", "{ field = value; }")]
    [InlineData("yard.cs", "/* shut */ }", "/* shut */ }}")]
    [InlineData("rig.cs", "public void Define", "private readonly int size = 1; public void Define")]
    [InlineData("rig.cs", "rig.Control(Own);", "rig.Control(Own); Stacks.Pair(rig, \"own\");")]
    [InlineData("stacks.cs", "\"crate\"", "\"case\"")]
    [InlineData("stacks.cs", "\"first\"", "\"second\"")]
    [InlineData("stacks.cs", "name = \"pair\"", "name = \"two\"")]
    [InlineData("stacks.cs", "sort == Names.Sort.Large", "sort == Names.Sort.Small")]
    [InlineData("stacks.cs", "public static void Pair(RigDraft rig, string name = \"pair\")", "public static void Pair(RigDraft rig, int count = 1, string name = \"pair_group\")")]
    public async Task Findings_after_typing_are_those_of_a_fresh_look(string file, string before, string after)
    {
        var compilation = CompiledCode.Compile(Files);
        var untouched = await FindingsIn(compilation);
        var typed = Replace(compilation, file, before, after);
        Assert.Equal(await FindingsIn(Afresh(typed)), await FindingsIn(typed));
        Assert.Equal(untouched, await FindingsIn(Replace(typed, file, after, before)));
    }

    [Fact]
    public async Task Files_in_another_order_set_up_the_parts_of_a_type_in_that_order()
    {
        var compilation = CompiledCode.Compile([
            ("count.cs", Oracle.Usings + "public static class Count { private static int last; public static int Next() => ++last; }"),
            ("rig.cs", Oracle.Usings + "public sealed partial class Docker : IRigDefinition { public Docker() { } public void Define(RigDraft rig) { rig.Group($\"crate_{first}\"); rig.Group($\"barrel_{second}\"); } }"),
            ("first.cs", Oracle.Usings + "public sealed partial class Docker { private readonly int first = Count.Next(); }"),
            ("second.cs", Oracle.Usings + "public sealed partial class Docker { private readonly int second = Count.Next(); }"),
        ]);
        var before = await FindingsIn(compilation);
        var trees = compilation.SyntaxTrees;
        var turned = compilation.RemoveAllSyntaxTrees().AddSyntaxTrees([trees[0], trees[1], trees[3], trees[2], .. trees.Skip(4)]);
        Assert.Equal(await FindingsIn(Afresh(turned)), await FindingsIn(turned));
        Assert.NotEqual(before, await FindingsIn(turned));
    }

    private static CSharpCompilation Replace(CSharpCompilation compilation, string file, string before, string after)
    {
        var tree = compilation.SyntaxTrees.Single(candidate => candidate.FilePath == file);
        var text = tree.GetText();
        var start = text.ToString().IndexOf(before, StringComparison.Ordinal);
        Assert.True(start >= 0, $"{before} isn't in {file}");
        return compilation.ReplaceSyntaxTree(tree, tree.WithChangedText(text.WithChanges(new TextChange(new TextSpan(start, before.Length), after))));
    }

    private static CSharpCompilation Afresh(CSharpCompilation compilation) => CompiledCode.Compile([.. compilation.SyntaxTrees.Select(tree => (tree.FilePath, tree.ToString()))]);

    private static async Task<IReadOnlyList<string>> FindingsIn(Compilation compilation) =>
    [
        .. (await Findings.Diagnostics(compilation))
            .Select(found => $"{found.Location.SourceTree!.FilePath} {found.Location.SourceSpan} {found.Id} {found.GetMessage()} {string.Join("; ", found.Properties.OrderBy(property => property.Key))}")
            .Order(),
    ];
}
