using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>
/// Gives every value that is read its place in a pose. Channels: the controls, the exported joints, the other written nodes, second ones for nodes with falloffs or responses on top
/// (of a control the first are what an animator sets; of another node they are what comes out), and one slot for what nobody reads.
/// World frames: the world itself, the frames that never change, those that are asked for, then the others in the order in which the schedule writes them, whose slots
/// are used again once the last batch that reads them is through, so that what a frame of the rig moves stays small; and one slot for what nobody reads.
/// </summary>
internal sealed class Slots
{
    /// <summary>The world's own frame.</summary>
    public const int World = 0;

    private readonly IReadOnlyList<PlannedNode> constants;
    private readonly IReadOnlyList<PlannedNode> channelled;
    private readonly int unread;

    public Slots(IReadOnlyList<PlannedNode> inModelOrder, IReadOnlyList<PlannedNode> constants, IReadOnlyList<PlannedNode> changing, IReadOnlyCollection<PlannedNode> askedFor)
    {
        this.constants = constants;
        var controls = inModelOrder.Where(node => node.Node.Kind == NodeKind.Control);
        var joints = inModelOrder.Where(node => node.Node.IsExported);
        var others = changing.Where(node => node is { Moves: true, Writer: not SpaceWriter, Node: { IsExported: false, Kind: not NodeKind.Control } }
            && (!node.IsFramedByWriter || node.ChannelsAreRead));
        channelled = [.. controls, .. joints, .. others];
        for (var slot = 0; slot < channelled.Count; slot++)
            channelled[slot].BaseSlot = channelled[slot].ChannelSlot = slot;
        unread = channelled.Count;
        foreach (var node in channelled.Where(node => node is { HasOnTop: true, IsRead: true }))
        {
            if (node.Node.Kind == NodeKind.Control)
                node.ChannelSlot = unread++;
            else
                node.BaseSlot = unread++;
        }

        Worlds = World + 1;
        foreach (var node in constants.Concat(changing.Where(askedFor.Contains)))
            node.WorldSlot = Worlds++;
        LastingWorlds = Worlds;
        ShareWorlds(changing.Where(node => !askedFor.Contains(node)), LastReads(changing));
        Worlds++;
    }

    public int Channels => unread + 1;

    /// <summary>The slots of channels that batches read.</summary>
    public IReadOnlyList<int> Fetched => [.. channelled.Where(node => node.IsRead && !node.LeavesChannels).SelectMany(node => new[] { node.BaseSlot, node.ChannelSlot }).Distinct().Order()];

    public int Worlds { get; private set; }

    /// <summary>How many of them, the first ones, no other frame takes the place of.</summary>
    public int LastingWorlds { get; }

    /// <summary>The slot of a frame that a writer gives; the unread one where nobody reads it.</summary>
    public int FrameOf(PlannedNode node) => node.IsRead ? node.WorldSlot : Worlds - 1;

    /// <summary>The slot of the channels that a writer writes to a node; the unread one where another writer has the node or nobody reads it.</summary>
    public int ChannelsOf(PlannedNode node, Writer writer) => node.IsRead && node.Writers.Contains(writer) ? node.BaseSlot : unread;

    public static int WorldOf(PlannedNode? node) => node?.WorldSlot ?? World;

    /// <summary>Puts the values in place that no batch writes.</summary>
    public void Fill(Buffers pose)
    {
        pose.Worlds[World] = Affine.Identity;
        pose.Frames[World] = Pack.Rigid(Affine3d.Identity);
        foreach (var node in constants)
        {
            pose.Worlds[node.WorldSlot] = Pack.Single(node.World.Offset);
            pose.Frames[node.WorldSlot] = Pack.Rigid(node.World.Offset);
        }

        foreach (var node in channelled)
        {
            Fill(pose, node.BaseSlot, node.Rest);
            Fill(pose, node.ChannelSlot, node.Rest);
        }

        Fill(pose, unread, Trs.Identity);
    }

    /// <summary>The level of the last batch that reads each node's frame.</summary>
    private static Dictionary<PlannedNode, int> LastReads(IEnumerable<PlannedNode> readers)
    {
        var last = new Dictionary<PlannedNode, int>();
        foreach (var reader in readers)
        {
            foreach (var node in reader.Reads)
                last[node] = Math.Max(last.GetValueOrDefault(node), reader.Level);
        }

        return last;
    }

    private void ShareWorlds(IEnumerable<PlannedNode> nodes, Dictionary<PlannedNode, int> lastReads)
    {
        var free = new SortedSet<int>();
        var taken = new PriorityQueue<int, int>();
        foreach (var node in nodes.OrderBy(node => node.WrittenFrom))
        {
            while (taken.TryPeek(out _, out var until) && until < node.WrittenFrom)
                free.Add(taken.Dequeue());
            if (free.Count == 0)
                free.Add(Worlds++);
            node.WorldSlot = free.Min;
            free.Remove(free.Min);
            taken.Enqueue(node.WorldSlot, lastReads.GetValueOrDefault(node, node.Level));
        }
    }

    private static void Fill(Buffers pose, int slot, Trs channels)
    {
        pose.Moves[slot] = channels.Translation.ToSingle();
        pose.Turns[slot] = channels.Rotation.ToSingle();
        pose.Scales[slot] = channels.Scale.ToSingle();
    }
}
