using System.Reflection;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Operations;
using Xunit.Abstractions;

namespace Condyle.Analyzers.Tests.Generated;

/// <summary>What the programs of the suite are made of.</summary>
public class CoverageTests(ITestOutputHelper output)
{
    private const int Compiled = 100;

    /// <summary>Operations that no C# is compiled to, that only a graph of the flow has, or that rig code has no use for.</summary>
    private static readonly HashSet<OperationKind> Unused =
    [
        OperationKind.None, OperationKind.Invalid, OperationKind.Parenthesized,
        OperationKind.ParameterInitializer, OperationKind.Stop, OperationKind.End, OperationKind.RaiseEvent, OperationKind.OmittedArgument, OperationKind.ReDim, OperationKind.ReDimClause,
        OperationKind.FlowCapture, OperationKind.FlowCaptureReference, OperationKind.IsNull, OperationKind.CaughtException, OperationKind.StaticLocalInitializationSemaphore, OperationKind.FlowAnonymousFunction,
        OperationKind.DynamicObjectCreation, OperationKind.DynamicMemberReference, OperationKind.DynamicInvocation, OperationKind.DynamicIndexerAccess,
        OperationKind.AddressOf, OperationKind.FunctionPointerInvocation, OperationKind.InlineArrayAccess, OperationKind.Utf8String,
        OperationKind.InterpolatedStringHandlerCreation, OperationKind.InterpolatedStringHandlerArgumentPlaceholder, OperationKind.InterpolatedStringAddition,
        OperationKind.InterpolatedStringAppendLiteral, OperationKind.InterpolatedStringAppendFormatted, OperationKind.InterpolatedStringAppendInvalid, OperationKind.Attribute,
    ];

    [Fact]
    public void Every_construct_occurs_in_the_programs()
    {
        var counts = Constructs.All.ToDictionary(construct => construct, _ => 0);
        var bySyntax = new Dictionary<Type, IReadOnlyList<Construct>>();
        for (var number = 0; number < GeneratedProgramTests.InTheSuite; number++)
        {
            var found = new HashSet<Construct>();
            foreach (var node in Root(ProgramGen.Write(number).Source).DescendantNodes())
            {
                if (!bySyntax.TryGetValue(node.GetType(), out var possible))
                    bySyntax[node.GetType()] = possible = [.. Constructs.All.Where(construct => construct.Syntax.IsInstanceOfType(node))];
                found.UnionWith(possible.Where(construct => !found.Contains(construct) && construct.IsAt(node)));
            }

            foreach (var construct in found)
                counts[construct]++;
        }

        foreach (var (construct, count) in counts.OrderBy(pair => pair.Value))
            output.WriteLine($"{count,5} {construct.Name}");
        Assert.Empty(counts.Where(pair => pair.Value == 0).Select(pair => pair.Key.Name));
    }

    [Fact]
    public void Every_operation_occurs_in_the_programs()
    {
        var seen = new HashSet<OperationKind>();
        var compilation = CompiledCode.Compile([.. Enumerable.Range(0, Compiled).SelectMany(number => Batch.Files(ProgramGen.Write(number).Source, number))]);
        foreach (var tree in compilation.SyntaxTrees)
            Collect(tree, compilation.GetSemanticModel(tree), seen);
        string[] missing = [.. Enum.GetNames<OperationKind>().Where(IsInUse).Except(Unused.Select(kind => $"{kind}")).Except(seen.Select(kind => $"{kind}"))];
        Assert.Equal([], missing);
    }

    // Some have two names, an older one too.
    private static bool IsInUse(string kind) =>
        $"{Enum.Parse<OperationKind>(kind)}" == kind && typeof(OperationKind).GetField(kind)!.GetCustomAttribute<ObsoleteAttribute>() is null;

    private static void Collect(SyntaxTree tree, SemanticModel model, HashSet<OperationKind> seen)
    {
        var pending = new Stack<SyntaxNode>([tree.GetRoot()]);
        while (pending.TryPop(out var node))
        {
            if (model.GetOperation(node) is { } operation)
                seen.UnionWith(operation.DescendantsAndSelf().Select(part => part.Kind));
            else
                node.ChildNodes().ToList().ForEach(pending.Push);
        }
    }

    private static SyntaxNode Root(string source) => CSharpSyntaxTree.ParseText(source, new CSharpParseOptions(LanguageVersion.Preview)).GetRoot();
}
