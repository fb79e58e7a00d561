using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>A node that a match puts somewhere, and the control that carries it: the node itself, or the nearest free one that it follows.</summary>
/// <param name="Node">The node.</param>
/// <param name="Control">The control.</param>
/// <param name="Index">The control's index in <see cref="CompiledRig.Controls"/>.</param>
/// <param name="Moves">Whether the node takes the control's moves too, and not its turns alone.</param>
internal sealed record Handle(RigNode Node, RigNode Control, int Index, bool Moves)
{
    /// <summary>The handle of a node; none where no control turns it, or more than one has a share in that.</summary>
    public static Handle? Of(RigNode? node, RigWriters writers, IReadOnlyDictionary<RigNode, int> controls)
    {
        var moves = true;
        for (var at = node; at is not null;)
        {
            var isFree = writers.ChannelsOf(at).Count == 0;
            if (isFree && at.Kind == NodeKind.Control)
                return new(node!, at, controls[at], moves);
            moves &= isFree || WriterOf(at, Channels.Turn, writers) == WriterOf(at, Channels.Move, writers);
            at = (isFree, WriterOf(at, Channels.Turn, writers), writers.PlacementOf(at)) switch
            {
                (false, ChannelDrive drive, _) => drive.Source,
                (true, _, MatrixDrive drive) => drive.Source,
                (true, _, null) => Facts.Known(at.Parent, $"What {at.Title} hangs under"),
                _ => null,
            };
        }

        return null;
    }

    /// <summary>What writes all of some channels of a node.</summary>
    public static IChannelWriter? WriterOf(RigNode node, Channels channels, RigWriters writers) =>
        writers.ChannelsOf(node).FirstOrDefault(owner => (owner.Has & channels) == channels).Writer;
}
