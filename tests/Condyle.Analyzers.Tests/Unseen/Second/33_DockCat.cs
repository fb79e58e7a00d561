using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R33;

/// <summary>The cat that lives behind the fish hall. Its anatomy is data; what to build for a part follows from its shape.</summary>
public sealed class DockCat : IRigDefinition
{
    private static readonly Part[] Anatomy =
    [
        new Bone("pelvis", null, new(0, 0.22f, -0.12f)),
        new Bone("spine", "pelvis", new(0, 0.02f, 0.12f)),
        new Bone("chest", "spine", new(0, 0.01f, 0.11f), Stiff: true),
        new Bone("neck", "chest", new(0, 0.06f, 0.07f)),
        new Bone("head", "neck", new(0, 0.04f, 0.05f)),
        new Paired(new Bone("ear", "head", new(0.025f, 0.04f, 0), Stiff: true)),
        new Row("tail", "pelvis", 5, new(0, 0.01f, -0.06f)),
        new Paired(new Leg("fore", "chest", new(0.04f, -0.03f, 0.02f), [0.09f, 0.08f], Forwards: false)),
        new Paired(new Leg("hind", "pelvis", new(0.04f, -0.02f, 0), [0.1f, 0.09f], Forwards: true)),
    ];

    private readonly Dictionary<string, (Joint Joint, Control Control)> made = [];

    public void Define(RigDraft rig)
    {
        made.Clear();
        var skeleton = rig.Skeleton("dock_cat");
        var cat = rig.Control("cat");
        foreach (var part in Anatomy)
            Build(rig, skeleton, cat, part, null);
    }

    private void Build(RigDraft rig, Skeleton skeleton, Control cat, Part part, Side? side)
    {
        switch (part)
        {
            case Paired { Part: var one }:
                foreach (var each in Side.Both)
                    Build(rig, skeleton, cat, one, each);
                break;

            case Bone { Above: null, Name: var name, At: var at }:
                Keep(rig, skeleton.Root(name, at: at), cat, stiff: false);
                break;

            case Bone { Above: { } above } bone when made.TryGetValue(above, out var holder):
                Keep(rig, holder.Joint.Child(Named(bone.Name, side), at: Mirrored(bone.At, side)), holder.Control, bone.Stiff);
                break;

            case Row { Count: > 0 and < 10 } row:
                var (joint, control) = made[row.Above];
                for (var i = 1; i <= row.Count; i++)
                {
                    joint = joint.Child($"{row.Name}_{i}", at: row.Step);
                    control = Keep(rig, joint, control, stiff: i == row.Count);
                }

                break;

            case Leg { Lengths: [var upper, var lower] } leg when side is not null:
                Limb(rig, cat, leg, side, upper, lower);
                break;
        }
    }

    private void Limb(RigDraft rig, Control cat, Leg leg, Side side, float upper, float lower)
    {
        var bend = leg switch
        {
            { Forwards: true } => 0.03f,
            { Name: "fore" } => -0.025f,
            _ => 0f,
        };
        var (above, control) = made[leg.Above];
        var hip = above.Child($"{leg.Name}_root_{side}", at: Mirrored(leg.At, side));
        var knee = hip.Child($"{leg.Name}_bend_{side}", at: new(0, -upper, bend));
        var paw = knee.Child($"{leg.Name}_paw_{side}", at: new(0, -lower, -bend));
        var chain = rig.Chain(hip, paw);

        var group = rig.Group($"{leg.Name}_{side}_group").PlacedAt(control);
        rig.Drive(group).ByMatrix(control);
        var ik = chain.Copy("ik").Under(group);
        var goal = rig.Control($"{leg.Name}_paw_goal_{side}").Under(cat).PlacedAt(paw);
        var pole = rig.Control($"{leg.Name}_pole_{side}").Under(cat).PlacedAt(ik.PolePoint(0.15f));
        rig.TwoBone(ik).Reach(goal).Face(pole);

        var weights = goal.Switch(leg.Forwards ? "ik" : "fk", atRest: leg.Forwards ? 1 : 0) switch
        {
            var on when leg.Forwards => (Solved: (Weight)on, Loose: on.Inverse),
            var on => (Solved: on.Inverse, Loose: on),
        };
        var loose = chain.Copy("fk").Under(group);
        foreach (var joint in chain)
            rig.Drive(loose.Of(joint)).ByChannels(control = rig.Control($"turn_{joint.Name}").Under(control).PlacedAt(joint));
        rig.Blend(chain).From(ik, weights.Solved).From(loose, weights.Loose);
        rig.Label($"{leg.Name}_label_{side}", side == Side.Left ? "IK (l)" : "IK (r)").ShownBy(weights.Solved);
    }

    private Control Keep(RigDraft rig, Joint joint, Control above, bool stiff)
    {
        var control = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
        if (stiff)
            control = control.Lock(Channels.Move).LimitTurn(Axis.X, -15, 15);
        rig.Drive(joint).ByChannels(control);
        made[joint.Name] = (joint, control);
        return control;
    }

    private static string Named(string name, Side? side) => side is { } one ? $"{name}_{one}" : name;

    private static Vector3 Mirrored(Vector3 at, Side? side) => side switch
    {
        null => at,
        { Sign: < 0 } => at with { X = -at.X },
        _ => at,
    };

    private abstract record Part;

    private sealed record Bone(string Name, string? Above, Vector3 At, bool Stiff = false) : Part;

    private sealed record Row(string Name, string Above, int Count, Vector3 Step) : Part;

    private sealed record Leg(string Name, string Above, Vector3 At, float[] Lengths, bool Forwards) : Part;

    private sealed record Paired(Part Part) : Part;
}
