using CsCheck;

namespace Condyle.Analyzers.Tests.Generated;

/// <summary>The choices of one program: the same for the same seed.</summary>
internal sealed class Choices(PCG random)
{
    /// <summary>From 0 to one less than the count.</summary>
    public int Below(int count) => (int)random.Next((uint)count);

    public int Between(int least, int most) => least + Below(most - least + 1);

    public bool Chance(int percent) => Below(100) < percent;

    public T Of<T>(IReadOnlyList<T> items) => items[Below(items.Count)];

    public T Any<T>(params T[] items) => Of(items);

    /// <summary>Some of the items, in their order.</summary>
    public IReadOnlyList<T> Some<T>(IReadOnlyList<T> items, int most)
    {
        List<T> kept = [.. items];
        while (kept.Count > most)
            kept.RemoveAt(Below(kept.Count));
        return kept;
    }
}
