using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R07;

public sealed class WarehouseCat : IRigDefinition
{
    private sealed record LimbPlan(string Part, string Upper, string Middle, string Lower)
    {
        public Vector3 First { get; init; }
        public Vector3 Second { get; init; }
        public Vector3 Third { get; init; }
        public float Pole { get; init; } = 0.2f;
        public float Fk { get; init; }
        public bool Labelled { get; init; } = true;

        public LimbPlan Mirrored() => this with { First = Flip(First), Second = Flip(Second), Third = Flip(Third) };

        private static Vector3 Flip(Vector3 v) => v with { X = -v.X };
    }

    public void Define(RigDraft rig)
    {
        var front = new LimbPlan("foreleg", "shoulder", "elbow", "wrist")
        {
            First = new(0.05f, -0.03f, 0.02f),
            Second = new(0.005f, -0.11f, -0.04f),
            Third = new(0, -0.11f, 0.03f),
        };
        var back = front with
        {
            Part = "hindleg",
            Upper = "hip",
            Middle = "knee",
            Lower = "ankle",
            Second = front.Second with { Z = 0.05f },
            Third = front.Third with { Y = -0.12f, Z = -0.06f },
            Fk = 0f,
            Labelled = false,
        };

        var pelvis = rig.Skeleton("warehouse_cat").Root("pelvis", at: new(0, 0.27f, -0.12f));
        var chest = pelvis.Child("chest", at: new(0, 0.01f, 0.24f));
        var main = rig.Control("main");
        var hips = rig.Control("hips").Under(main).PlacedAt(pelvis);
        var ribs = rig.Control("ribs").Under(hips).PlacedAt(chest);
        rig.Drive(pelvis).ByChannels(hips);
        rig.Drive(chest).ByChannels(ribs);

        var above = (Node)hips;
        var tailJoint = pelvis;
        for (var i = 1; i <= 5; i++)
        {
            tailJoint = tailJoint.Child($"tail{i}", at: new(0, 0.01f, -0.06f));
            var turn = rig.Control($"turn_tail{i}").Under(above).PlacedAt(tailJoint).Lock(Channels.Move);
            rig.Drive(tailJoint).ByChannels(turn);
            above = turn;
        }

        foreach (var (plan, joint, control) in new[] { (front, chest, ribs), (back, pelvis, hips) })
        {
            Build(rig, plan, Side.Left, joint, control, main);
            Build(rig, plan.Mirrored() with { Pole = 0.25f }, Side.Right, joint, control, main);
        }
    }

    private static void Build(RigDraft rig, LimbPlan plan, Side side, Joint joint, Control above, Control main)
    {
        var (part, upper, middle, lower) = plan;
        var a = joint.Child($"{upper}_{side}", at: plan.First);
        var b = a.Child($"{middle}_{side}", at: plan.Second);
        var c = b.Child($"{lower}_{side}", at: plan.Third);
        var chain = rig.Chain(a, c);
        var group = rig.Group($"{part}_{side}_group").Under(above).PlacedAt(a);
        var ik = chain.Copy("ik").Under(group);
        var fk = chain.Copy("fk").Under(group);
        var paw = rig.Control($"{part}_paw_{side}").Under(main).PlacedAt(c);
        rig.TwoBone(ik).Reach(paw).Face(rig.Control($"{part}_pole_{side}").Under(paw).PlacedAt(chain.PolePoint(plan.Pole)));
        var top = rig.Control($"turn_{a}").Under(group).PlacedAt(a);
        var mid = rig.Control($"turn_{b}").Under(top).PlacedAt(b);
        var low = rig.Control($"turn_{c}").Under(mid).PlacedAt(c);
        rig.Drive(fk.Root).ByChannels(top);
        rig.Drive(fk.Of(b)).ByChannels(mid);
        rig.Drive(fk.Tip).ByChannels(low);
        var sw = paw.Switch("fk", plan.Fk);
        rig.Blend(chain).From(ik, sw.Inverse).From(fk, sw);
        if (plan is { Labelled: true })
        {
            rig.Label($"ik_{part}_label_{side}", "IK").ShownBy(sw.Inverse).Under(paw);
            rig.Label($"fk_{part}_label_{side}", "FK").ShownBy(sw).Under(paw);
        }
    }
}
