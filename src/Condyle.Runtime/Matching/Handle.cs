using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>A node that a match puts somewhere, and the control that carries it: the node itself, or the nearest free one that it follows.</summary>
/// <param name="Node">The node.</param>
/// <param name="Control">The control.</param>
/// <param name="Index">The control's index in <see cref="CompiledRig.Controls"/>.</param>
internal sealed record Handle(RigNode Node, RigNode Control, int Index)
{
    /// <summary>The handle of a node; none where no control carries it, or more than one has a share in it.</summary>
    public static Handle? Of(RigNode? node, RigWriters writers, IReadOnlyDictionary<RigNode, int> controls)
    {
        var at = node;
        while (at is not null)
        {
            if (at.Kind == NodeKind.Control && writers.ChannelsOf(at) is null)
                return new(node!, at, controls[at]);
            at = (writers.ChannelsOf(at), writers.PlacementOf(at)) switch
            {
                (ChannelDrive drive, _) => drive.Source,
                (null, MatrixDrive drive) => drive.Source,
                (null, null) => Facts.Known(at.Parent, $"What {at.Title} hangs under"),
                _ => null,
            };
        }

        return null;
    }
}
