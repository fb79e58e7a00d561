using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Clips.Files;

/// <summary>How a control is shown.</summary>
internal sealed record ControlLook(ControlShape Shape, float Size, Axis Facing, Tint Tint, string Layer);

/// <summary>Works out how controls are shown, by what the rig says of it and else by what an animator may do with them.</summary>
internal sealed class ControlLooks
{
    /// <summary>
    /// The width of an outline as a share of the skeleton's longest side, and without a skeleton that has one, in metres. At a joint with a bone it is no wider than the bone is long.
    /// </summary>
    private const double Share = 0.06, Otherwise = 0.1;

    private readonly CompiledRig rig;
    private readonly float size;
    private readonly List<string> layers;

    public ControlLooks(CompiledRig rig)
    {
        this.rig = rig;
        layers = [.. rig.LimbTable.Controls.Select(LayerOf).Distinct()];
        List<Vector3d> joints = [.. rig.Model.Nodes.Where(node => node.IsExported).Select(node => rig.LimbTable.Rest.WorldOf(node).Origin)];
        var extent = joints.Count == 0 ? 0 : ((ReadOnlySpan<Func<Vector3d, double>>)[at => at.X, at => at.Y, at => at.Z]).ToArray().Max(along => joints.Max(along) - joints.Min(along));
        size = (float)(extent > 0 ? extent * Share : Otherwise);
    }

    public ControlLook Of(CompiledControl control, RigNode node)
    {
        var layer = LayerOf(node);
        var tint = Facts.Known(node.Tint, $"The tint of {node.Title}") ?? (Tint)(layers.IndexOf(layer) % Enum.GetValues<Tint>().Length);
        return Facts.Known(node.Outline, $"The shape of {node.Title}") is { } outline
            ? new(
                Facts.Known(outline.Shape, $"The shape of {node.Title}"),
                Facts.Known(outline.Size, $"The size of {node.Title}"),
                Facts.Known(outline.Facing, $"The axis that {node.Title} faces"),
                tint,
                layer)
            : new(ShapeFor(~control.Locked), SizeFor(node), AlongBone(node), tint, layer);
    }

    private static ControlShape ShapeFor(Channels free) => ((free & Channels.Move) != 0, (free & Channels.Turn) != 0) switch
    {
        (true, true) => ControlShape.Box,
        (true, false) => ControlShape.Diamond,
        (false, true) => ControlShape.Ring,
        _ => ControlShape.Cross,
    };

    private static string LayerOf(RigNode node) => node.Layer.TryKnown(out var layer) ? layer : throw new RigGeometryException($"The layer of {node.Title} isn't known.");

    private float SizeFor(RigNode node) => BoneOf(node) is { } bone && bone.Length > 0 ? Math.Min(size, (float)bone.Length) : size;

    /// <summary>The axis of a control's frame that lies nearest to its bone.</summary>
    private Axis AlongBone(RigNode node) => BoneOf(node) is not { } bone ? Axis.Y : (Math.Abs(bone.X), Math.Abs(bone.Y), Math.Abs(bone.Z)) switch
    {
        var (x, y, z) when x > y && x > z => Axis.X,
        var (_, y, z) when z > y => Axis.Z,
        _ => Axis.Y,
    };

    /// <summary>The bone of a control at a joint, in the control's frame: from the joint to its first child, or at the end of a chain, from the joint above.</summary>
    private Vector3d? BoneOf(RigNode node)
    {
        if (!node.Placement.TryKnown(out var placement) || placement is not AtNode { Target: { IsExported: true } joint })
            return null;
        var child = rig.Model.Nodes.Find(below => below.IsExported && below.Parent.TryKnown(out var parent) && parent == joint);
        var other = child ?? (joint.Parent.TryKnown(out var above) ? above : null);
        return other is null ? null : rig.LimbTable.Rest.WorldOf(node).Inverse().Apply(rig.LimbTable.Rest.WorldOf(other).Origin);
    }
}
