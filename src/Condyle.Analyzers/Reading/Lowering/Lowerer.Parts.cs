using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// Items from the end and stretches: of the framework's collections the machine takes them itself, of the user's own they are what their
/// <c>Length</c>, indexer and <c>Slice</c> say.
/// </summary>
internal sealed partial class Lowerer
{
    private void ImplicitIndex(IImplicitIndexerReferenceOperation indexed)
    {
        var target = ImplicitTarget(indexed);
        target.Prepare();
        target.Load();
    }

    // What has the items and how many there are is asked once.
    private Target ImplicitTarget(IImplicitIndexerReferenceOperation indexed)
    {
        var (whole, part, count) = (Temporary(), Temporary(), Temporary());
        return new Target(
            () =>
            {
                Hold(indexed.Instance, whole);
                Hold(indexed.Argument, part);
                Count(indexed.LengthSymbol, whole, count, indexed.Syntax);
            },
            () => Part(indexed.IndexerSymbol, whole, () => Emit(new LoadSlot(part)), count, KeyOf(indexed), indexed.Syntax),
            () =>
            {
                var value = Temporary();
                Emit(new StoreSlot(value));
                Emit(new LoadSlot(whole));
                Emit(new LoadSlot(part));
                if (indexed.IndexerSymbol is not IPropertySymbol { SetMethod: { } setter } || !IsRead(setter.ContainingType))
                {
                    Emit(new LoadSlot(value));
                    Emit(new StorePart());
                    return;
                }

                Emit(new LoadSlot(count));
                Emit(new OffsetIn());
                Emit(new LoadSlot(value));
                EmitCall(setter, 2, null, indexed.Syntax, []);
                Emit(new Pop());
            });
    }

    /// <summary>Stores how many items a collection has.</summary>
    private void Count(ISymbol? length, int whole, int count, SyntaxNode syntax)
    {
        Emit(new LoadSlot(whole));
        if (length is IPropertySymbol { GetMethod: { } getter } && IsRead(getter.ContainingType))
            EmitCall(getter, 0, null, syntax, []);
        else
            Emit(new CountOf());
        Emit(new StoreSlot(count));
    }

    /// <summary>Pushes an item, or a stretch, of a collection with a number of items.</summary>
    private void Part(ISymbol? indexer, int whole, Action loadPart, int count, TypeKey type, SyntaxNode syntax)
    {
        Emit(new LoadSlot(whole));
        loadPart();
        var called = indexer is IPropertySymbol property ? property.GetMethod : indexer as IMethodSymbol;
        if (called is null || !IsRead(called.ContainingType))
        {
            Emit(new PartOf(type));
            return;
        }

        Emit(new LoadSlot(count));
        if (called.Parameters.Length == 1)
            Emit(new OffsetIn());
        else
            Emit(new StretchIn());
        EmitCall(called, called.Parameters.Length, null, syntax, []);
    }
}
