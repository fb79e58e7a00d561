using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Benchmarks.Reader;

/// <summary>What the reader is measured against: binding each body once, and walking it.</summary>
internal static class Binding
{
    public static int OfAll(Compilation compilation, Func<SyntaxTree, SemanticModel> models) => compilation.SyntaxTrees.Sum(tree => Of(models(tree)));

    /// <summary>Binds the bodies of one file and counts their operations.</summary>
    public static int Of(SemanticModel model)
    {
        var operations = 0;
        foreach (var node in model.SyntaxTree.GetRoot().DescendantNodes(node => node is not BlockSyntax and not ArrowExpressionClauseSyntax))
        {
            var isBody = node is BaseMethodDeclarationSyntax or AccessorDeclarationSyntax
                or EqualsValueClauseSyntax { Parent.Parent.Parent: FieldDeclarationSyntax } or EqualsValueClauseSyntax { Parent: PropertyDeclarationSyntax }
                or ArrowExpressionClauseSyntax { Parent: PropertyDeclarationSyntax };
            if (isBody && model.GetOperation(node) is { } body)
                operations += body.DescendantsAndSelf().Count();
        }

        return operations;
    }

    /// <summary>The models of a compilation, each made once.</summary>
    public static Func<SyntaxTree, SemanticModel> ModelsOf(Compilation compilation, params IReadOnlyList<SemanticModel> made)
    {
        var models = made.ToDictionary(model => model.SyntaxTree);
        return tree => models.TryGetValue(tree, out var known) ? known : models[tree] = compilation.GetSemanticModel(tree);
    }
}
