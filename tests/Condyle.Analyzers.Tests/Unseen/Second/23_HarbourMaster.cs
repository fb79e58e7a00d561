using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R23;

/// <summary>The harbour master: a person with a stiff left knee, a cap and a spyglass in the right hand.</summary>
public sealed class HarbourMaster : PersonRig
{
    protected override string SkeletonName => "harbour_master";

    protected override float Height => 1.76f;

    protected override bool HasFk(Limb limb, Side side) => limb != Limb.Leg || side != Side.Left;

    protected override void DefineProps(Joint head, Control headControl, IReadOnlyDictionary<Side, Joint> wrists)
    {
        var cap = head.Child("cap", at: new Vector3(0, 0.12f * Height, 0));
        Attach("tip_cap", cap, headControl).Lock(Channels.MoveX);

        var spyglass = wrists[Side.Right].Child("spyglass", JointRole.Helper, new Vector3(-0.08f, 0, 0.05f));
        var inHand = Draft.Group("spyglass_group").PlacedAt(wrists[Side.Right]);
        Draft.Drive(inHand).ByMatrix(wrists[Side.Right]);
        var extended = spyglass.Child("spyglass_tube", at: new Vector3(0, 0, 0.15f));
        var hold = Attach("hold_spyglass", spyglass, inHand);
        Attach("extend_spyglass", extended, hold).Lock(Channels.Turn | Channels.MoveX | Channels.MoveY).LimitMove(Axis.Z, 0, 0.2f);
    }
}

/// <summary>What all background people of the harbour share.</summary>
public abstract class PersonRig : IRigDefinition
{
    private RigDraft? draft;

    protected enum Limb
    {
        Arm,
        Leg,
    }

    protected RigDraft Draft => draft!;

    protected abstract string SkeletonName { get; }

    /// <summary>In metres; the joints' places scale with it.</summary>
    protected virtual float Height => 1.7f;

    public void Define(RigDraft rig)
    {
        draft = rig;

        var pelvis = rig.Skeleton(SkeletonName).Root("pelvis", at: At(0, 0.54f, 0));
        var chest = pelvis.Child("chest", at: At(0, 0.2f, 0));
        var head = chest.Child("head", at: At(0, 0.16f, 0.01f));

        var world = rig.Control("world");
        var hips = Attach("hips", pelvis, world);
        var ribs = Attach("turn_chest", chest, hips).Lock(Channels.Move);
        var skull = Attach("turn_head", head, ribs).Lock(Channels.Move);

        var wrists = new Dictionary<Side, Joint>();
        foreach (var side in Side.Both)
        {
            var shoulder = chest.Child($"shoulder_{side}", at: At(0.1f * side.Sign, 0.1f, 0));
            var elbow = shoulder.Child($"elbow_{side}", at: At(0.16f * side.Sign, 0, -0.01f));
            wrists[side] = elbow.Child($"wrist_{side}", at: At(0.15f * side.Sign, 0, 0.015f));
            DefineLimb(Limb.Arm, side, shoulder, wrists[side], ribs, world);

            var hip = pelvis.Child($"hip_{side}", at: At(0.05f * side.Sign, -0.03f, 0));
            var knee = hip.Child($"knee_{side}", at: At(0, -0.24f, 0.012f));
            var ankle = knee.Child($"ankle_{side}", at: At(0, -0.23f, -0.02f));
            DefineLimb(Limb.Leg, side, hip, ankle, hips, world);
        }

        DefineProps(head, skull, wrists);
    }

    protected virtual bool HasFk(Limb limb, Side side) => true;

    protected virtual void DefineProps(Joint head, Control headControl, IReadOnlyDictionary<Side, Joint> wrists)
    {
    }

    protected Control Attach(string name, Joint joint, Node parent)
    {
        var control = Draft.Control(name).Under(parent).PlacedAt(joint);
        Draft.Drive(joint).ByChannels(control);
        return control;
    }

    private void DefineLimb(Limb limb, Side side, Joint root, Joint tip, Control above, Control world)
    {
        var word = limb == Limb.Arm ? "arm" : "leg";
        var chain = Draft.Chain(root, tip);
        var group = Draft.Group($"{word}_{side}_group").Under(above).PlacedAt(root);

        var ik = chain.Copy("ik").Under(group);
        var goal = Draft.Control($"{word}_goal_{side}").Under(world).PlacedAt(tip);
        var pole = Draft.Control($"{word}_pole_{side}").Under(world).PlacedAt(ik.PolePoint(0.25f * Height));
        Draft.TwoBone(ik).Reach(goal).Face(pole);

        var blend = Draft.Blend(chain);
        if (!HasFk(limb, side))
        {
            blend.From(ik, 1);
            return;
        }

        var fk = chain.Copy("fk").Under(group);
        Node parent = group;
        foreach (var joint in chain)
        {
            var turn = Draft.Control($"turn_{joint.Name}").Under(parent).PlacedAt(joint).Lock(Channels.Move);
            Draft.Drive(fk.Of(joint)).ByChannels(turn);
            parent = turn;
        }

        var amount = goal.Switch("fk", limb == Limb.Arm ? 1 : 0);
        blend.From(fk, amount).From(ik, amount.Inverse);
    }

    private Vector3 At(float x, float y, float z) => new Vector3(x, y, z) * Height;
}
