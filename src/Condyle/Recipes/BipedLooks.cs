using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>How a biped's controls are shown: by shapes that grow with the skeleton, across the bone that they turn, on a layer for each part.</summary>
internal sealed class BipedLooks(RigDraft rig, Fact<float> scale, PlaceId place)
{
    // From the ankles to the head's joint, of a grown human.
    private const double Height = 1.45;

    public static BipedLooks Of(RigDraft rig, Joint ankle, Joint head, Fact<float> size, PlaceId place)
    {
        var scale = rig.RestOf(ankle).TryKnown(out var low) && rig.RestOf(head).TryKnown(out var high) ? size.Times((float)((high.Origin - low.Origin).Length / Height)) : Fact<float>.Open;
        return new(rig, scale.TryKnown(out var known) && known <= 0 ? size : scale, place);
    }

    public void Show(Control control, ControlShape shape, float metres, Tint tint, string layer) => Show(control, shape, metres, Axis.Y, tint, layer);

    /// <summary>Across the way from a joint to another one.</summary>
    public void Across(Control control, Joint joint, Joint next, float metres, Tint tint, string layer) =>
        Show(control, ControlShape.Ring, metres, OwnAxis(joint, rig.Towards(joint, next)), tint, layer);

    /// <summary>Across a direction of the world.</summary>
    public void Across(Control control, Joint joint, Vector3d direction, float metres, Tint tint, string layer) =>
        Show(control, ControlShape.Ring, metres, OwnAxis(joint, direction), tint, layer);

    public void Limb(Limb limb, float metres, Tint tint, string layer)
    {
        Show(limb.Root, ControlShape.Cross, metres / 2, tint, layer);
        Show(limb.Goal, ControlShape.Box, metres, tint, layer);
        Show(limb.Pole, ControlShape.Diamond, metres / 2, tint, layer);
        for (var i = 0; i < limb.Turns.Count; i++)
        {
            var (from, to) = i + 1 < limb.Bones.Count ? (i, i + 1) : (i - 1, i);
            Show(limb.Turns[i], ControlShape.Ring, metres, OwnAxis(limb.Bones[i], rig.Towards(limb.Bones[from], limb.Bones[to])), tint, layer);
        }
    }

    private void Show(Control control, ControlShape shape, float metres, Fact<Axis> facing, Tint tint, string layer) =>
        control.Shaped(shape, scale.Times(metres), facing, place).Tinted(tint, place).OnLayer(layer, place);

    private Fact<Axis> OwnAxis(Joint joint, Fact<Vector3d?> direction) =>
        !direction.TryKnown(out var along) || !rig.RestOf(joint).TryKnown(out var frame) ? Fact<Axis>.Open : LocalAxis.Along(along, frame)?.Axis ?? Axis.Y;
}
