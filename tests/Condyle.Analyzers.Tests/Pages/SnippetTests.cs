using System.Text.RegularExpressions;
using Condyle.Analyzers.Reporting;
using Condyle.Analyzers.Tests.Recipes;
using Condyle.Analyzers.Tests.Skeletons;
using Condyle.Rules;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Diagnostics;

namespace Condyle.Analyzers.Tests.Pages;

/// <summary>Every piece of C# on every page compiles, and the rules find in it what the page says: nothing, where it says nothing.</summary>
public partial class SnippetTests
{
    private static readonly string Root = Repository.PathTo();

    private static readonly MetadataReference[] References =
    [
        .. CompiledCode.FrameworkReferences(),
        .. new[] { typeof(RigDraft), typeof(Condyle.Runtime.Clip), typeof(Condyle.Host.RigProgram) }.Select(type => MetadataReference.CreateFromFile(type.Assembly.Location)),
    ];

    private static readonly string Stevedore = GeneratorRun.Of(File.ReadAllText(Repository.PathTo("sample-rigs", "Quayside", "stevedore.gltf")), "stevedore.gltf").Code;

    /// <summary>The pages with C# of their own. What a recipe's page shows is run by <see cref="RecipePageTests"/>; blocks of another kind, as a rule's page has them, by their own tests.</summary>
    public static TheoryData<string> Pages => [.. Paths];

    private static IEnumerable<string> Paths => Page.All(Root).Where(page => IsOurs(page) && page.Blocks.Any(block => block.Kind == "csharp")).Select(page => page.Path);

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Code_compiles_and_the_rules_find_what_the_page_shows(string path)
    {
        var project = new Dictionary<string, PageBlock>();
        var blocks = Page.Read(Root, path).Blocks;
        foreach (var block in blocks.Where(block => block is { File.Length: > 0, Kind: "xml" or "json" }))
            project[block.File] = block;
        foreach (var (at, block) in blocks.Index())
        {
            if (block.Kind == "diff" && project.TryGetValue(block.File, out var changed))
                project[block.File] = changed with { Text = block.Change(changed.Text) };
            if (block.Kind != "csharp")
                continue;
            if (block.File.Length > 0)
                project[block.File] = block;
            var compilation = Compile(block.File.Length > 0 ? Files(project) : [("snippet.cs", Whole(block)), ("StevedoreSkeleton.cs", Stevedore)]);
            var errors = compilation.GetDiagnostics().Where(found => found.Severity == DiagnosticSeverity.Error);
            Assert.True(!errors.Any(), $"{block.Place}: {string.Join(Environment.NewLine, errors)}");
            var found = (await compilation.WithAnalyzers([new RigAnalyzer()]).GetAnalyzerDiagnosticsAsync()).Where(finding => !IsOfItsFrame(finding, block)).ToList();
            Assert.True(
                Expected(blocks, at).SetEquals(found.Select(finding => finding.Id)),
                $"{block.Place}: the page shows '{string.Join(", ", Expected(blocks, at))}', and the rules find {string.Join(Environment.NewLine, found)}");
        }
    }

    [Fact]
    public void There_are_pages_with_code() => Assert.Superset(new HashSet<string> { "README.md", "docs/tutorial.md", "docs/sentences.md" }, Paths.ToHashSet());

    /// <summary>A recipe's page has a piece that makes what it draws, and the same written out; a rule's page has pieces that say what they are.</summary>
    [Fact]
    public void No_piece_of_code_is_left_out() => Assert.All(Page.All(Root), page =>
    {
        var pieces = page.Blocks.Where(block => block.Kind.StartsWith("csharp", StringComparison.Ordinal)).ToList();
        if (!IsOurs(page))
            Assert.Equal(["csharp", "csharp"], pieces.Select(piece => piece.Kind));
        else if (RuleBook.Find(Path.GetFileNameWithoutExtension(page.Path)) is not null)
            Assert.All(pieces, piece => Assert.Contains(piece.Kind, new[] { "csharp wrong", "csharp right", "csharp accepted" }));
        else
            Assert.All(pieces, piece => Assert.Equal("csharp", piece.Kind));
    });

    private static bool IsOurs(Page page) => !((IEnumerable<object[]>)RecipePageTests.Pages).Any(recipe => page.Path == $"src/Condyle/Recipes/{recipe[0]}.md");

    /// <summary>What a comment before the block says that the rules find, or what a build finds that the page shows before the next piece of code.</summary>
    private static HashSet<string> Expected(IReadOnlyList<PageBlock> blocks, int at) =>
    [
        .. blocks[at].Notes.TryGetValue("finds", out var rules) ? rules.Split(", ") : [],
        .. blocks.Skip(at + 1).TakeWhile(block => block.Kind != "csharp").Where(_ => blocks[at].File.Length > 0).SelectMany(block => Finding().Matches(block.Text)).Select(match => match.Groups["rule"].Value),
    ];

    /// <summary>What a piece is handed isn't known here, as it says.</summary>
    private static bool IsOfItsFrame(Diagnostic finding, PageBlock block) => finding.Id == "CDY9002" && block.Notes.ContainsKey("in");

    /// <summary>Statements stand in a method that is handed what the page says.</summary>
    private static string Whole(PageBlock block)
    {
        if (!block.Notes.TryGetValue("in", out var parameters))
            return block.Text;
        return $"internal static class Snippet\n{{\n    public static void Of({parameters})\n    {{\n{block.Text}    }}\n}}\n";
    }

    /// <summary>The C# of a project that a page has written so far, with the classes of its skeletons.</summary>
    private static IEnumerable<(string Path, string Source)> Files(Dictionary<string, PageBlock> project)
    {
        var name = Path.GetFileNameWithoutExtension(project.Keys.Single(file => file.EndsWith(".csproj", StringComparison.Ordinal)));
        foreach (var (file, block) in project)
        {
            if (file.EndsWith(".cs", StringComparison.Ordinal))
                yield return (file, block.Text);
            else if (file.EndsWith(".gltf", StringComparison.Ordinal))
                yield return (file + ".cs", GeneratorRun.Of(block.Text, file, ("RootNamespace", name)).Code);
        }
    }

    private static CSharpCompilation Compile(IEnumerable<(string Path, string Source)> files)
    {
        const string usings = "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq;"
            + " global using System.Numerics; global using Condyle; global using Condyle.Host; global using Condyle.Runtime;";
        var trees = files.Append(("usings.cs", usings)).Select(file => CSharpSyntaxTree.ParseText(file.Item2, new CSharpParseOptions(LanguageVersion.CSharp14), file.Item1)).ToList();
        var isProgram = trees.Any(tree => tree.GetCompilationUnitRoot().Members.Any(SyntaxKind.GlobalStatement));
        return CSharpCompilation.Create(
            "page", trees, References, new CSharpCompilationOptions(isProgram ? OutputKind.ConsoleApplication : OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable));
    }

    [GeneratedRegex(@"(?:error|warning|info) (?<rule>CDY\d{4}):")]
    private static partial Regex Finding();
}
