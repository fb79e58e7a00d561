using System.Runtime.CompilerServices;
using Condyle.Analyzers.Reading;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reporting;

/// <summary>
/// The names by which other files get at a file's code, and those that the file itself uses, as numbers. They depend on the file's text alone, so they are
/// kept with it.
/// </summary>
internal sealed class FileNames
{
    private static readonly ConditionalWeakTable<SyntaxTree, FileNames> Kept = new();

    private readonly HashSet<int> used = [];
    private readonly HashSet<int> declared = [];

    private FileNames(SyntaxTree tree)
    {
        foreach (var member in CodeMentions.Of(tree, CancellationToken.None).Members)
        {
            foreach (var name in member.Mentions)
                used.Add(NumberOf(name));
            if (member.BuildsRigs)
                used.UnionWith(MemberNames.OfBuilders.Select(NumberOf));
        }

        var root = tree.GetRoot();
        foreach (var node in root.DescendantNodes(node => node is BaseTypeDeclarationSyntax or not MemberDeclarationSyntax or BaseNamespaceDeclarationSyntax))
        {
            // A part of a type, and what lies in it, needn't name the type to call what other parts hold.
            if (node is SimpleNameSyntax name)
                used.Add(NumberOf(name.Identifier.ValueText));
            else if (node is TypeDeclarationSyntax type && type.Modifiers.Any(SyntaxKind.PartialKeyword))
                used.Add(NumberOf(type.Identifier.ValueText));
        }

        if (root is not CompilationUnitSyntax file)
            return;
        Declare(file.Usings);
        Declare(file.Members);
    }

    public static FileNames Of(SyntaxTree tree) => Kept.GetValue(tree, static of => new FileNames(of));

    /// <summary>Types, extension members and names given to types: who runs code of this file from elsewhere names one of them, or what names one of them.</summary>
    public IReadOnlyCollection<int> Declared => declared;

    /// <summary>Whether code elsewhere may run code of this file although it names nothing.</summary>
    public bool IsUnspoken { get; private set; }

    public bool UsesAnyOf(HashSet<int> names) => names.Count < used.Count ? Overlap(names, used) : Overlap(used, names);

    private static bool Overlap(HashSet<int> few, HashSet<int> many)
    {
        foreach (var name in few)
        {
            if (many.Contains(name))
                return true;
        }

        return false;
    }

    private void Declare(IEnumerable<UsingDirectiveSyntax> usings)
    {
        foreach (var directive in usings.Where(directive => directive.GlobalKeyword != default))
        {
            IsUnspoken |= directive.StaticKeyword != default;
            if (directive.Alias is { } alias)
                Declare(alias.Name.Identifier);
        }
    }

    // A type inside another one, or of this file alone, is out of reach for who doesn't name the one around it, or anything else that uses it.
    private void Declare(IEnumerable<MemberDeclarationSyntax> members)
    {
        foreach (var member in members)
        {
            if (member is BaseNamespaceDeclarationSyntax space)
                Declare(space.Members);
            else if (member is BaseTypeDeclarationSyntax type && !type.Modifiers.Any(SyntaxKind.FileKeyword))
                Declare(type);
            else if (member is DelegateDeclarationSyntax function)
                Declare(function.Identifier);
        }
    }

    private void Declare(BaseTypeDeclarationSyntax type)
    {
        Declare(type.Identifier);
        foreach (var member in (type as TypeDeclarationSyntax)?.Members ?? [])
        {
            if (member is MethodDeclarationSyntax method && method.ParameterList.Parameters.FirstOrDefault()?.Modifiers.Any(SyntaxKind.ThisKeyword) == true)
                DeclareExtension(method);
            else if (member is ExtensionBlockDeclarationSyntax block)
                block.Members.ToList().ForEach(DeclareExtension);
        }
    }

    private void DeclareExtension(MemberDeclarationSyntax member)
    {
        var name = member switch
        {
            MethodDeclarationSyntax method => method.Identifier,
            PropertyDeclarationSyntax property => property.Identifier,
            _ => default,
        };
        IsUnspoken |= name == default || UnspokenNames.OfTheCompiler.Contains(name.ValueText);
        Declare(name);
    }

    private void Declare(SyntaxToken name) => declared.Add(NumberOf(name.ValueText));

    // Two names with one number only make a file seem to reach another one; but it must be the same on every machine, so that the findings are.
    private static int NumberOf(string? name)
    {
        var number = 2166136261u;
        foreach (var character in name ?? "")
            number = (number ^ character) * 16777619;
        return (int)number;
    }
}
