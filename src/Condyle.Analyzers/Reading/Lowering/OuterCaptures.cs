using System.Collections;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// What a local function captures, as seen from a function nested beside or in it. The list is complete only once that local function
/// is lowered, so it is worked out when it is first asked for.
/// </summary>
internal sealed class OuterCaptures : IReadOnlyList<(int Outer, int Inner)>
{
    private readonly IReadOnlyList<(int Outer, int Inner)> declared;
    private readonly Func<int, int> here;

    public OuterCaptures(Lowerer user, Lowerer owner, IReadOnlyList<(int Outer, int Inner)> declared)
    {
        this.declared = declared;
        here = user.SlotFor(owner);
    }

    public int Count => declared.Count;

    public (int Outer, int Inner) this[int index] => (here(declared[index].Outer), declared[index].Inner);

    public IEnumerator<(int Outer, int Inner)> GetEnumerator()
    {
        for (var i = 0; i < declared.Count; i++)
            yield return this[i];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
