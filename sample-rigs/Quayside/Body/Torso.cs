using Condyle;

namespace Quayside.Body;

/// <summary>Pelvis, spine, neck, head and eyes.</summary>
/// <param name="Hips">What the legs hang from.</param>
/// <param name="Chest">What the arms hang from.</param>
/// <param name="Spaces">What hands, feet and the look can ride.</param>
internal sealed record Torso(Control Hips, Control Chest, BodySpaces Spaces)
{
    public static Torso Build(RigDraft rig, StevedoreSkeleton joints, Group systems, Control space)
    {
        var spine = rig.Spine(rig.Chain(joints.Pelvis, joints.Neck), "spine", systems, space);
        spine.Body.Shaped(ControlShape.Square, size: 0.45f).Tinted(Tint.Amber).OnLayer("torso");
        Turn(spine.Hips, size: 0.36f, backwards: 30, forwards: 30, around: 30, aside: 20);
        var (waist, chest, neck) = (spine.Turns[0], spine.Turns[1], spine.Turns[2]);
        Turn(waist, size: 0.4f, backwards: 20, forwards: 45, around: 25, aside: 20);
        Turn(chest, size: 0.42f, backwards: 20, forwards: 40, around: 30, aside: 20);
        Turn(neck, size: 0.18f, backwards: 30, forwards: 35, around: 35, aside: 25);

        var head = rig.Head(joints.Head, under: neck, space);
        Turn(head.Turn, size: 0.28f, backwards: 40, forwards: 35, around: 45, aside: 25);
        Face(head.Look, size: 0.12f);
        var spaces = new BodySpaces { World = space, Hips = spine.Hips, Chest = chest, Head = head.Turn };
        rig.Spaces(head, spaces);

        var eyes = rig.Eyes(joints.Eye[Side.Left], joints.Eye[Side.Right], joints.Head, systems, space: head.Turn);
        foreach (var eye in new[] { eyes.Left, eyes.Right })
            Face(eye, size: 0.03f).LimitMove(Axis.X, -0.3f, 0.3f).LimitMove(Axis.Y, -0.3f, 0.3f).LimitMove(Axis.Z, -0.3f, 0.6f);
        Face(eyes.Look, size: 0.08f).LimitMove(Axis.X, -0.6f, 0.6f).LimitMove(Axis.Y, -0.4f, 0.4f).LimitMove(Axis.Z, -0.5f, 2)
            .LimitTurn(Axis.X, -30, 30).LimitTurn(Axis.Y, -30, 30).LimitTurn(Axis.Z, -30, 30);
        return new Torso(spine.Hips, chest, spaces);
    }

    private static void Turn(Control control, float size, float backwards, float forwards, float around, float aside) => control
        .LimitTurn(Axis.X, -backwards, forwards).LimitTurn(Axis.Y, -around, around).LimitTurn(Axis.Z, -aside, aside)
        .Shaped(ControlShape.Ring, size).Tinted(Tint.Amber).OnLayer("torso");

    private static Control Face(Control control, float size) => control.Shaped(ControlShape.Diamond, size, Axis.Z).Tinted(Tint.Violet).OnLayer("face");
}
