using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>By which names a member, or the statements of a program, can be called, which names it mentions, and whether it builds rigs. It holds no code.</summary>
internal sealed class MemberNames
{
    /// <summary>The name of indexers, which nobody writes.</summary>
    private const string Indexer = "this[]";

    /// <summary>The name of extension members that the compiler calls by itself: any code may.</summary>
    private const string Anywhere = "";

    private static readonly Dictionary<string, HashSet<string>> Builders = new() { ["Rig"] = ["Build", "Examine"], ["RigProgram"] = ["Run"] };

    public MemberNames(IReadOnlyList<string> names, string? type, IReadOnlyList<SyntaxNode> code)
    {
        Names = names;
        Mentions.Add(Anywhere);
        // Before one of a type's members runs, it is initialised; and a test runs after those of its type that make it ready.
        if (type is not null)
            Mentions.Add(type);
        RunsFirst = code is [MethodDeclarationSyntax method] && AttributesOf(method).Any(name => name == "ModuleInitializer");
        if (code is [UsingDirectiveSyntax { NamespaceOrType: var given }] && Builders.TryGetValue(NameOf(given) ?? "", out var all))
            Builds(all);
        var building = new HashSet<SyntaxNode>();
        foreach (var node in code.SelectMany(part => part.DescendantNodes()))
        {
            switch (node)
            {
                // Called or handed on to be called.
                case MemberAccessExpressionSyntax { Expression: var builder, Name: var called } when Builders.TryGetValue(NameOf(builder) ?? "", out var methods) && methods.Contains(called.Identifier.ValueText):
                    Builds([called.Identifier.ValueText]);
                    building.UnionWith([called, builder, (builder as MemberAccessExpressionSyntax)?.Name ?? builder]);
                    break;
                case SimpleNameSyntax name when !building.Contains(name):
                    Mentions.Add(name.Identifier.ValueText);
                    break;
                case ElementAccessExpressionSyntax or ElementBindingExpressionSyntax or ImplicitElementAccessSyntax:
                    Mentions.Add(Indexer);
                    break;
            }
        }
    }

    public IReadOnlyList<string> Names { get; }

    public HashSet<string> Mentions { get; } = [];

    /// <summary>Whether it names what builds a rig, or what makes the main program of a project, or gives it another name.</summary>
    public bool BuildsRigs { get; private set; }

    /// <summary>Whether it names the main program of a project, which makes the rigs itself.</summary>
    public bool RunsProgram { get; private set; }

    /// <summary>Whether it runs before everything else.</summary>
    public bool RunsFirst { get; }

    /// <summary>Whether it is called by the same names as another one, and is there on its own account or not as that is.</summary>
    public bool IsCalledAs(MemberNames other) =>
        BuildsRigs == other.BuildsRigs && RunsProgram == other.RunsProgram && RunsFirst == other.RunsFirst && Names.SequenceEqual(other.Names);

    /// <summary>The names by which what builds rigs is named, which count for none that a member mentions.</summary>
    public static IEnumerable<string> OfBuilders => Builders.SelectMany(builder => builder.Value.Append(builder.Key));

    /// <summary>The names by which code calls what a directive gives it; none where it gives nothing to be called.</summary>
    public static IReadOnlyList<string> NamesOf(UsingDirectiveSyntax directive) => directive.Alias is { } alias ? [alias.Name.Identifier.ValueText]
        : directive.StaticKeyword != default && Builders.TryGetValue(NameOf(directive.NamespaceOrType) ?? "", out var methods) ? [.. methods]
        : [];

    /// <summary>The names by which a member is called. What nobody calls by a name of its own goes with its type.</summary>
    public static IReadOnlyList<string> NamesOf(MemberDeclarationSyntax member, string type) => member switch
    {
        MethodDeclarationSyntax method when UnspokenNames.OfTheCompiler.Contains(method.Identifier.ValueText) && IsExtension(method) => [method.Identifier.ValueText, Anywhere],
        MethodDeclarationSyntax method => method.ExplicitInterfaceSpecifier is not null || UnspokenNames.OfObjects.Contains(method.Identifier.ValueText) || IsLookedFor(method)
            ? [method.Identifier.ValueText, type]
            : [method.Identifier.ValueText],
        PropertyDeclarationSyntax property => property.Initializer is null && property.ExplicitInterfaceSpecifier is null && !UnspokenNames.OfObjects.Contains(property.Identifier.ValueText)
            ? [property.Identifier.ValueText]
            : [property.Identifier.ValueText, type],
        EventDeclarationSyntax raised => [raised.Identifier.ValueText],
        IndexerDeclarationSyntax => [Indexer],
        BaseFieldDeclarationSyntax field => [.. field.Declaration.Variables.Select(variable => variable.Identifier.ValueText), type],
        _ => [type],
    };

    private void Builds(IEnumerable<string> methods) => (BuildsRigs, RunsProgram) = (true, RunsProgram || methods.Contains("Run"));

    // The definition of a rig is called by who builds it.
    private static bool IsLookedFor(MethodDeclarationSyntax method) => method.Identifier.ValueText != "Define" && AttributesOf(method).Any(name => !UnspokenNames.OfRemarks.Contains(name));

    private static bool IsExtension(MethodDeclarationSyntax method) =>
        method.Parent is ExtensionBlockDeclarationSyntax || method.ParameterList.Parameters.FirstOrDefault()?.Modifiers.Any(SyntaxKind.ThisKeyword) == true;

    private static IEnumerable<string> AttributesOf(MethodDeclarationSyntax method) => method.AttributeLists.SelectMany(list => list.Attributes).Select(attribute => NameOf(attribute.Name) ?? "")
        .Select(name => name.EndsWith("Attribute", StringComparison.Ordinal) ? name.Substring(0, name.Length - "Attribute".Length) : name);

    /// <summary>The last name of a name or member.</summary>
    public static string? NameOf(SyntaxNode written) => written switch
    {
        SimpleNameSyntax name => name.Identifier.ValueText,
        QualifiedNameSyntax qualified => qualified.Right.Identifier.ValueText,
        AliasQualifiedNameSyntax alias => alias.Name.Identifier.ValueText,
        MemberAccessExpressionSyntax access => access.Name.Identifier.ValueText,
        MemberBindingExpressionSyntax access => access.Name.Identifier.ValueText,
        _ => null,
    };
}
