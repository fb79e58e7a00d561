using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Recipes;

/// <summary>The customary spaces: what goals, poles and looked-at controls ride, and what turns go with.</summary>
internal sealed class SpacesRecipe
{
    private readonly RigDraft rig;
    private readonly Conventions conventions;
    private readonly Node world;
    private readonly IReadOnlyList<(BodySpace Kind, Text Option, Node Node)> ridden;
    private readonly BodySpace first;
    private readonly SpacesOptions options;
    private readonly bool poleRides;
    private readonly bool staysLevel;
    private readonly PlaceId place;

    private SpacesRecipe(RigDraft rig, Conventions conventions, Node world, IReadOnlyList<(BodySpace, Text, Node)> ridden, BodySpace first, SpacesOptions options, bool poleRides, bool staysLevel, PlaceId place)
    {
        (this.rig, this.conventions, this.world, this.ridden, this.first, this.options) = (rig, conventions, world, ridden, first, options);
        (this.poleRides, this.staysLevel, this.place) = (poleRides, staysLevel, place);
    }

    /// <summary>None where it isn't known what there is to ride, or what rides.</summary>
    public static SpacesRecipe? Of(RigDraft rig, Conventions conventions, BodySpaces spaces, SpacesOptions options, PlaceId place)
    {
        if (!spaces.HipsFact.TryKnown(out var hips) || !spaces.ChestFact.TryKnown(out var chest) || !spaces.HeadFact.TryKnown(out var head)
            || !options.FirstFact.TryKnown(out var first) || !options.PoleRidesFact.TryKnown(out var poleRides) || !options.StaysLevelFact.TryKnown(out var staysLevel))
            return null;
        var all = new (BodySpace Kind, Text Option, Node? Node)[]
        {
            (BodySpace.World, options.WorldFact, spaces.World), (BodySpace.Hips, options.HipsFact, hips), (BodySpace.Chest, options.ChestFact, chest), (BodySpace.Head, options.HeadFact, head),
        };
        var ridden = all.Where(one => one.Node is not null).OrderBy(one => one.Kind != first).Select(one => (one.Kind, one.Option, one.Node!.Value)).ToList();
        return new(rig, conventions, spaces.World, ridden, first, options, poleRides, staysLevel, place);
    }

    public Space Of(Control control) => Of(control, ridden, "the hips, the chest or the head");

    public LimbSpaces Of(Limb limb) => new(
        Of(limb.Goal),
        poleRides ? rig.Space(limb.Pole, place).In(options.WorldFact, world, place).In(options.GoalFact, limb.Goal, place) : null,
        staysLevel ? Level(limb.Turns[0], limb.Bones.Root, limb.Root) : null);

    // What is looked at and rides the head is never reached.
    public HeadSpaces Of(Head head) => new(
        Of(head.Look, [.. ridden.Where(one => one.Kind != BodySpace.Head)], "the hips or the chest"),
        staysLevel ? Level(head.Turn, head.Joint, head.Under) : null);

    private Space Of(Control control, IReadOnlyList<(BodySpace Kind, Text Option, Node Node)> each, string further)
    {
        if (each.Count == 1)
            throw new ArgumentException($"There is nothing to ride but the world. Give {further} as well.");
        if (each[0].Kind != first)
            throw new ArgumentException($"The first space is {first}, which isn't there to ride. Give a node for it, or let another be first.");
        var space = rig.Space(control, place);
        foreach (var (_, option, node) in each)
            space.In(option, node, place);
        return space;
    }

    // It goes with the body's place either way, so a group there takes the world's turn alone.
    private Space Level(Control turn, Joint joint, Node body)
    {
        var level = rig.Group("level_" + rig.NameOf(joint.IdIn(rig)) + conventions.GroupSuffix, place).Under(body, place).PlacedAt(joint, place);
        rig.Drive(level, place).ByChannels(world, place).KeepingOffset(place).Writing(Channels.Turn, place);
        return rig.Space(turn, place).In(options.BodyFact, body, place).In(options.WorldFact, level, place);
    }
}
