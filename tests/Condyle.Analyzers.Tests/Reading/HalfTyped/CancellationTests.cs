using Condyle.Analyzers.Reading;
using Condyle.Naming;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Xunit.Abstractions;

namespace Condyle.Analyzers.Tests.Reading.HalfTyped;

/// <summary>
/// A reading that nobody waits for any more ends at once, wherever it is, with nothing but the cancellation, and leaves nothing half-done
/// behind. It is counted in steps, not timed.
/// </summary>
public class CancellationTests(ITestOutputHelper output)
{
    private static readonly int Mutations = Mutation.Tried(inTheSuite: 150) / 10;

    [Fact]
    public void Cancelling_at_any_moment_returns_promptly()
    {
        var (cancelled, finished) = (0, 0);
        foreach (var mutation in Mutation.Of(RigSources.All.Count, Mutations, seed: 40_000))
        {
            var source = RigSources.All[mutation.Source];
            var random = new Random(mutation.Seed);
            foreach (var definition in DefinitionsIn(Mutated(source, mutation)))
            {
                var whole = new CountingBudget(int.MaxValue);
                var expected = Lines(definition, definition.Read(whole));
                var budget = new CountingBudget(random.Next(whole.Questions + 1));
                try
                {
                    Assert.Equal(expected, Lines(definition, definition.Read(budget)));
                    finished++;
                }
                catch (OperationCanceledException)
                {
                    cancelled++;
                }

                // The last instruction may count for more than one.
                Assert.InRange(budget.StepsAfterCancelling, 0, 2 * Budget.StepsBetweenQuestions);
                Assert.Equal(expected, Lines(definition, definition.Read(new CountingBudget(int.MaxValue))));
            }
        }

        output.WriteLine($"{cancelled} readings were cancelled on their way, {finished} had ended before");
        Assert.True(cancelled > 0);
    }

    private static CSharpCompilation Mutated(RigSource source, Mutation mutation)
    {
        var compilation = source.Compilation.Value;
        var tree = compilation.SyntaxTrees.First(tree => tree.FilePath == source.Path);
        // Every other one stays as it is: what is read to its end has more moments to be cancelled at.
        var text = mutation.Seed % 2 == 0 ? tree.ToString() : mutation.Apply(tree.ToString());
        return compilation.ReplaceSyntaxTree(tree, CSharpSyntaxTree.ParseText(text, (CSharpParseOptions)tree.Options, source.Path));
    }

    private static IEnumerable<Definition> DefinitionsIn(CSharpCompilation compilation)
    {
        var contract = compilation.GetTypeByMetadataName("Condyle.IRigDefinition")!;
        foreach (var type in compilation.GetSymbolsWithName(_ => true, SymbolFilter.Type).OfType<INamedTypeSymbol>())
        {
            if (type is { TypeKind: TypeKind.Class or TypeKind.Struct, IsAbstract: false } && type.AllInterfaces.Contains(contract, SymbolEqualityComparer.Default)
                && type.FindImplementationForInterfaceMember(contract.GetMembers("Define").Single()) is IMethodSymbol define)
                yield return new Definition(compilation, type, define);
        }
    }

    private static IReadOnlyList<string> Lines(Definition definition, ReadingResult result) =>
        [.. result.Paths.SelectMany(path => Oracle.Lines(path, definition.Compilation).Append("---"))];

    /// <summary>A definition whose readings share one cache of lowered code, as those of an editor do.</summary>
    private sealed record Definition(CSharpCompilation Compilation, INamedTypeSymbol Type, IMethodSymbol Define)
    {
        private readonly CodeCache cache = new();

        public ReadingResult Read(CountingBudget budget) => RigReader.ReadDefinition(
            RigEntry.Of(Type, Define), new(Compilation, cache, tree => Compilation.GetSemanticModel(tree), budget.Cancellation), Conventions.Default, budget);
    }

    /// <summary>Is cancelled just after it was asked for the n-th time, which is the worst moment.</summary>
    private sealed class CountingBudget(int cancelledAfter, CancellationTokenSource source) : Budget(source.Token)
    {
        private int stepsWhenCancelled;

        public CountingBudget(int cancelledAfter)
            : this(cancelledAfter, new CancellationTokenSource())
        {
        }

        public int Questions { get; private set; }

        public int StepsAfterCancelling { get; private set; }

        public override void Ask()
        {
            StepsAfterCancelling = source.IsCancellationRequested ? AllSteps - stepsWhenCancelled : 0;
            base.Ask();
            if (Questions++ != cancelledAfter)
                return;
            stepsWhenCancelled = AllSteps;
            source.Cancel();
        }
    }
}
