using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// Keeps the last of something from one compilation to the next, with two of their files: while people type in one of them, the other stays, and what is
/// kept goes when its files go. What is kept holds no symbols.
/// </summary>
internal sealed class KeptWhileTyping<T>
    where T : class
{
    private readonly ConditionalWeakTable<SyntaxTree, Holder> kept = new();

    /// <summary>What was kept, if it still holds, or what is made anew.</summary>
    /// <param name="compilation">The compilation.</param>
    /// <param name="still">What was kept as it holds for this compilation; none if it doesn't.</param>
    /// <param name="make">Makes it anew.</param>
    public T Of(Compilation compilation, Func<T, T?> still, Func<T> make)
    {
        var holders = compilation.SyntaxTrees.Take(2).Select(kept.GetOrCreateValue).ToList();
        var value = holders.Select(holder => holder.Value is { } last ? still(last) : null).FirstOrDefault(held => held is not null) ?? make();
        foreach (var holder in holders)
            holder.Value = value;
        return value;
    }

    private sealed class Holder
    {
        public T? Value { get; set; }
    }
}
