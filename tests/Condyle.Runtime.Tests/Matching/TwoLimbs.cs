using System.Numerics;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Matching;

/// <summary>
/// A left and a right limb with IK, FK and a switch, on joints with random frames that mirror by either convention, under a scaled root away from the origin.
/// The seed picks the frames and which options the solvers have; the limbs are bent at rest, or almost straight.
/// </summary>
internal sealed class TwoLimbs(int seed) : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var choices = new RandomChoices(seed);
        var pelvis = rig.Skeleton("limbs").Root("pelvis", JointRole.Helper, choices.Vector(1), choices.Turn(MathF.PI), Vector3.One * (choices.Chance(0.5) ? 1 : choices.Between(0.5f, 1.5f)));
        var world = rig.Control("world").Unlock(Channels.Scale);
        var body = rig.Control("body").Under(world).PlacedAt(pelvis);
        rig.Drive(pelvis).ByChannels(body).WithScale().KeepingOffset();

        var bend = choices.Chance(0.2) ? choices.Between(0.00001f, 0.001f) : choices.Between(0.02f, 0.15f);
        (Vector3 At, Quaternion Turned)[] left =
        [
            (new(0.2f, choices.Between(-0.1f, 0.4f), 0.03f), choices.Turn(MathF.PI)),
            (new(0.25f, -0.3f, bend), choices.Turn(MathF.PI)),
            (new(0.3f, choices.Between(-0.7f, -0.5f), 0), choices.Turn(MathF.PI)),
        ];
        var behaves = choices.Chance(0.5);
        var options = choices.Below(6);
        var goalUnder = choices.Chance(0.3);
        foreach (var side in Side.Both)
        {
            var rest = side == Side.Left ? left : [.. left.Select(frame => (MirroredRest.Of(frame.At), behaves ? MirroredRest.Behaving(frame.Turned) : MirroredRest.Facing(frame.Turned)))];
            Limb(rig, pelvis, body, world, side, rest, options, goalUnder);
        }
    }

    private static void Limb(
        RigDraft rig, Joint pelvis, Control body, Control world, Side side, (Vector3 At, Quaternion Turned)[] rest, int options, bool goalUnder)
    {
        var joints = new List<Joint>();
        foreach (var ((at, turned), name) in rest.Zip(["shoulder", "elbow", "wrist"]))
        {
            var (above, place, frame) = joints.Count == 0 ? (pelvis, at, turned)
                : (joints[^1], Vector3.Transform(at - rest[joints.Count - 1].At, Quaternion.Inverse(rest[joints.Count - 1].Turned)), Quaternion.Inverse(rest[joints.Count - 1].Turned) * turned);
            joints.Add(above.Child($"{name}_{side}", at: place, turned: frame));
        }

        joints[^1].Child($"finger_{side}", at: new(0, -0.1f, 0.02f));
        var limb = rig.Chain(joints[0], joints[^1]);
        var root = rig.Control($"limb_root_{side}").Under(body).PlacedAt(limb.Root);
        var parts = rig.Group($"limb_{side}_group").PlacedAt(root);
        rig.Drive(parts).ByMatrix(root);

        var ik = limb.Copy("ik").Under(parts);
        var hand = rig.Control($"hand_{side}").Under(world).PlacedAt(limb.Tip);
        Node goal = goalUnder ? rig.Group($"goal_{side}_group").Under(hand).PlacedAt(joints[1]) : hand;
        var solver = rig.TwoBone(ik).Reach(goal);
        if (options != 3)
            solver.Face(rig.Control($"pole_{side}").Under(world).PlacedAt(limb.Bending(Vector3.UnitZ).PolePoint(0.4f)).Lock(Channels.Turn));
        if (options is 1 or 4)
            solver.Softening(0.03f);
        if (options is 2 or 4)
            solver.Stretching(hand.Switch("stretch"));
        if (options == 3)
            solver.TurningPlane(hand.Dial("bend", -200, 200, unit: DialUnit.Degrees));
        if (options == 5)
            solver.TurningPlane(rig.Angle(hand).About(Axis.Y));

        var fk = limb.Copy("fk").Under(parts);
        var above2 = root;
        foreach (var joint in limb)
        {
            above2 = rig.Control($"turn_{joint.Name}").Under(above2).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(above2);
        }

        var amount = hand.Switch("fk").AlsoOn(root);
        rig.Blend(limb).From(ik, amount.Inverse).From(fk, amount);
    }
}
