using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Recipes;

/// <summary>A whole biped, made of the other recipes: what moves all of it, the torso, and arms and legs.</summary>
internal sealed class BipedRecipe
{
    private readonly RigDraft rig;
    private readonly BipedJoints joints;
    private readonly BipedOptions options;
    private readonly Conventions conventions;
    private readonly BipedLooks looks;
    private readonly HumanLimits? limits;
    private readonly bool hasSpaces;
    private readonly PlaceId place;

    private BipedRecipe(RigDraft rig, BipedJoints joints, BipedOptions options, Conventions conventions, BipedLooks looks, HumanLimits? limits, bool hasSpaces, PlaceId place)
    {
        (this.rig, this.joints, this.options, this.conventions) = (rig, joints, options, conventions);
        (this.looks, this.limits, this.hasSpaces, this.place) = (looks, limits, hasSpaces, place);
    }

    /// <summary>None where it isn't known which joints there are, or what it has.</summary>
    public static Biped? Build(RigDraft rig, BipedJoints joints, BipedOptions options, Conventions conventions, PlaceId place)
    {
        if (!joints.AnkleFact.TryKnown(out var ankle) || !options.HasSpacesFact.TryKnown(out var hasSpaces) || !options.HasLimitsFact.TryKnown(out var hasLimits))
            return null;
        var looks = BipedLooks.Of(rig, ankle.Left, joints.Head, options.ShapeSizeFact, place);
        return new BipedRecipe(rig, joints, options, conventions, looks, hasLimits ? new HumanLimits(rig, place) : null, hasSpaces, place).Build();
    }

    private Biped? Build()
    {
        if (!joints.RootFact.TryKnown(out var root))
            return null;
        var systems = rig.Group("systems" + conventions.GroupSuffix, place);
        var world = rig.Control(options.WorldFact, place);
        var offset = rig.Control(options.OffsetFact, place).Under(world, place);
        if (root is { } moved)
        {
            world.PlacedAt(moved, place);
            rig.Drive(moved, place).ByChannels(world, place);
        }

        looks.Show(world, ControlShape.Square, 0.9f, Tint.Slate, "world");
        looks.Show(offset, ControlShape.Ring, 0.7f, Tint.Slate, "world");
        var spaces = hasSpaces ? new BodySpaces { World = offset, Hips = joints.Pelvis, Chest = joints.Chest, Head = joints.Head } : null;
        if (BipedTorso.Of(rig, joints, options, systems, offset, looks, limits, spaces, place) is not { } torso)
            return null;
        return BuildSide(Side.Left, torso, systems, offset, spaces) is { } left && BuildSide(Side.Right, torso, systems, offset, spaces) is { } right
            ? new Biped(world, offset, systems, torso.Spine, torso.Neck, torso.Head, torso.HeadSpaces, torso.Eyes, left, right)
            : null;
    }

    private BipedSide? BuildSide(Side side, BipedTorso torso, Group systems, Node space, BodySpaces? spaces)
    {
        if (BuildLimb(joints.ShoulderFact, joints.WristFact, "arm", side, torso.Carrier, systems, space, Known(options.ArmFact, LimbOptions.Open).Named("hand", "elbow_pole")) is not { } arm
            || BuildLimb(joints.HipFact, joints.AnkleFact, "leg", side, torso.Spine.Hips, systems, space, Known(options.LegFact, LimbOptions.Open, BipedOptions.CustomaryLeg).Named("foot", "knee_pole")) is not { } leg
            || !joints.CollarFact.TryKnown(out var collars) || !joints.ToesFact.TryKnown(out var toes) || joints.Fingers is not { } fingers)
            return null;
        looks.Limb(arm, 0.14f, Tint.Violet, "arms");
        looks.Limb(leg, 0.2f, Tint.Moss, "legs");
        limits?.Arm(arm);
        limits?.Leg(leg);
        var armSpaces = spaces is null ? null : rig.Spaces(arm, spaces, null, place);
        var legSpaces = spaces is null ? null : rig.Spaces(leg, spaces with { Chest = null, Head = null }, null, place);
        var collar = collars is { } ofCollars ? BuildCollar(arm, ofCollars[side], side, torso.Carrier) : null;
        var foot = toes is { } ofToes ? BuildFoot(leg, ofToes[side]) : null;
        var hand = fingers.Length > 0 ? BuildFingers(arm, fingers, side, systems) : null;
        return (fingers.Length > 0 && hand is null) || !BuildTwists(arm, leg, collars, side) ? null : new BipedSide(arm, collar, hand, leg, foot, armSpaces, legSpaces);
    }

    private Limb? BuildLimb(Fact<JointPair> roots, Fact<JointPair> tips, string name, Side side, Node under, Group systems, Node space, LimbOptions limb) =>
        roots.TryKnown(out var root) && tips.TryKnown(out var tip)
            ? rig.Limb(Bent(rig.Chain(root[side], tip[side], place).Without(JointRole.Twist, place), name), name, side, under, systems, space, limb, place)
            : null;

    /// <summary>A limb that is straight at rest bends as a human's does: the knee to the front, the elbow to the back.</summary>
    private Chain Bent(Chain bones, string name)
    {
        if (rig.IsOpen(bones.IdIn(rig)) || bones.Count != 3)
            return bones;
        return rig.RestOf(bones[0]).TryKnown(out var root) && rig.RestOf(bones[1]).TryKnown(out var middle) && rig.RestOf(bones[2]).TryKnown(out var tip)
            && Evaluation.Bend.Of(root.Origin, middle.Origin, tip.Origin) is null && (middle.Origin - root.Origin).Length > 0
            ? bones.Bending(name == "leg" ? System.Numerics.Vector3.UnitZ : -System.Numerics.Vector3.UnitZ, place)
            : bones;
    }

    private Collar? BuildCollar(Limb arm, Joint joint, Side side, Node under)
    {
        var collar = rig.Collar(arm, joint, under, Known(options.CollarFact, CollarOptions.Open), place);
        if (collar is not null)
        {
            looks.Across(collar.Turn, joint, arm.Bones.Root, 0.12f, Tint.Violet, "arms");
            limits?.Collar(collar.Turn, joint, side);
        }

        return collar;
    }

    private FootRoll? BuildFoot(Limb leg, Joint toes)
    {
        var spots = new FootSpots(rig, joints, leg.Bones.Tip, toes);
        var foot = rig.FootRoll(leg, toes, spots.Heel(options.HeelFact), spots.Tip(options.TipFact), Known(options.FootRollFact, FootRollOptions.Open), place);
        if (foot is not null)
        {
            looks.Across(foot.Toes, toes, Evaluation.Vector3d.UnitZ, 0.1f, Tint.Moss, "legs");
            limits?.Toes(foot.Toes, toes);
        }

        return foot;
    }

    private Fingers? BuildFingers(Limb arm, JointSetPair[] each, Side side, Group systems)
    {
        var fingers = rig.Fingers(arm.Bones.Tip, [.. each.Select(pair => pair[side])], "fingers", side, arm.Goal, systems, Known(options.FingersFact, FingersOptions.Open), place);
        foreach (var turn in fingers?.Turns.SelectMany(finger => finger) ?? [])
            looks.Show(turn, ControlShape.Ring, 0.03f, Tint.Coral, "fingers");
        return fingers;
    }

    /// <summary>Whether it is known which twist joints there are.</summary>
    private bool BuildTwists(Limb arm, Limb leg, JointPair? collars, Side side) =>
        BuildTwist(joints.ShoulderTwistsFact, side, collars is { } pair ? pair[side] : joints.Chest, arm.Bones[0])
        && BuildTwist(joints.ElbowTwistsFact, side, arm.Bones[1], arm.Bones.Tip)
        && BuildTwist(joints.HipTwistsFact, side, joints.Pelvis, leg.Bones[0])
        && BuildTwist(joints.KneeTwistsFact, side, leg.Bones[1], leg.Bones.Tip);

    private bool BuildTwist(Fact<JointSetPair?> twists, Side side, Node start, Node end)
    {
        if (!twists.TryKnown(out var pair))
            return false;
        if (pair is { } sets && Given.JointsOfTwist(sets[side]) is { Count: > 0 } set)
            rig.Twist(set, place).Between(start, end, place);
        return true;
    }

    private T Known<T>(Fact<T> fact, Func<RigDraft, T> open, T? customary = null)
        where T : class, new() => fact.TryKnown(out var known) ? known ?? customary ?? new T() : open(rig);
}
