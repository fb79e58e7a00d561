using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R17;

public sealed class HarbourCat : IRigDefinition
{
    [Flags]
    private enum As
    {
        Nothing = 0,
        Handle = 1,
        Limb = 2,
        Prop = 4,
        Still = 8,
    }

    private sealed class Bone(string name, float x, float y, float z, As use, params Bone[] below)
    {
        public string Name { get; } = name;

        public Vector3 At { get; } = new(x, y, z);

        public As Use { get; } = use;

        public Bone[] Below { get; } = below;

        public int Size
        {
            get
            {
                var size = 1;
                foreach (var bone in Below)
                    size += bone.Size;
                return size;
            }
        }

        public Bone On(Side side)
        {
            var mirrored = new Bone[Below.Length];
            for (var i = 0; i < Below.Length; i++)
                mirrored[i] = Below[i].On(side);
            return new Bone($"{Name}_{side}", At.X * side.Sign, At.Y, At.Z, Use, mirrored);
        }
    }

    private sealed class Grown(Bone bone, Joint joint)
    {
        public Bone Bone { get; } = bone;

        public Joint Joint { get; } = joint;

        public List<Grown> Below { get; } = [];
    }

    private static Bone Tail(int left) =>
        left == 0
            ? new Bone("tail_tip", 0, 0.01f, -0.03f, As.Handle | As.Still)
            : new Bone($"tail_{left}", 0, 0.01f * (6 - left), -0.04f, As.Handle | As.Still, Tail(left - 1));

    private static Bone FrontLeg() =>
        new("shoulder", 0.05f, -0.01f, 0.03f, As.Limb,
            new Bone("elbow", 0, -0.1f, -0.03f, As.Nothing,
                new Bone("wrist", 0, -0.1f, 0.02f, As.Nothing,
                    new Bone("paw_front", 0, -0.03f, 0.02f, As.Handle,
                        new Bone("claw_front_a", 0.008f, 0, 0.015f, As.Handle | As.Still),
                        new Bone("claw_front_b", -0.008f, 0, 0.015f, As.Handle | As.Still)))));

    private static Bone BackLeg() =>
        new("hip", 0.045f, -0.01f, -0.01f, As.Limb,
            new Bone("knee", 0, -0.1f, 0.05f, As.Nothing,
                new Bone("ankle", 0, -0.09f, -0.06f, As.Nothing,
                    new Bone("paw_back", 0, -0.05f, 0.03f, As.Handle))));

    private static Bone Ear() => new("ear", 0.02f, 0.03f, 0, As.Handle | As.Still);

    private static readonly Bone Cat =
        new("pelvis", 0, 0.26f, -0.12f, As.Handle,
            Tail(7),
            BackLeg().On(Side.Left),
            BackLeg().On(Side.Right),
            new Bone("waist", 0, 0.01f, 0.1f, As.Handle | As.Still,
                new Bone("chest", 0, 0.005f, 0.1f, As.Handle | As.Still,
                    FrontLeg().On(Side.Left),
                    FrontLeg().On(Side.Right),
                    new Bone("neck", 0, 0.04f, 0.07f, As.Handle | As.Still,
                        new Bone("head", 0, 0.04f, 0.04f, As.Handle,
                            Ear().On(Side.Left),
                            Ear().On(Side.Right),
                            new Bone("jaw", 0, -0.015f, 0.02f, As.Handle | As.Still,
                                new Bone("fish", 0, 0, 0.03f, As.Handle | As.Prop)))))));

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("harbour_cat");
        var grown = Grow(Cat, null);
        var world = rig.Control("world");
        var limbs = new List<(Grown Root, Control Above)>();

        Hang(grown, world);
        foreach (var (root, above) in limbs)
            Solve(root, above);
        rig.Label("size_label", $"{Cat.Size} joints").Under(world);

        Grown Grow(Bone bone, Joint? above)
        {
            var role = bone.Use.HasFlag(As.Prop) ? JointRole.Helper : JointRole.Deform;
            var made = new Grown(bone, above is { } joint ? joint.Child(bone.Name, role, bone.At) : skeleton.Root(bone.Name, role, bone.At));
            foreach (var next in bone.Below)
                made.Below.Add(Grow(next, made.Joint));
            return made;
        }

        void Hang(Grown at, Control above)
        {
            if (at.Bone.Use.HasFlag(As.Limb))
            {
                limbs.Add((at, above));
                return;
            }

            if (at.Bone.Use.HasFlag(As.Handle))
            {
                above = rig.Control($"{at.Bone.Name}_handle").Under(above).PlacedAt(at.Joint);
                if (at.Bone.Use.HasFlag(As.Still))
                    above.Lock(Channels.Move);
                rig.Drive(at.Joint).ByChannels(above);
            }

            foreach (var below in at.Below)
                Hang(below, above);
        }

        void Solve(Grown root, Control above)
        {
            var tip = Deepest(root, 2);
            var chain = rig.Chain(root.Joint, tip.Joint);
            var holder = rig.Group($"{root.Joint}_limb_group").Under(above).PlacedAt(root.Joint);
            var ik = chain.Copy("ik").Under(holder);
            var fk = chain.Copy("fk").Under(holder);
            var goal = rig.Control($"{tip.Joint}_goal").Under(world).PlacedAt(tip.Joint);
            rig.TwoBone(ik).Reach(goal).Face(rig.Control($"{root.Joint}_pole").Under(world).PlacedAt(ik.PolePoint(0.15f)));
            Turn(0, above);

            var amount = goal.Switch("fk");
            rig.Blend(chain).From(ik, amount.Inverse).From(fk, amount);
            foreach (var below in tip.Below)
                Hang(below, goal);

            void Turn(int index, Node over)
            {
                if (index == chain.Count)
                    return;
                var control = rig.Control($"fk_{chain[index]}").Under(over).PlacedAt(chain[index]).Lock(Channels.Move);
                rig.Drive(fk.Of(chain[index])).ByChannels(control);
                Turn(index + 1, control);
            }
        }

        static Grown Deepest(Grown from, int levels) => levels == 0 ? from : Deepest(from.Below[0], levels - 1);
    }
}
