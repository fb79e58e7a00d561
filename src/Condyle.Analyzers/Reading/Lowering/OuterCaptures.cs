using System.Collections;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// What a local function captures, as seen from a function nested beside or in it. The list is complete only once that local function
/// is lowered, so it is worked out when it is asked for. The lowerers hold symbols, and aren't kept for that.
/// </summary>
internal sealed class OuterCaptures : IReadOnlyList<(int Outer, int Inner)>
{
    private readonly IReadOnlyList<(int Outer, int Inner)> declared;
    private readonly IReadOnlyDictionary<int, int> here;

    public OuterCaptures(Lowerer user, Lowerer owner, IReadOnlyList<(int Outer, int Inner)> declared)
    {
        this.declared = declared;
        here = user.SlotsFor(owner);
    }

    public int Count => declared.Count;

    public (int Outer, int Inner) this[int index] => (Here(declared[index].Outer), declared[index].Inner);

    public IEnumerator<(int Outer, int Inner)> GetEnumerator()
    {
        for (var i = 0; i < declared.Count; i++)
            yield return this[i];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private int Here(int outer) => here.TryGetValue(outer, out var mine) ? mine : throw new ReadingStopped("a local function captures a variable that its caller can't see");
}
