using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R51;

public sealed record LimbSettings
{
    public required string Name { get; init; }
    public required string[] Parts { get; init; }
    public required Vector3[] Offsets { get; init; }
    public string Goal { get; init; } = "goal";
    public float PoleDistance { get; init; } = 0.4f;
    public float FkAtRest { get; init; }
    public bool Twists { get; init; }
    public Lazy<string> Title => new(() => Name.ToUpperInvariant());
}

public sealed record FingerSettings(string Name, int Joints, Vector3 Root, float Length)
{
    public float CurlDegrees { get; init; } = 85;
}

public sealed class OldSailor : IRigDefinition
{
    private static readonly LimbSettings Arm = new()
    {
        Name = "arm",
        Parts = ["shoulder", "elbow", "wrist"],
        Offsets = [new(0.17f, 0.19f, 0), new(0.27f, -0.02f, -0.03f), new(0.25f, 0.01f, 0.04f)],
        Goal = "hand",
        Twists = true,
    };
    private static readonly LimbSettings Leg = Arm with
    {
        Name = "leg",
        Parts = ["hip", "knee", "ankle"],
        Offsets = [new(0.1f, -0.04f, 0), new(0, -0.42f, 0.02f), new(0, -0.4f, -0.04f)],
        Goal = "foot",
        PoleDistance = 0.6f,
        Twists = false,
    };
    private static readonly LimbSettings WoodenLeg = Leg with { FkAtRest = 1, PoleDistance = 0.5f };

    private static readonly FingerSettings Index = new("index", 3, new(0.08f, 0, 0.03f), 0.03f);

    private static readonly FingerSettings[] Fingers =
    [
        Index,
        Index with { Name = "middle", Root = Index.Root with { Z = 0.01f }, Length = 0.033f },
        Index with { Name = "ring", Root = Index.Root with { Z = -0.01f } },
        Index with { Name = "thumb", Joints = 2, Root = new(0.03f, -0.01f, 0.04f), CurlDegrees = 50 },
    ];

    public void Define(RigDraft rig)
    {
        var pelvis = rig.Skeleton("old_sailor").Root("pelvis", at: new Vector3(0, 0.92f, 0));
        var chest = pelvis.Child("waist", at: new Vector3(0, 0.13f, 0)).Child("chest", at: new Vector3(0, 0.22f, 0.02f));
        var head = chest.Child("neck", at: new Vector3(0, 0.22f, 0)).Child("head", at: new Vector3(0, 0.1f, 0.02f));

        var systems = rig.Group("systems_group");
        var world = rig.Control("world");
        var hips = Follow(rig, pelvis, world);
        var ribs = Follow(rig, chest, hips);
        var face = Follow(rig, head, ribs);
        var upright = face.Switch("upright");
        var gaze = rig.Group("gaze_group").Under(systems).PlacedAt(head);
        rig.Blend(gaze).From(world, upright).From(ribs, upright.Inverse);

        foreach (var side in Side.Both)
        {
            var wrist = Limb(rig, Arm, side, chest, ribs, systems, world);
            foreach (var finger in Fingers)
                Finger(rig, finger, side, wrist);
            Limb(rig, side == Side.Right ? WoodenLeg : Leg, side, pelvis, hips, systems, world);
        }
    }

    private static Control Follow(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private static Joint Limb(RigDraft rig, LimbSettings settings, Side side, Joint top, Control anchor, Group systems, Control world)
    {
        var mirror = new Vector3(side.Sign, 1, 1);
        var made = new List<Joint>();
        var twists = new List<Joint>();
        foreach (var (part, offset) in Pairs(settings))
        {
            var above = made.Count == 0 ? top : made[^1];
            var at = offset * mirror;
            if (settings.Twists && made.Count > 0)
            {
                twists.Add(above.Child($"{made[^1].Name[..^(side.ToString().Length + 1)]}_twist_{side}", JointRole.Twist, at / 2));
                made.Add(twists[^1].Child($"{part}_{side}", at: at / 2));
            }
            else
                made.Add(above.Child($"{part}_{side}", at: at));
        }

        var chain = rig.Chain(made[0], made[^1]).Without(JointRole.Twist);
        var group = rig.Group($"{settings.Name}_{side}_group").Under(systems).PlacedAt(anchor);
        rig.Drive(group).ByMatrix(anchor);
        var ik = chain.Copy("ik").Under(group);
        var fk = chain.Copy("fk").Under(group);

        var goal = rig.Control($"{settings.Goal}_{side}").Under(world).PlacedAt(chain.Tip);
        var pole = rig.Control($"{settings.Name}_pole_{side}").Under(world).PlacedAt(ik.PolePoint(settings.PoleDistance));
        rig.TwoBone(ik).Reach(goal).Face(pole);

        var parent = anchor;
        foreach (var joint in chain)
        {
            parent = rig.Control($"turn_{joint}").Under(parent).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(parent);
        }

        var fkAmount = goal.Switch("fk", settings.FkAtRest).AlsoOn(parent);
        rig.Blend(chain).From(ik, fkAmount.Inverse).From(fk, fkAmount);
        foreach (var twist in twists)
            rig.Drive(twist).ByChannels(chain.Root).KeepingOffset();
        rig.Label($"ik_{settings.Name}_label_{side}", $"{settings.Title.Value} IK").ShownBy(fkAmount.Inverse);
        rig.Label($"fk_{settings.Name}_label_{side}", $"{settings.Title.Value} FK").ShownBy(fkAmount.Inverse);
        return chain.Tip;
    }

    private static void Finger(RigDraft rig, FingerSettings finger, Side side, Joint wrist)
    {
        var (name, joints, root, length) = finger;
        Node above = wrist;
        var joint = wrist;
        for (var i = 1; i <= joints; i++)
        {
            joint = joint.Child($"{name}_{i}_{side}", at: i == 1 ? root with { X = root.X * side.Sign } : new Vector3(length * side.Sign, 0, 0));
            var curl = rig.Control($"curl_{name}_{i}_{side}").Under(above).PlacedAt(joint).Lock(Channels.Move).LimitTurn(Axis.Z, 0, finger.CurlDegrees);
            rig.Drive(joint).ByChannels(curl);
            above = curl;
        }
    }

    private static IEnumerable<(string Part, Vector3 Offset)> Pairs(LimbSettings settings)
    {
        for (var i = 0; i < settings.Parts.Length; i++)
            yield return (settings.Parts[i], settings.Offsets[i]);
    }
}
