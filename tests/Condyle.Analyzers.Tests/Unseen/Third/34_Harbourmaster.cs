using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R34;

/// <summary>Every kind of thing that can have a name in our rigs. See the naming page, section 2.</summary>
public enum NamedKind
{
    SkeletonJoint,
    AnimatorControl,
    PoleControl,
    HoldingGroup,
    StatusLabel,
}

/// <summary>The parts of a name, in the order in which section 3 of the naming page prescribes them.</summary>
public readonly record struct NameParts(string Part, string? Detail = null, Side? Side = null)
{
    public NameParts WithDetail(string detail) => this with { Detail = detail };
}

/// <summary>Gives out names. No string literal may reach the draft except through here.</summary>
public interface INamingService
{
    string NameFor(NamedKind kind, NameParts parts);
}

public sealed class SnakeCaseNamingService : INamingService
{
    private readonly HashSet<string> given = new(StringComparer.Ordinal);

    public string NameFor(NamedKind kind, NameParts parts)
    {
        var words = new List<string>();
        if (PrefixOf(kind) is { Length: > 0 } prefix)
            words.Add(prefix);
        words.Add(Snake(parts.Part));
        if (parts.Detail is not null)
            words.Add(Snake(parts.Detail));
        if (parts.Side is not null)
            words.Add(parts.Side.ToString());
        if (SuffixOf(kind) is { Length: > 0 } suffix)
            words.Add(suffix);

        var name = string.Join('_', words);
        if (!given.Add(name))
            throw new InvalidOperationException($"The name '{name}' was given out before. See section 5: names are unique.");
        return name;
    }

    private static string PrefixOf(NamedKind kind) => kind switch
    {
        NamedKind.AnimatorControl => "move",
        NamedKind.PoleControl => "pole",
        _ => string.Empty,
    };

    private static string SuffixOf(NamedKind kind) => kind switch
    {
        NamedKind.HoldingGroup => "group",
        NamedKind.StatusLabel => "label",
        _ => string.Empty,
    };

    private static string Snake(string words) =>
        string.Concat(words.Select((c, i) => char.IsUpper(c) ? (i > 0 ? "_" : "") + char.ToLowerInvariant(c) : c.ToString()));
}

public static class HarbourmasterParts
{
    public const string Pelvis = nameof(Pelvis);
    public const string Waist = nameof(Waist);
    public const string Chest = nameof(Chest);
    public const string Neck = nameof(Neck);
    public const string Head = nameof(Head);
    public const string CapPeak = nameof(CapPeak);
    public const string Shoulder = nameof(Shoulder);
    public const string Elbow = nameof(Elbow);
    public const string ElbowTwist = nameof(ElbowTwist);
    public const string Wrist = nameof(Wrist);
    public const string Hip = nameof(Hip);
    public const string Knee = nameof(Knee);
    public const string Ankle = nameof(Ankle);
    public const string CoatTail = nameof(CoatTail);
}

public sealed class Harbourmaster : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        INamingService naming = new SnakeCaseNamingService();
        string JointName(string part, Side? side = null, string? detail = null) => naming.NameFor(NamedKind.SkeletonJoint, new(part, detail, side));
        string ControlName(string part, Side? side = null, string? detail = null) => naming.NameFor(NamedKind.AnimatorControl, new(part, detail, side));

        var skeleton = rig.Skeleton("harbourmaster");
        var pelvis = skeleton.Root(JointName(HarbourmasterParts.Pelvis), at: new Vector3(0, 0.94f, 0));
        var waist = pelvis.Child(JointName(HarbourmasterParts.Waist), at: new Vector3(0, 0.14f, 0));
        var chest = waist.Child(JointName(HarbourmasterParts.Chest), at: new Vector3(0, 0.2f, 0));
        var neck = chest.Child(JointName(HarbourmasterParts.Neck), at: new Vector3(0, 0.22f, 0));
        var head = neck.Child(JointName(HarbourmasterParts.Head), at: new Vector3(0, 0.09f, 0.01f));
        var peak = head.Child(JointName(HarbourmasterParts.CapPeak), at: new Vector3(0, 0.14f, 0.1f));

        var world = rig.Control(ControlName("World"));
        var systems = rig.Group(naming.NameFor(NamedKind.HoldingGroup, new("Systems")));
        var controls = new Dictionary<string, Control>();
        Node above = world;
        foreach (var joint in (Joint[])[pelvis, waist, chest, neck, head, peak])
        {
            var control = rig.Control(ControlName(joint.Name)).Under(above).PlacedAt(joint);
            rig.Drive(joint).ByChannels(control);
            controls[joint.Name] = control;
            above = control;
        }

        foreach (var side in Side.Both)
        {
            var x = side.Sign;
            var shoulder = chest.Child(JointName(HarbourmasterParts.Shoulder, side), at: new Vector3(0.17f * x, 0.15f, 0));
            var elbow = shoulder.Child(JointName(HarbourmasterParts.Elbow, side), at: new Vector3(0.26f * x, 0, -0.02f));
            var twist = elbow.Child(JointName(HarbourmasterParts.ElbowTwist, side), JointRole.Twist, new Vector3(0.12f * x, 0, 0.01f));
            var wrist = twist.Child(JointName(HarbourmasterParts.Wrist, side), at: new Vector3(0.12f * x, 0, 0.01f));
            Limb("Arm", rig.Chain(shoulder, wrist).Without(JointRole.Twist), side, controls[chest.Name]);

            var hip = pelvis.Child(JointName(HarbourmasterParts.Hip, side), at: new Vector3(0.1f * x, -0.04f, 0));
            var knee = hip.Child(JointName(HarbourmasterParts.Knee, side), at: new Vector3(0, -0.43f, 0.02f));
            var ankle = knee.Child(JointName(HarbourmasterParts.Ankle, side), at: new Vector3(0, -0.41f, -0.03f));
            Limb("Leg", rig.Chain(hip, ankle), side, controls[pelvis.Name]);

            var tail = pelvis.Child(JointName(HarbourmasterParts.CoatTail, side), at: new Vector3(0.08f * x, -0.1f, -0.1f));
            var flap = rig.Control(ControlName(HarbourmasterParts.CoatTail, side)).Under(controls[pelvis.Name]).PlacedAt(tail);
            rig.Drive(tail).ByChannels(flap);
        }

        void Limb(string part, Chain limb, Side side, Control parent)
        {
            var holder = rig.Group(naming.NameFor(NamedKind.HoldingGroup, new(part, null, side))).Under(systems);
            rig.Drive(holder).ByMatrix(parent);
            var ik = limb.Copy("ik").Under(holder);
            var fk = limb.Copy("fk").Under(holder);
            var goal = rig.Control(ControlName(part, side, "Goal")).Under(world).PlacedAt(limb.Tip);
            var pole = rig.Control(naming.NameFor(NamedKind.PoleControl, new(part, null, side))).Under(world).PlacedAt(limb.PolePoint(0.4f));
            rig.TwoBone(ik).Reach(goal).Face(pole);

            var last = parent;
            foreach (var joint in limb)
            {
                last = rig.Control(ControlName(joint.Name, detail: "Turn")).Under(last).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(fk.Of(joint)).ByChannels(last);
            }

            var amount = goal.Switch("fk");
            rig.Blend(limb).From(ik, amount.Inverse).From(fk, amount);
            rig.Label(naming.NameFor(NamedKind.StatusLabel, new(part, "Fk", side)), "FK").ShownBy(amount);
            rig.Label(naming.NameFor(NamedKind.StatusLabel, new(part, "Ik", side)), "IK").ShownBy(amount.Inverse);
        }
    }
}
