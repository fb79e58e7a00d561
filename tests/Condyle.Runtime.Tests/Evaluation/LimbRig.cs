using System.Numerics;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>
/// One limb as riggers build it, with IK, FK and a switch between them, on joints with random frames, under a root away from the origin,
/// with a twist joint between and, for some seeds, a scaled root.
/// </summary>
/// <param name="seed">Picks the frames.</param>
/// <param name="scales">Whether the root may be scaled by whoever poses.</param>
internal sealed class LimbRig(int seed, bool scales = false) : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var choices = new RandomChoices(seed);
        var size = choices.Chance(0.5) ? 1 : choices.Between(0.5f, 2f);
        var pelvis = rig.Skeleton("limb").Root("pelvis", JointRole.Helper, choices.Vector(3), choices.Turn(MathF.PI), Vector3.One * size);
        var shoulder = pelvis.Child("shoulder", at: choices.Vector(0.3f), turned: choices.Turn(MathF.PI));
        shoulder.Child("shoulder_twist", JointRole.Twist, at: new(0, 0.15f, 0.02f), turned: choices.Turn(MathF.PI));
        var elbow = shoulder.Child("elbow", at: new(0, 0.3f, 0.05f), turned: choices.Turn(MathF.PI));
        var wrist = elbow.Child("wrist", at: choices.Direction() * 0.25f, turned: choices.Turn(MathF.PI));
        wrist.Child("finger", at: new(0.02f, 0.1f, 0), turned: choices.Turn(0.3f));

        var world = rig.Control("world");
        var root = rig.Control("limb_root").Under(world).PlacedAt(pelvis);
        if (scales)
            root.Unlock(Channels.Scale);
        rig.Drive(pelvis).ByChannels(root);
        var parts = rig.Group("limb_group").PlacedAt(root);
        rig.Drive(parts).ByMatrix(root);

        var limb = rig.Chain(shoulder, wrist);
        var ik = limb.Copy("ik").Under(parts);
        var hand = rig.Control("hand").Under(world).PlacedAt(wrist);
        var pole = rig.Control("pole").Under(world).PlacedAt(ik.PolePoint(0.4f));
        rig.TwoBone(ik).Reach(hand).Face(pole);

        var fk = limb.Copy("fk").Under(parts);
        var above = root;
        foreach (var joint in limb)
        {
            above = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(above);
        }

        var amount = hand.Switch("fk").AlsoOn(root);
        rig.Blend(limb).From(ik, amount.Inverse).From(fk, amount);
        rig.Label("ik_label", "IK").Under(hand).ShownBy(amount.Inverse);
        rig.Label("fk_label", "FK").Under(hand).ShownBy(amount);
        rig.Label("title", "limb");
    }
}
