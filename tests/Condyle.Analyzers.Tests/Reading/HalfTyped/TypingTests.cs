using System.Collections;
using System.Reflection;
using Condyle.Analyzers.Reading;
using Condyle.Analyzers.Reporting;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;
using Xunit.Abstractions;

namespace Condyle.Analyzers.Tests.Reading.HalfTyped;

/// <summary>Code that an edit left as it was is moved, not lowered again: it is the very code, with the very places, that lowering it again would make.</summary>
public class TypingTests(ITestOutputHelper output)
{
    private const int EditsInAFile = 4;
    private static readonly int Files = Mutation.Tried(inTheSuite: 60) / EditsInAFile;

    [Fact]
    public void Code_that_an_edit_moved_is_what_lowering_it_again_makes()
    {
        var (compared, moved, different) = (0, 0, new List<string>());
        foreach (var mutation in Mutation.Of(RigSources.All.Count, Files, seed: 60_000))
        {
            var (source, random) = (RigSources.All[mutation.Source], new Random(mutation.Seed));
            var compilation = Afresh(source.Compilation.Value);
            CodeOf(compilation, source.Path);
            for (var edit = 0; edit < EditsInAFile; edit++)
            {
                compilation = Typed(compilation, source.Path, random);
                var (kept, all, differences) = Compare(compilation, source.Path);
                (moved, compared) = (moved + kept, compared + all);
                different.AddRange(differences.Select(difference => $"{source}, {mutation.Seed}, edit {edit}: {difference}"));
            }
        }

        output.WriteLine($"{compared} functions after {Files * EditsInAFile} edits, {moved} of them moved");
        Assert.True(different.Count == 0, string.Join(Environment.NewLine, different));
        Assert.True(moved > compared / 4);
    }

    [Theory]
    [InlineData(4, "/* between */", "/* some lines\n\n between */")]
    [InlineData(3, "/* in it */", "GC.KeepAlive(1);")]
    [InlineData(4, "#nullable disable\n    private void Between() { /* between */ }\n", "private void Between() { /* between */ }\n#nullable disable\n")]
    [InlineData(4, "#nullable disable\n    private string Pile() => new[] { \"pile\", null }.ToList()[0]!;\n", "    private string Pile() => new[] { \"pile\", null }.ToList()[0]!;\n#nullable disable\n")]
    public void Code_of_a_type_in_two_files_is_the_same_as_anew_after_an_edit_of_one(int moved, string before, string after)
    {
        var compilation = CompiledCode.Compile(
            ("rig.cs", "#nullable enable\n" + Oracle.Usings + """
                public sealed partial class Depot(string given) : IRigDefinition
                {
                    #nullable disable
                    private void Between() { /* between */ }
                    public Depot() : this("depot") { }
                    public void Define(RigDraft rig)
                    {
                        /* in it */
                        rig.Group(Name());
                        rig.Group(Pile());
                        rig.Group(word);
                        rig.Group(text());
                    }
                    private string Name() { return given + word; }
                    #nullable restore
                    #nullable disable
                    private string Pile() => new[] { "pile", null }.ToList()[0]!;
                }
                """),
            // Its initialisers stand where the other one has its Define.
            ("part.cs", new string('\n', 145) + Oracle.Usings + """
                public sealed partial class Depot
                {
                    private readonly string word = "word" + 1;
                    private readonly Func<string> text = () => { return string.Join("_", "far", "off"); };
                }
                """));
        Assert.DoesNotContain(compilation.GetDiagnostics(), found => found.Severity == DiagnosticSeverity.Error);
        CodeOf(compilation, "rig.cs");
        var tree = TreeAt(compilation, "rig.cs");
        var text = tree.ToString();
        Assert.Contains(before, text);
        var (kept, _, differences) = Compare(compilation.ReplaceSyntaxTree(tree, tree.WithChangedText(SourceText.From(text.Replace(before, after)))), "rig.cs");
        Assert.Empty(differences);
        Assert.Equal(moved, kept);
    }

    // It outlives its compilation, and would keep it alive.
    [Fact]
    public void Lowered_code_holds_nothing_of_the_compiler()
    {
        var held = RigSources.All.Take(60).SelectMany(source =>
        {
            CodeOf(source.Compilation.Value, source.Path);
            return TreeCodeOf(source.Compilation.Value, source.Path).Bodies().SelectMany(body => Held.By(body.Code.Body));
        }).ToHashSet();
        Assert.Contains(typeof(JoinText), held);
        Assert.DoesNotContain(held, type => typeof(ISymbol).IsAssignableFrom(type) || typeof(IOperation).IsAssignableFrom(type) || typeof(SyntaxNode).IsAssignableFrom(type) || typeof(SyntaxTree).IsAssignableFrom(type)
            || typeof(SemanticModel).IsAssignableFrom(type) || typeof(Compilation).IsAssignableFrom(type) || type == typeof(Lowerer));
    }

    // The compiler asks from several threads, for each file of a project.
    [Fact]
    public void Whoever_asks_for_a_version_of_a_file_gets_the_code_that_was_moved_there()
    {
        var recent = new RecentCode();
        var (before, after) = (CSharpSyntaxTree.ParseText("class Crane { void Lift() { } }", path: "crane.cs"), CSharpSyntaxTree.ParseText(" class Crane { void Lift() { } }", path: "crane.cs"));
        recent.Of(before, 0).Get(new BodyPlace(BodyKind.Method, "M:Crane.Lift", before), CompiledCode.Compile(), () => new LoweredCode(null, []));
        var first = recent.Of(after, 0);
        Assert.Single(first.Bodies());
        Assert.Same(first, recent.Of(after, 0));
    }

    /// <summary>How many functions of a file were moved there, of how many, and in what they differ from those that are made of it afresh.</summary>
    private static (int Moved, int All, IReadOnlyList<string> Differences) Compare(CSharpCompilation compilation, string path)
    {
        var known = TreeCodeOf(compilation, path).Bodies().Select(body => body.Key).ToHashSet();
        var (now, anew) = (CodeOf(compilation, path), CodeOf(Afresh(compilation), path));
        return (anew.Keys.Count(known.Contains), anew.Count,
            [.. anew.Select(code => Alike.Difference(now.GetValueOrDefault(code.Key).Body, code.Value.Body) is { } difference ? $"{code.Key}{difference}" : null).OfType<string>()]);
    }

    private static Dictionary<(BodyKind, string, int), LoweredCode> CodeOf(CSharpCompilation compilation, string path)
    {
        var models = new Dictionary<SyntaxTree, SemanticModel>();
        var session = new ReadingSession(compilation, compilation.GetTypeByMetadataName("Condyle.IRigDefinition")!, isLive: true, tree => models.TryGetValue(tree, out var model) ? model : models[tree] = compilation.GetSemanticModel(tree));
        session.FindingsIn(TreeAt(compilation, path), CancellationToken.None);
        return TreeCodeOf(compilation, path).Bodies().ToDictionary(body => body.Key, body => body.Code);
    }

    private static TreeCode TreeCodeOf(CSharpCompilation compilation, string path) => new CodeCache().For(TreeAt(compilation, path), compilation);

    private static SyntaxTree TreeAt(CSharpCompilation compilation, string path) => compilation.SyntaxTrees.First(tree => tree.FilePath == path);

    private static CSharpCompilation Afresh(CSharpCompilation compilation) =>
        compilation.RemoveAllSyntaxTrees().AddSyntaxTrees(compilation.SyntaxTrees.Select(tree => CSharpSyntaxTree.ParseText(SourceText.From(tree.ToString()), (CSharpParseOptions)tree.Options, tree.FilePath)));

    // As people type: in a body, mostly something that compiles.
    private static CSharpCompilation Typed(CSharpCompilation compilation, string path, Random random)
    {
        var tree = TreeAt(compilation, path);
        var tokens = tree.GetRoot().DescendantTokens().Where(token => token.Parent!.AncestorsAndSelf().Any(node => node is BlockSyntax or ArrowExpressionClauseSyntax)).ToList();
        if (tokens.Count == 0)
            return compilation;
        var token = tokens[random.Next(tokens.Count)];
        var change = random.Next(8) switch
        {
            0 => new TextChange(new TextSpan(token.SpanStart, 0), "\n"),
            1 => new TextChange(new TextSpan(token.SpanStart, 0), "/* a remark */ "),
            2 => new TextChange(new TextSpan(token.Span.End, 0), " "),
            3 => new TextChange(token.Span, ""),
            4 => new TextChange(new TextSpan(token.Span.End, 0), token.Text),
            5 when token.IsKind(SyntaxKind.SemicolonToken) => new TextChange(new TextSpan(token.Span.End, 0), " System.GC.KeepAlive(1);"),
            6 when token.IsKind(SyntaxKind.StringLiteralToken) => new TextChange(new TextSpan(token.Span.End - 1, 0), "x"),
            _ when tokens.Find(candidate => candidate.IsKind(SyntaxKind.NumericLiteralToken)) is { Text: not null } number => new TextChange(new TextSpan(number.SpanStart, 0), "1"),
            _ => new TextChange(new TextSpan(token.SpanStart, 0), "\t"),
        };
        return compilation.ReplaceSyntaxTree(tree, tree.WithChangedText(tree.GetText().WithChanges(change)));
    }

    /// <summary>Whether two pieces of code are the same in all that they hold.</summary>
    private static class Alike
    {
        /// <summary>Where the first difference is; none if there is none.</summary>
        public static string? Difference(object? one, object? other) => Difference(one, other, "", []);

        private static string? Difference(object? one, object? other, string at, HashSet<(object, object)> seen)
        {
            if (one is null || other is null)
                return one is null && other is null ? null : $"{at}: {one ?? "nothing"} is {other ?? "nothing"}";
            if (one is string or Type or MemberInfo or Enum or TextSpan || one.GetType().IsPrimitive)
                return one.Equals(other) ? null : $"{at}: {one} is {other}";
            if (one is WeakReference<SyntaxTree> || !seen.Add((one, other)))
                return null;
            if (one is IEnumerable some && other is IEnumerable more)
            {
                var (these, those) = (some.Cast<object?>().ToList(), more.Cast<object?>().ToList());
                return these.Count != those.Count
                    ? $"{at}: {these.Count} are {those.Count}"
                    : these.Select((item, index) => Difference(item, those[index], $"{at}[{index} {item?.GetType().Name}]", seen)).FirstOrDefault(difference => difference is not null);
            }

            if (one.GetType() != other.GetType())
                return $"{at}: {one} is {other}";
            return FieldsOf(one.GetType()).Select(field => Difference(field.GetValue(one), field.GetValue(other), $"{at}.{field.Name}", seen)).FirstOrDefault(difference => difference is not null);
        }

        // Of a function that is held, what it works on.
        private static IEnumerable<FieldInfo> FieldsOf(Type? type) => type is null ? [] : type
            .GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            .Where(field => !typeof(Delegate).IsAssignableFrom(type) || field.Name == "_target").Concat(FieldsOf(type.BaseType));
    }

    private static class Held
    {
        /// <summary>The types of all objects that one leads to.</summary>
        public static IEnumerable<Type> By(object? one)
        {
            var (seen, pending) = (new HashSet<object>(ReferenceEqualityComparer.Instance), new Stack<object?>([one]));
            while (pending.Count > 0)
            {
                if (pending.Pop() is not { } next || next is string or Type or MemberInfo or Pointer || next.GetType().IsPrimitive || !seen.Add(next))
                    continue;
                yield return next.GetType();
                if (next is Array items)
                {
                    foreach (var item in items)
                        pending.Push(item);
                    continue;
                }

                for (var type = next.GetType(); type is not null; type = type.BaseType)
                {
                    foreach (var field in type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
                        pending.Push(field.GetValue(next));
                }
            }
        }
    }
}
