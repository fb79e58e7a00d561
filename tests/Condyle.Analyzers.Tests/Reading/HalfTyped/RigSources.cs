using System.Text.RegularExpressions;
using Condyle.Analyzers.Tests.Skeletons;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Tests.Reading.HalfTyped;

/// <summary>A file of rig code, in the compilation that it belongs to.</summary>
internal sealed record RigSource(string Name, Lazy<CSharpCompilation> Compilation, string Path)
{
    public override string ToString() => Name;
}

/// <summary>
/// All the rig code of the repository, found when the tests run: the files of the sample rigs, the files of the tests that write rigs, and
/// the snippets in their string literals.
/// </summary>
internal static partial class RigSources
{
    private const string GlobalUsings =
        "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; global using System.Numerics; global using Condyle;";

    private static readonly CSharpCompilation Empty = CompiledCode.Compile(("usings.cs", GlobalUsings));

    public static IReadOnlyList<RigSource> All { get; } = [.. Samples(), .. TestFiles(), .. Snippets()];

    private static IEnumerable<RigSource> Samples()
    {
        foreach (var project in Directory.GetDirectories(Repository.PathTo("sample-rigs")).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal))
        {
            var compilation = new Lazy<CSharpCompilation>(() => (CSharpCompilation)SampleProject.Compile(project));
            foreach (var file in SourcesIn(SampleProject.Folder(project)).Where(file => File.ReadAllText(file).Contains("Condyle", StringComparison.Ordinal)))
                yield return new RigSource(Relative(file), compilation, file);
        }
    }

    private static IEnumerable<RigSource> TestFiles() => SourcesIn(Repository.PathTo("tests"))
        .Select(file => (file, text: File.ReadAllText(file)))
        .Where(pair => pair.text.Contains("RigDraft ", StringComparison.Ordinal))
        .Select(pair => Alone(Relative(pair.file), pair.text));

    private static IEnumerable<RigSource> Snippets()
    {
        var seen = new HashSet<string>();
        foreach (var file in SourcesIn(Repository.PathTo("tests")))
        {
            var root = CSharpSyntaxTree.ParseText(File.ReadAllText(file), new CSharpParseOptions(LanguageVersion.Preview)).GetRoot();
            foreach (var member in root.DescendantNodes().OfType<MemberDeclarationSyntax>().Where(member => member is BaseMethodDeclarationSyntax or BaseFieldDeclarationSyntax))
            {
                var count = 0;
                foreach (var source in SnippetsOf(member).Where(seen.Add))
                    yield return Alone($"{Relative(file)} {NameOf(member)} {count++}", source);
            }
        }
    }

    // Data of a theory is the body of a rig, the method's other literals are the members around it; without data the first one is the body.
    private static IEnumerable<string> SnippetsOf(MemberDeclarationSyntax member)
    {
        var data = member.AttributeLists.SelectMany(LiteralsIn).Where(IsRigCode).ToList();
        var literals = member.ChildNodes().Where(child => child is not AttributeListSyntax).SelectMany(LiteralsIn).ToList();
        var bodies = data.Count > 0 ? data : [.. literals.Where(IsRigCode).Take(1)];
        var members = string.Concat(literals.Except(bodies).Where(literal => literal.Contains('(')));
        foreach (var body in bodies)
            yield return body.Contains("IRigDefinition", StringComparison.Ordinal) ? body : Oracle.Rig(body, members);
    }

    private static IEnumerable<string> LiteralsIn(SyntaxNode node) => node.DescendantTokens()
        .Where(token => token.Value is string && token.Kind() is SyntaxKind.StringLiteralToken or SyntaxKind.SingleLineRawStringLiteralToken or SyntaxKind.MultiLineRawStringLiteralToken)
        .Select(token => Marks().Replace(token.ValueText, ""));

    [GeneratedRegex(@"\{\|[^:|]*:|\|\}")]
    private static partial Regex Marks();

    private static bool IsRigCode(string literal) => literal.Contains("rig.", StringComparison.Ordinal) && literal.Contains('(');

    private static string NameOf(MemberDeclarationSyntax member) => member switch
    {
        MethodDeclarationSyntax method => method.Identifier.ValueText,
        FieldDeclarationSyntax { Declaration.Variables: [var first, ..] } => first.Identifier.ValueText,
        _ => "",
    };

    private static RigSource Alone(string name, string source) =>
        new(name, new(() => Empty.AddSyntaxTrees(CSharpSyntaxTree.ParseText(source, new CSharpParseOptions(LanguageVersion.Preview), "rig.cs"))), "rig.cs");

    private static IEnumerable<string> SourcesIn(string folder) => Directory.GetFiles(folder, "*.cs", SearchOption.AllDirectories)
        .Where(file => !Path.GetRelativePath(folder, file).Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj" or "node_modules"))
        .Order(StringComparer.Ordinal);

    private static string Relative(string file) => Path.GetRelativePath(Repository.PathTo(), file).Replace('\\', '/');
}
