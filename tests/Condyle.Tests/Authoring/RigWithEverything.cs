using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Tests.Authoring;

/// <summary>One of each thing that a draft gives out or takes, all of one rig.</summary>
internal sealed class RigWithEverything
{
    private readonly Dictionary<Type, object> given = [];

    public RigWithEverything()
    {
        Rig = new RigDraft(Conventions.Default, new ProgramPlaces());
        var skeleton = Rig.Skeleton("deckhand");
        var pelvis = skeleton.Root("pelvis");
        var (hip, chest) = (pelvis.Child("hip_left", at: new(0.1f, 0, 0)), pelvis.Child("chest", at: new(0, 0.5f, 0)));
        var knee = hip.Child("knee_left", at: new(0, -0.4f, 0.02f));
        var ankle = knee.Child("ankle_left", at: new(0, -0.4f, -0.02f));
        var head = chest.Child("head", at: new(0, 0.3f, 0));
        var (legs, arms) = (new JointPair(hip, hip), new JointPair(ankle, ankle));
        var systems = Rig.Group("systems_group");
        var world = Rig.Control("world");
        var bones = Rig.Chain(hip, ankle);
        var copy = bones.Copy("ik");
        var fk = world.Switch("fk");
        var choice = world.Choice("grip", ["crate", "rope"]);
        var limb = Rig.Limb(Rig.Chain(hip, ankle), "leg", Side.Left, world, systems, world);
        Add(Rig, skeleton, hip, knee, systems, world, (Node)chest, bones, copy, copy.Root, fk, choice, (Weight)fk, world.Dial("curl", 0, 1), Rig.Spot(head, default),
            Rig.Drive(systems), Rig.Blend(bones), Rig.Blend(pelvis), Rig.TwoBone(copy), Rig.ManyBone(copy), Rig.Curve(copy), Rig.Label("leg_label", "IK"),
            Rig.Angle(knee), Rig.Response(fk), Rig.Space(world), Rig.Aim(head), Rig.Twist(knee), Rig.Falloff(bones), limb,
            Rig.Head(head, world, world), new JointSet(hip, knee), new JointSet?[] { new(hip, knee) }, Side.Left,
            new BodySpaces { World = world, Chest = chest },
            new BipedJoints { Pelvis = pelvis, Chest = chest, Head = head, Shoulder = legs, Wrist = arms, Hip = legs, Ankle = arms });
    }

    public RigDraft Rig { get; }

    /// <summary>Something of a type, of this rig where it can be of one.</summary>
    public object? Of(Type type) =>
        given.TryGetValue(type, out var one) ? one
        : type == typeof(string) ? "crate"
        : type == typeof(string[]) ? new[] { "crate", "rope" }
        : type.IsValueType && Nullable.GetUnderlyingType(type) is null ? Activator.CreateInstance(type)
        : null;

    /// <summary>Whether what it gives of a type is of one rig alone.</summary>
    public bool IsOfARig(Type type) => type != typeof(Side) && given.ContainsKey(type);

    private void Add(params object[] all)
    {
        foreach (var one in all)
            given[one.GetType()] = one;
    }
}
