using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R27;

/// <summary>A seal that suns itself on the slipway: a spine, two fore flippers with IK and FK, and a tail fin.</summary>
public sealed class HarbourSeal : IRigDefinition
{
    private static readonly (string Name, float Y, float Z)[] Spine =
        [("belly", 0.03f, 0.3f), ("chest", 0.06f, 0.34f), ("neck", 0.12f, 0.2f), ("head", 0.1f, 0.14f)];

    public void Define(RigDraft rig)
    {
        var systems = rig.Group("systems_group");
        var seal = rig.Control("seal");
        var spine = Spine.Aggregate(
            new List<Joint> { rig.Skeleton("harbour_seal").Root("pelvis", at: new(0, 0.22f, 0)) },
            (above, bone) => [.. above, above[^1].Child(bone.Name, at: new(0, bone.Y, bone.Z))]);
        var turns = spine.Aggregate(new List<Control>(), (made, joint) => [.. made, Turn(rig, joint, made is [.., var last] ? last : seal)]);

        Enumerable.Range(1, 3).Aggregate(
            (Joint: spine[0], Above: turns[0]),
            (at, i) => at.Joint.Child($"tail_{i}", at: -Vector3.UnitZ * (0.22f - 0.03f * i)) is var next ? (next, Turn(rig, next, at.Above)) : at);

        foreach (var side in Side.Both) Flipper(rig, side, spine[2], systems, turns[2], seal);
        foreach (var side in Side.Both) Follow(rig, turns[^1], spine[^1].Child($"whiskers_{side}", at: new(0.03f * side.Sign, -0.02f, 0.08f)));
    }

    private static void Flipper(RigDraft rig, Side side, Joint chest, Group systems, Control above, Control seal)
    {
        Vector3 Out(float x, float y, float z) => new(x * side.Sign, y, z);
        var shoulder = chest.Child($"shoulder_{side}", at: Out(0.16f, -0.05f, 0));
        var elbow = shoulder.Child($"elbow_{side}", at: Out(0.12f, -0.06f, -0.05f));
        var wrist = elbow.Child($"wrist_{side}", at: Out(0.14f, -0.05f, 0.04f));
        var arm = rig.Chain(shoulder, wrist);

        var parts = rig.Group($"flipper_{side}_group").Under(systems).PlacedAt(above);
        rig.Drive(parts).ByMatrix(above);

        var (ik, fk) = (arm.Copy("ik").Under(parts), arm.Copy("fk").Under(parts));
        var goal = rig.Control($"flipper_{side}").Under(seal).PlacedAt(arm.Tip);
        rig.TwoBone(ik).Reach(goal).Face(rig.Control($"elbow_pole_{side}").Under(seal).PlacedAt(ik.PolePoint(0.3f)).Lock(Channels.Turn));
        _ = arm.Aggregate(above, (up, joint) => Turn(rig, fk.Of(joint), up));

        var amount = goal.Switch("fk").AlsoOn(above);
        rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
        foreach (var (tag, weight) in new[] { ("ik", amount.Inverse), ("fk", (Weight)amount) })
            rig.Label($"{tag}_flipper_label_{side}", tag.ToUpperInvariant()).Under(goal).ShownBy(weight);
    }

    private static Control Turn(RigDraft rig, Node node, Node above) =>
        Follow(rig, rig.Control($"turn_{node}").Under(above).PlacedAt(node).Lock(Channels.Move), node);

    private static Control Follow(RigDraft rig, Control source, Node target) => (source, rig.Drive(target).ByChannels(source).KeepingOffset()).source;
}
