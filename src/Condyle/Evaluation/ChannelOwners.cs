using System.Collections;

namespace Condyle.Evaluation;

/// <summary>Who writes which channels of a node. Of several sentences that write a channel, the one begun last has it; one that is left with none isn't asked.</summary>
internal sealed class ChannelOwners<TWriter> : IReadOnlyList<(TWriter Writer, Channels Has)>
{
    private readonly List<(TWriter Writer, Channels Has)> owners = [];

    public int Count => owners.Count;

    public (TWriter Writer, Channels Has) this[int index] => owners[index];

    public void Add(TWriter writer, Channels written)
    {
        for (var i = owners.Count - 1; i >= 0; i--)
        {
            var left = owners[i].Has & ~written;
            if (left == Channels.None)
                owners.RemoveAt(i);
            else
                owners[i] = (owners[i].Writer, left);
        }

        owners.Add((writer, written));
    }

    public IEnumerator<(TWriter Writer, Channels Has)> GetEnumerator() => owners.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
