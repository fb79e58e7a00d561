using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>
/// Gives every value that is read its place in a pose. Channels: the controls, the exported joints, the other written nodes, and one slot for what nobody reads.
/// World frames: the world itself, the frames that never change, the others in the order in which the schedule writes them, and one slot for what nobody reads.
/// </summary>
internal sealed class Slots
{
    /// <summary>The world's own frame.</summary>
    public const int World = 0;

    private readonly IReadOnlyList<PlannedNode> constants;
    private readonly IReadOnlyList<PlannedNode> channelled;

    public Slots(IReadOnlyList<PlannedNode> inModelOrder, IReadOnlyList<PlannedNode> constants, IReadOnlyList<PlannedNode> changing)
    {
        this.constants = constants;
        var controls = inModelOrder.Where(node => node.Node.Kind == NodeKind.Control);
        var joints = inModelOrder.Where(node => node.Node.IsExported);
        var others = changing.Where(node => node is { Moves: true, IsFramedByWriter: false } && node.Node is { IsExported: false, Kind: not NodeKind.Control });
        channelled = [.. controls, .. joints, .. others];
        for (var slot = 0; slot < channelled.Count; slot++)
            channelled[slot].ChannelSlot = slot;
        Worlds = World + 1;
        foreach (var node in constants.Concat(changing))
            node.WorldSlot = Worlds++;
        Worlds++;
    }

    public int Channels => channelled.Count + 1;

    public int Worlds { get; }

    /// <summary>The slot of a frame that a writer gives; the unread one where nobody reads it.</summary>
    public int FrameOf(PlannedNode node) => node.IsRead ? node.WorldSlot : Worlds - 1;

    /// <summary>The slot of the channels that a writer writes to a node; the unread one where another writer has the node or nobody reads it.</summary>
    public int ChannelsOf(PlannedNode node, Writer writer) => node.Writer == writer && node.IsRead ? node.ChannelSlot : channelled.Count;

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
            pose.Moves[node.ChannelSlot] = node.Rest.Translation.ToSingle();
            pose.Turns[node.ChannelSlot] = node.Rest.Rotation.ToSingle();
            pose.Scales[node.ChannelSlot] = node.Rest.Scale.ToSingle();
        }

        Reset(pose, channelled.Count);
    }

    private static void Reset(Buffers pose, int slot)
    {
        pose.Turns[slot] = System.Numerics.Quaternion.Identity;
        pose.Scales[slot] = System.Numerics.Vector3.One;
    }
}
