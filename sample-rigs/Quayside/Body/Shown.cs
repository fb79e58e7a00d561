using Condyle;

namespace Quayside.Body;

/// <summary>How the handles of a limb look, and how far its root gives way.</summary>
internal static class Shown
{
    public static void Show(this Limb limb, string layer, Tint tint, float size)
    {
        foreach (var turn in limb.Turns)
            turn.Shaped(ControlShape.Ring, size).Tinted(tint).OnLayer(layer);
        limb.Goal.Shaped(ControlShape.Box, size * 0.8f).Tinted(tint).OnLayer(layer);
        limb.Pole.Shaped(ControlShape.Diamond, size * 0.4f).Tinted(tint).OnLayer(layer);
        limb.Root.Shaped(ControlShape.Cross, size * 0.6f).Tinted(tint).OnLayer(layer)
            .LimitMove(Axis.X, -0.04f, 0.04f).LimitMove(Axis.Y, -0.04f, 0.04f).LimitMove(Axis.Z, -0.04f, 0.04f);
    }
}
