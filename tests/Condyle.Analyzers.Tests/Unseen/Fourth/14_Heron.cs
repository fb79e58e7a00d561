using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R14;

public sealed class Heron : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var (pelvis, chest) = Trunk(rig.Skeleton("heron"));
        var (main, hips, ribs) = (rig.Control("main"), rig.Control("hips"), rig.Control("ribs"));
        (hips, ribs) = (hips.Under(main).PlacedAt(pelvis), ribs.Under(hips).PlacedAt(chest));
        foreach (var (j, c) in new (Joint, Control)[] { (pelvis, hips), (chest, ribs) })
            rig.Drive(j).ByChannels(c);

        var limbs = new (string Kind, Side Side)[] { ("leg", Side.Left), ("leg", Side.Right), ("wing", Side.Left), ("wing", Side.Right) };
        foreach (var limb in limbs)
        {
            var (from, above) = limb.Kind is "leg" ? (pelvis, hips) : (chest, ribs);
            var names = limb switch
            {
                ("leg", var s) => ($"hip_{s}", $"knee_{s}", $"ankle_{s}"),
                ("wing", var s) => ($"shoulder_{s}", $"elbow_{s}", $"wrist_{s}"),
                _ => throw new ArgumentOutOfRangeException(nameof(limb)),
            };
            (Vector3, Vector3, Vector3) places = limb switch
            {
                { Kind: "leg", Side.Sign: > 0 } => (new(0.06f, -0.04f, 0), new(0, -0.3f, 0.04f), new(0, -0.32f, -0.05f)),
                { Kind: "leg" } => (new(-0.06f, -0.04f, 0), new(0, -0.3f, 0.04f), new(0, -0.32f, -0.05f)),
                { Side.Sign: var x } => (new(0.07f * x, 0.05f, 0.05f), new(0.3f * x, 0, -0.1f), new(0.35f * x, 0, 0.12f)),
            };
            var joints = Three(from, names, places);
            var tip = Limb(rig, limb, joints, main, above);
            _ = tip;
        }
    }

    private static (Joint, Joint) Trunk(Skeleton s) =>
        s.Root("pelvis", at: new(0, 0.7f, 0)) is var p ? (p, p.Child("chest", at: new(0, 0.08f, 0.3f))) : default;

    private static (Joint A, Joint B, Joint C) Three(Joint on, (string A, string B, string C) n, (Vector3 A, Vector3 B, Vector3 C) p)
    {
        var a = on.Child(n.A, at: p.A);
        var b = a.Child(n.B, at: p.B);
        return (a, b, b.Child(n.C, at: p.C));
    }

    private static Control Limb(RigDraft rig, (string, Side) limb, (Joint, Joint, Joint) joints, Control main, Control above)
    {
        var ((kind, side), (a, b, c)) = (limb, joints);
        var chain = rig.Chain(a, c);
        var group = rig.Group($"{kind}_{side}_group").Under(above).PlacedAt(a);
        var (ik, fk) = (chain.Copy("ik").Under(group), chain.Copy("fk").Under(group));
        var (goal, pole) = (rig.Control($"{kind}_goal_{side}").Under(main).PlacedAt(c), rig.Control($"{kind}_pole_{side}").Under(main));
        pole.PlacedAt(kind is "wing" ? ik.PolePoint(0.4f) : ik.PolePoint(0.3f));
        rig.TwoBone(ik).Reach(goal).Face(pole);
        Node up = group;
        foreach (var (joint, copied) in new[] { (a, fk.Of(a)), (b, fk.Of(b)), (c, fk.Of(c)) })
        {
            var turn = rig.Control($"turn_{joint}").Under(up).PlacedAt(joint);
            if (joint is { Name: ['k', 'n', ..] or ['e', ..] })
                turn.Lock(Channels.Move).LimitTurn(Axis.X, -10, 140);
            rig.Drive(copied).ByChannels(turn);
            up = turn;
        }

        var sw = goal.Switch("fk", kind switch { "wing" => 1f, _ => 0f });
        var (off, on) = (sw.Inverse, (Weight)sw);
        rig.Blend(chain).From(ik, off).From(fk, on);
        return goal;
    }
}
