using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R43;

/// <summary>The watchman's dog. A leg is described once; the others are that leg with something changed.</summary>
public sealed class HarbourDog : IRigDefinition
{
    private static readonly LegPlan FrontLeft = new()
    {
        Name = "front",
        Side = Side.Left,
        Root = new Vector3(0.09f, -0.04f, 0.02f),
        Bones = [new Vector3(0, -0.22f, -0.04f), new Vector3(0, -0.2f, 0.04f)],
        Limits = new BendLimits(-5, 120),
    };

    private static readonly DogPlan Plan = new(
        Spine:
        [
            new("pelvis", new(0, 0.52f, -0.25f)), new("loin", new(0, 0.01f, 0.2f)), new("chest", new(0, 0.01f, 0.22f)),
            new("neck", new(0, 0.1f, 0.1f)), new("head", new(0, 0.12f, 0.08f)),
        ],
        Legs: ImmutableArray<LegPlan>.Empty);

    public void Define(RigDraft rig)
    {
        var hindLeft = FrontLeft with
        {
            Name = "hind",
            Root = FrontLeft.Root with { Y = -0.06f },
            Limits = FrontLeft.Limits with { Most = 140 },
            Bones = FrontLeft.Bones.SetItem(0, new(0, -0.22f, 0.05f)).SetItem(1, new(0, -0.2f, -0.05f)),
        };
        var dog = Plan with { Legs = [FrontLeft, FrontLeft.Mirrored(), hindLeft, hindLeft.Mirrored() with { Limits = new(-5, 118) }] };
        var limping = dog with { Legs = dog.Legs.Replace(dog.Legs[^1], dog.Legs[^1] with { Solved = false }) };

        new DogBuilder(rig, limping).Build();
    }
}

internal sealed record BonePlan(string Name, Vector3 At);

internal readonly record struct BendLimits(float Least, float Most);

internal sealed record LegPlan
{
    public required string Name { get; init; }

    public required Side Side { get; init; }

    public required Vector3 Root { get; init; }

    public ImmutableList<Vector3> Bones { get; init; } = [];

    public BendLimits Limits { get; init; } = new(0, 90);

    public bool Solved { get; init; } = true;

    public string FullName => $"{Name}_{{0}}_{Side}";

    public LegPlan Mirrored() => this with
    {
        Side = Side.Opposite,
        Root = Root with { X = -Root.X },
        Bones = Bones.ConvertAll(bone => bone with { X = -bone.X }),
    };
}

internal sealed record DogPlan(ImmutableArray<BonePlan> Spine, ImmutableArray<LegPlan> Legs)
{
    public BonePlan Above(LegPlan leg) => leg is { Name: "front" } ? Spine.Single(bone => bone.Name == "chest") : Spine[0];
}

internal sealed class DogBuilder(RigDraft rig, DogPlan plan)
{
    private readonly Control dog = rig.Control("dog");
    private readonly Dictionary<BonePlan, (Joint Joint, Control Turn)> spine = [];

    public void Build()
    {
        (Joint Joint, Control Turn)? last = null;
        foreach (var bone in plan.Spine)
        {
            var joint = last?.Joint.Child(bone.Name, at: bone.At) ?? rig.Skeleton("harbour_dog").Root(bone.Name, at: bone.At);
            last = spine[bone] = (joint, Turn(joint, joint, last?.Turn ?? dog));
        }

        foreach (var leg in plan.Legs)
            Leg(leg, spine[plan.Above(leg)]);
    }

    private void Leg(LegPlan leg, (Joint Joint, Control Turn) above)
    {
        var joints = new List<Joint> { above.Joint.Child(string.Format(leg.FullName, "root"), at: leg.Root) };
        foreach (var (bone, index) in leg.Bones.Select((bone, index) => (bone, index)))
            joints.Add(joints[index].Child(string.Format(leg.FullName, index == 0 ? "bend" : "paw"), at: bone));

        if (!leg.Solved)
        {
            joints.Aggregate(above.Turn, (up, joint) => Turn(joint, joint, up, leg.Limits));
            return;
        }

        var chain = rig.Chain(joints[0], joints[2]);
        var parts = rig.Group(string.Format(leg.FullName, "parts") + "_group").PlacedAt(above.Turn);
        rig.Drive(parts).ByMatrix(above.Turn);
        var (ik, fk) = (chain.Copy("ik").Under(parts), chain.Copy("fk").Under(parts));
        var paw = rig.Control(string.Format(leg.FullName, "goal")).Under(dog).PlacedAt(chain.Tip);
        rig.TwoBone(ik).Reach(paw).Face(rig.Control(string.Format(leg.FullName, "pole")).Under(paw).PlacedAt(ik.PolePoint(0.3f)));
        joints.Aggregate(above.Turn, (up, joint) => Turn(fk.Of(joint), joint, up, leg.Limits));

        var amount = paw.Switch("fk", atRest: leg.Name == "hind" ? 0.5f : 0);
        rig.Blend(chain).From(ik, amount.Inverse).From(fk, amount);
    }

    private Control Turn(Node target, Joint at, Node above, BendLimits? limits = null)
    {
        var control = rig.Control($"turn_{at}").Under(above).PlacedAt(at);
        if (limits is { Least: var least, Most: var most })
            control.LimitTurn(Axis.X, least, most);
        rig.Drive(target).ByChannels(control);
        return control;
    }
}
