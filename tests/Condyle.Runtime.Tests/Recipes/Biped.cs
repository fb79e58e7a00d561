using System.Numerics;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Recipes;

/// <summary>
/// A small biped with a tail and wings, rigged by recipes alone, each by itself or all at once. It faces +Z with its arms out and its palms down; its frames are random but for those of the fingers, which close about X,
/// and the right side's mirror the left ones.
/// </summary>
internal sealed class Biped(int seed, BipedRecipes? recipes = null, bool behaves = false) : IRigDefinition
{
    public static readonly Vector3 Heel = new(0, -0.08f, -0.05f);

    public static readonly Vector3 Tip = new(0, -0.02f, 0.07f);

    private static readonly (string Name, string Above, Vector3 At)[] Middle =
    [
        ("pelvis", "root", new(0, 1, 0)), ("waist", "pelvis", new(0, 1.12f, 0.02f)), ("ribs", "waist", new(0, 1.24f, 0.02f)), ("chest", "ribs", new(0, 1.36f, -0.01f)), ("neck", "chest", new(0, 1.5f, 0)), ("head", "neck", new(0, 1.6f, 0.02f)),
        ("tail_1", "pelvis", new(0, 0.98f, -0.1f)), ("tail_2", "tail_1", new(0, 0.93f, -0.25f)), ("tail_3", "tail_2", new(0, 0.92f, -0.4f)),
    ];

    private static readonly (string Name, string Above, Vector3 At)[] Left =
    [
        ("eye", "head", new(0.03f, 1.68f, 0.1f)),
        ("collar", "chest", new(0.04f, 1.44f, 0.02f)), ("shoulder", "collar", new(0.2f, 1.45f, 0)), ("elbow", "shoulder", new(0.45f, 1.41f, -0.04f)), ("wrist", "elbow", new(0.7f, 1.4f, 0)),
        ("hip", "pelvis", new(0.1f, 0.95f, 0)), ("knee", "hip", new(0.1f, 0.5f, 0.03f)), ("ankle", "knee", new(0.1f, 0.08f, -0.02f)), ("toes", "ankle", new(0.11f, 0.02f, 0.1f)),
        ("heel", "ankle", new Vector3(0.1f, 0.08f, -0.02f) + Heel), ("toe_tip", "toes", new Vector3(0.11f, 0.02f, 0.1f) + Tip),
        ("wing_1", "chest", new(0.05f, 1.4f, -0.1f)), ("wing_2", "wing_1", new(0.25f, 1.5f, -0.15f)), ("wing_3", "wing_2", new(0.5f, 1.55f, -0.2f)),
        .. Finger("thumb", 0.03f, 0.72f), .. Finger("index", 0.025f, 0.8f), .. Finger("middle", 0, 0.81f), .. Finger("little", -0.03f, 0.79f),
    ];

    /// <summary>Where each joint rests in the world.</summary>
    public Dictionary<string, (Vector3 At, Quaternion Turned)> Rest { get; } = [];

    private Dictionary<string, Joint> Joints { get; } = [];

    public Joint this[string name] => Joints[name];

    public void Define(RigDraft rig)
    {
        var choices = new RandomChoices(seed);
        Rest["root"] = (Vector3.Zero, choices.Turn(MathF.PI));
        Joints["root"] = rig.Skeleton("biped").Root("root", JointRole.Deform, Rest["root"].At, Rest["root"].Turned);
        foreach (var (name, above, at) in Middle)
            Add(name, above, at, choices.Turn(MathF.PI));
        foreach (var (name, above, at) in Left)
        {
            var turned = above == "wrist" || name[^1] is '2' or '3' && !name.StartsWith("wing", StringComparison.Ordinal) ? OfFinger : choices.Turn(MathF.PI);
            Add($"{name}_left", Sided(above, "left"), at, turned);
            Add($"{name}_right", Sided(above, "right"), MirroredRest.Of(at), behaves ? MirroredRest.Behaving(turned) : MirroredRest.Facing(turned));
        }

        (recipes ?? new()).Build(rig, this);
    }

    /// <summary>Y along the finger, Z out of the palm, so that a turn about X closes it.</summary>
    private static Quaternion OfFinger { get; } = Quaternion.CreateFromRotationMatrix(new(0, 0, -1, 0, 1, 0, 0, 0, 0, -1, 0, 0, 0, 0, 0, 1));

    private static string Sided(string above, string side) => above is "head" or "chest" or "pelvis" ? above : $"{above}_{side}";

    private static (string, string, Vector3)[] Finger(string name, float z, float x) =>
        [($"{name}_1", "wrist", new(x, 1.4f, z)), ($"{name}_2", $"{name}_1", new(x + 0.04f, 1.4f, z)), ($"{name}_3", $"{name}_2", new(x + 0.07f, 1.4f, z))];

    private void Add(string name, string above, Vector3 at, Quaternion turned)
    {
        var back = Quaternion.Inverse(Rest[above].Turned);
        Joints[name] = Joints[above].Child(name, JointRole.Deform, Vector3.Transform(at - Rest[above].At, back), back * turned);
        Rest[name] = (at, turned);
    }
}

/// <summary>The biped's recipes, with the options that a test says: each by itself, or the whole of it in one sentence.</summary>
internal sealed record BipedRecipes(LimbOptions? Leg = null, SpineOptions? Spine = null, FingersOptions? Fingers = null, TailOptions? Tail = null, bool IsWhole = false)
{
    public void Build(RigDraft rig, Biped biped)
    {
        if (IsWhole)
            BuildWhole(rig, biped);
        else
            BuildParts(rig, biped);
    }

    private void BuildWhole(RigDraft rig, Biped biped)
    {
        JointPair Pair(string name) => new(biped[$"{name}_left"], biped[$"{name}_right"]);
        JointSetPair Finger(string name)
        {
            var (first, second, third) = (Pair($"{name}_1"), Pair($"{name}_2"), Pair($"{name}_3"));
            return new(new(first.Left, second.Left, third.Left), new(first.Right, second.Right, third.Right));
        }

        var joints = new BipedJoints
        {
            Root = biped["root"],
            Pelvis = biped["pelvis"],
            Chest = biped["chest"],
            Neck = biped["neck"],
            Head = biped["head"],
            Eyes = Pair("eye"),
            Collar = Pair("collar"),
            Shoulder = Pair("shoulder"),
            Wrist = Pair("wrist"),
            Fingers = [Finger("thumb"), Finger("index"), Finger("middle"), Finger("little")],
            Hip = Pair("hip"),
            Ankle = Pair("ankle"),
            Toes = Pair("toes"),
        };
        var options = new BipedOptions { Spine = Spine ?? new(), Leg = Leg ?? new(), Fingers = Fingers ?? new(), Heel = Biped.Heel, Tip = Biped.Tip };
        var built = rig.Biped(joints, options);
        rig.Tail(rig.Chain(biped["tail_1"], biped["tail_3"]), "tail", under: built.Spine.Hips, Tail);
        foreach (var side in Side.Both)
            rig.Tail(rig.Chain(biped[$"wing_1_{side}"], biped[$"wing_3_{side}"]), "wing", side, under: built.Spine.Turns[^1], Tail);
    }

    private void BuildParts(RigDraft rig, Biped biped)
    {
        var systems = rig.Group("systems_group");
        var world = rig.Control("world");
        var spine = rig.Spine(rig.Chain(biped["pelvis"], biped["chest"]), "spine", systems, space: world, Spine);
        var neck = rig.Control("turn_neck").Under(spine.Turns[^1]).PlacedAt(biped["neck"]);
        rig.Drive(biped["neck"]).ByChannels(neck);
        var head = rig.Head(biped["head"], under: neck, space: world);
        rig.Eyes(biped["eye_left"], biped["eye_right"], biped["head"], systems, space: world);
        rig.Tail(rig.Chain(biped["tail_1"], biped["tail_3"]), "tail", under: spine.Hips, Tail);
        var spaces = new BodySpaces { World = world, Hips = spine.Hips, Chest = spine.Turns[^1], Head = head.Turn };
        rig.Spaces(head, spaces);
        foreach (var side in Side.Both)
        {
            Joint Of(string name) => biped[$"{name}_{side}"];
            JointSet Finger(string name) => new(Of($"{name}_1"), Of($"{name}_2"), Of($"{name}_3"));
            rig.Tail(rig.Chain(Of("wing_1"), Of("wing_3")), "wing", side, under: spine.Turns[^1], Tail);
            var arm = rig.Limb(rig.Chain(Of("shoulder"), Of("wrist")), "arm", side, under: spine.Turns[^1], systems, space: world, new LimbOptions { Goal = "hand", Pole = "elbow_pole" });
            rig.Collar(arm, Of("collar"), under: spine.Turns[^1]);
            rig.Fingers(Of("wrist"), [Finger("thumb"), Finger("index"), Finger("middle"), Finger("little")], "fingers", side, arm.Goal, systems, Fingers);
            var leg = rig.Limb(rig.Chain(Of("hip"), Of("ankle")), "leg", side, under: spine.Hips, systems, space: world, Leg ?? new LimbOptions { Goal = "foot", Pole = "knee_pole" });
            rig.Spaces(arm, spaces);
            rig.Spaces(leg, spaces with { Chest = null, Head = null });
            rig.FootRoll(leg, Of("toes"), Biped.Heel, Biped.Tip);
        }
    }
}
