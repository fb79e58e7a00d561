using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R10;

/// <summary>The guard dog of the warehouse. See the team's rigging guide: one builder per body part, no name outside <see cref="DogNames"/>.</summary>
public sealed class GuardDog : IRigDefinition
{
    /// <inheritdoc/>
    public void Define(RigDraft rig)
    {
        DogSkeleton skeleton = DogSkeleton.Declare(rig);

        Control world = rig.Control(DogNames.World).PlacedAt(skeleton.Root);
        rig.Drive(skeleton.Root).ByChannels(world);

        TorsoResult torso = TorsoBuilder.Build(rig, skeleton, world);

        foreach (Side side in Side.Both)
        {
            LegBuilder.Build(rig, skeleton.FrontLeg[side.ToString()], DogNames.Front, side, torso.Chest, world);
            LegBuilder.Build(rig, skeleton.HindLeg[side.ToString()], DogNames.Hind, side, torso.Hips, world);
        }

        TailBuilder.Build(rig, skeleton.Tail, torso.Hips);
    }
}

/// <summary>Every name of this rig.</summary>
internal static class DogNames
{
    public const string World = "world";
    public const string Front = "front";
    public const string Hind = "hind";

    public const string TagIk = "ik";

    private const string GroupSuffix = "_group";

    public static string Turn(Joint joint) => $"turn_{joint.Name}";

    public static string Paw(string pair, Side side) => $"paw_{pair}_{side}";

    public static string Pole(string pair, Side side) => $"pole_{pair}_{side}";

    public static string LegGroup(string pair, Side side) => $"leg_{pair}_{side}{GroupSuffix}";
}

/// <summary>The joints, by the part that they belong to.</summary>
internal sealed class DogSkeleton
{
    private DogSkeleton(Joint root, Joint hips, Joint chest, Joint neck, Joint head)
    {
        Root = root;
        Hips = hips;
        Chest = chest;
        Neck = neck;
        Head = head;
    }

    public Joint Root { get; }

    public Joint Hips { get; }

    public Joint Chest { get; }

    public Joint Neck { get; }

    public Joint Head { get; }

    public List<Joint> Tail { get; } = [];

    public Dictionary<string, LegJoints> FrontLeg { get; } = [];

    public Dictionary<string, LegJoints> HindLeg { get; } = [];

    public static DogSkeleton Declare(RigDraft rig)
    {
        Joint root = rig.Skeleton("guard_dog").Root("root");
        Joint hips = root.Child("hips", at: new Vector3(0f, 0.55f, -0.3f));
        Joint chest = hips.Child("chest", at: new Vector3(0f, 0.03f, 0.45f));
        Joint neck = chest.Child("neck", at: new Vector3(0f, 0.12f, 0.12f));
        Joint head = neck.Child("head", at: new Vector3(0f, 0.14f, 0.1f));

        DogSkeleton skeleton = new(root, hips, chest, neck, head);
        foreach (Side side in Side.Both)
        {
            skeleton.FrontLeg[side.ToString()] = DeclareLeg(chest, DogNames.Front, side, bend: -0.05f);
            skeleton.HindLeg[side.ToString()] = DeclareLeg(hips, DogNames.Hind, side, bend: 0.08f);
        }

        Joint tail = hips.Child("tail_1", at: new Vector3(0f, 0.05f, -0.1f));
        skeleton.Tail.Add(tail);
        for (int number = 2; number <= 4; number++)
        {
            tail = tail.Child($"tail_{number}", at: new Vector3(0f, 0.02f, -0.09f));
            skeleton.Tail.Add(tail);
        }

        return skeleton;
    }

    private static LegJoints DeclareLeg(Joint parent, string pair, Side side, float bend)
    {
        Joint upper = parent.Child($"leg_{pair}_{side}", at: new Vector3(0.1f * side.Sign, -0.04f, 0f));
        Joint knee = upper.Child($"knee_{pair}_{side}", at: new Vector3(0f, -0.24f, bend));
        Joint paw = knee.Child($"ankle_{pair}_{side}", at: new Vector3(0f, -0.24f, -bend));
        return new LegJoints(upper, knee, paw);
    }
}

internal readonly record struct LegJoints(Joint Upper, Joint Knee, Joint Paw);

internal readonly record struct TorsoResult(Control Hips, Control Chest);

internal static class TorsoBuilder
{
    public static TorsoResult Build(RigDraft rig, DogSkeleton skeleton, Control world)
    {
        Control hips = Part.Turn(rig, skeleton.Hips, world, movable: true);
        Control chest = Part.Turn(rig, skeleton.Chest, hips);
        Control neck = Part.Turn(rig, skeleton.Neck, chest);
        _ = Part.Turn(rig, skeleton.Head, neck);
        return new TorsoResult(Hips: hips, Chest: chest);
    }
}

internal static class LegBuilder
{
    public static void Build(RigDraft rig, LegJoints leg, string pair, Side side, Control above, Control space)
    {
        Chain chain = rig.Chain(leg.Upper, leg.Paw);
        Group group = rig.Group(DogNames.LegGroup(pair, side)).Under(above).PlacedAt(leg.Upper);
        Copy ik = chain.Copy(DogNames.TagIk).Under(group);
        Control paw = rig.Control(DogNames.Paw(pair, side)).Under(space).PlacedAt(leg.Paw);
        Control pole = rig.Control(DogNames.Pole(pair, side)).Under(space).PlacedAt(ik.PolePoint(distance: 0.35f)).Lock(Channels.Turn);
        rig.TwoBone(ik).Reach(paw).Face(pole);

        // No FK on this project: the dog never leaves the ground. One source has the whole leg.
        rig.Blend(chain).From(ik, 1f);
    }
}

internal static class TailBuilder
{
    public static void Build(RigDraft rig, IReadOnlyList<Joint> tail, Control hips)
    {
        Control above = hips;
        foreach (Joint joint in tail)
        {
            above = Part.Turn(rig, joint, above).LimitTurn(Axis.Y, -40f, 40f);
        }
    }
}

internal static class Part
{
    public static Control Turn(RigDraft rig, Joint joint, Control above, bool movable = false)
    {
        Control control = rig.Control(DogNames.Turn(joint)).Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return movable ? control : control.Lock(Channels.Move);
    }
}
