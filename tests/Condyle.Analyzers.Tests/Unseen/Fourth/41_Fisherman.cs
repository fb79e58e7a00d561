using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R41;

[Flags]
internal enum Features
{
    None = 0,
    Ik = 1 << 0,
    Fk = 1 << 1,
    Pole = 1 << 2,
    Labels = 1 << 3,
    Mirrored = 1 << 4,
    Limb = Ik | Fk | Pole,
    Everything = Limb | Labels | Mirrored,
}

public sealed class Fisherman : IRigDefinition
{
    private static readonly (string[] Joints, Vector3[] At, string Above, Features Features)[] Limbs =
    {
        (["shoulder", "elbow", "wrist"], [new(0.2f, 0.4f, 0), new(0.28f, 0, -0.04f), new(0.25f, 0, 0.04f)], "waist", Features.Everything),
        (["hip", "knee", "ankle"], [new(0.1f, -0.1f, 0), new(0, -0.42f, 0.03f), new(0, -0.42f, -0.03f)], "pelvis", Features.Everything & ~Features.Labels),
        (["rod_root", "rod_bend", "rod_tip"], [new(0, 0.1f, 0.3f), new(0, 0.8f, 0.9f), new(0, 0.5f, 1.0f)], "waist", Features.Ik | Features.Labels),
    };

    public void Define(RigDraft rig)
    {
        var pelvis = rig.Skeleton("fisherman").Root("pelvis", at: new Vector3(0, 0.95f, 0));
        var waist = pelvis.Child("waist", at: new Vector3(0, 0.15f, 0));
        var world = rig.Control("world");
        var hips = rig.Control("hips").Under(world).PlacedAt(pelvis);
        var belt = rig.Control("belt").Under(hips).PlacedAt(waist);
        rig.Drive(pelvis).ByChannels(hips);
        rig.Drive(waist).ByChannels(belt);

        foreach (var limb in Limbs)
        {
            var (joint, control) = limb.Above == "waist" ? (waist, belt) : (pelvis, hips);
            if (limb.Features.HasFlag(Features.Mirrored))
            {
                Build(rig, limb.Joints, limb.At, limb.Features, joint, control, world, Side.Left);
                Build(rig, limb.Joints, limb.At, limb.Features, joint, control, world, Side.Right);
            }
            else
            {
                Build(rig, limb.Joints, limb.At, limb.Features, joint, control, world, null);
            }
        }
    }

    private static void Build(RigDraft rig, string[] names, Vector3[] at, Features features, Joint above, Control anchor, Control world, Side? side)
    {
        var suffix = side is null ? "" : "_" + side;
        var joints = new List<Joint>();
        for (int i = 0; i < names.Length; i++)
        {
            above = above.Child(names[i] + suffix, at: new Vector3(at[i].X * (side?.Sign ?? 1), at[i].Y, at[i].Z));
            joints.Add(above);
        }

        var chain = rig.Chain(joints[0], joints[^1]);
        var group = rig.Group(names[0] + suffix + "_group").PlacedAt(anchor);
        rig.Drive(group).ByMatrix(anchor);
        var goal = rig.Control("reach_" + names[^1] + suffix).Under(world).PlacedAt(chain.Tip);
        Copy? ik = null, fk = null;

        if ((features & Features.Ik) != 0)
        {
            ik = chain.Copy("ik").Under(group);
            var solver = rig.TwoBone(ik.Value).Reach(goal);
            if ((features & Features.Pole) == Features.Pole)
                solver.Face(rig.Control("face_" + names[1] + suffix).Under(world).PlacedAt(chain.PolePoint(0.5f)));
        }

        if ((features & Features.Fk) != 0)
        {
            fk = chain.Copy("fk").Under(group);
            Node parent = anchor;
            foreach (var joint in joints)
            {
                var turn = rig.Control("turn_" + joint.Name).Under(parent).PlacedAt(joint);
                rig.Drive(fk.Value.Of(joint)).ByChannels(turn);
                parent = turn;
            }
        }

        var blend = rig.Blend(chain);
        if (ik is { } a && fk is { } b)
        {
            var amount = goal.Switch("fk");
            blend.From(a, amount.Inverse).From(b, amount);
            if (features.HasFlag(Features.Labels))
                rig.Label("label_" + names[0] + suffix, "FK").ShownBy(amount);
        }
        else if ((ik ?? fk) is { } only)
        {
            blend.From(only, 1);
            if (features.HasFlag(Features.Labels))
                rig.Label("label_" + names[0] + suffix, "IK").ShownBy(1);
        }
    }
}
