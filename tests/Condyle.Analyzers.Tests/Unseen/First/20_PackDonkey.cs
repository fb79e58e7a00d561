using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R20;

/// <summary>The donkey that carries crates up from the quay, in a vocabulary of extension members.</summary>
public sealed class PackDonkey : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var croup = rig.Skeleton("pack_donkey").Root("croup", at: 1.05f.Up + 0.4f.Back);
        var barrel = croup.Child("barrel", at: 0.45f.Forward);
        var withers = barrel.Child("withers", at: 0.4f.Forward + 0.05f.Up);
        var neck = withers.Descend("neck", 3, 0.14f.Forward + 0.16f.Up);
        var head = neck.Last().Child("head", at: 0.1f.Up + 0.08f.Forward);

        var donkey = rig.Control("donkey");
        var trunk = new[] { croup, barrel, withers }.PosedUnder(donkey, rig);
        var nape = neck.Append(head).PosedUnder(trunk[^1], rig);

        foreach (var side in Side.Both)
        {
            var ear = head.Child(side * "ear", at: side.Out(0.06f) + 0.12f.Up);
            ear.Posed(rig, nape[^1]).LimitTurn(Axis.Z, -40, 40);
            withers.Leg(rig, side, "fore", trunk[^1], donkey);
            croup.Leg(rig, side, "hind", trunk[0], donkey);

            var pannier = barrel.Child(side * "pannier", JointRole.Helper, side.Out(0.45f) + 0.1f.Up);
            pannier.Posed(rig, trunk[1]).Lock(Channels.MoveX | Channels.MoveZ);
        }

        croup.Descend("tail", 4, 0.1f.Back + (-0.05f).Up).PosedUnder(trunk[0], rig);
        rig.Mood.Under(nape[^1]);
    }
}

public static class DonkeyVocabulary
{
    extension(float metres)
    {
        public Vector3 Up => Vector3.UnitY * metres;

        public Vector3 Forward => Vector3.UnitZ * metres;

        public Vector3 Back => -metres.Forward;
    }

    extension(Side side)
    {
        public static string operator *(Side left, string part) => $"{part}_{left}";

        public Vector3 Out(float metres) => Vector3.UnitX * (side.Sign * metres);
    }

    extension(RigDraft rig)
    {
        public Label Mood => rig.Label("mood_label", "stubborn");

        public (Copy Ik, Copy Fk) Doubled(Chain chain, Node under) => (chain.Copy("ik").Under(under), chain.Copy("fk").Under(under));

        public Group Holder(string name, Control above)
        {
            var group = rig.Group(name).PlacedAt(above);
            rig.Drive(group).ByMatrix(above);
            return group;
        }
    }

    extension(Joint joint)
    {
        public List<Joint> Descend(string name, int count, Vector3 step)
        {
            List<Joint> made = [];
            while (made.Count < count)
                made.Add((made.Count == 0 ? joint : made[^1]).Child($"{name}_{made.Count + 1}", at: step));
            return made;
        }

        public Control Posed(RigDraft rig, Node above) => ((Node)joint).PosedLike(joint, rig, above, "pose");

        public void Leg(RigDraft rig, Side side, string which, Control above, Control space)
        {
            var upper = joint.Child(side * $"{which}_upper", at: side.Out(0.15f) + (-0.1f).Up);
            var lower = upper.Child(side * $"{which}_lower", at: (-0.4f).Up + (which == "fore" ? -0.04f : 0.06f).Forward);
            var hoof = lower.Child(side * $"{which}_hoof", at: (-0.45f).Up + (which == "fore" ? 0.04f : -0.05f).Forward);
            var leg = rig.Chain(upper, hoof);

            var (ik, fk) = rig.Doubled(leg, under: rig.Holder(side * which, above));
            var goal = rig.Control(side * $"{which}_hoof_goal").Under(space).PlacedAt(hoof);
            rig.TwoBone(ik).Reach(goal).Face(rig.Control(side * $"{which}_pole").Under(space).PlacedAt(ik.PolePoint(0.5f)));

            Node last = above;
            foreach (var bone in leg)
                last = ((Node)fk.Of(bone)).PosedLike(bone, rig, last, "fk");
            leg.Shared(rig, ik, fk, goal.Switch("fk"));
        }
    }

    extension(Node node)
    {
        public Control PosedLike(Joint place, RigDraft rig, Node above, string tag)
        {
            var control = rig.Control($"{tag}_{place.Name}").Under(above).PlacedAt(place);
            rig.Drive(node).ByChannels(control);
            return control;
        }
    }

    public static IReadOnlyList<Control> PosedUnder(this IEnumerable<Joint> joints, Node above, RigDraft rig)
    {
        var controls = new List<Control>();
        foreach (var joint in joints)
            controls.Add(joint.Posed(rig, controls is [.., var last] ? last : above));
        return controls;
    }

    public static ChainBlend Shared(this in Chain chain, RigDraft rig, Copy ik, Copy fk, Switch amount) =>
        rig.Blend(chain).From(ik, amount.Inverse).From(fk, amount);
}
