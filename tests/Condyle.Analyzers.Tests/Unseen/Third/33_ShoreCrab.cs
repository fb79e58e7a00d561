using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R33;

public abstract record Part
{
    private Part()
    {
    }

    public sealed record Leg(int Number, Side Side) : Part;

    public sealed record Claw(Side Side) : Part;

    public sealed record Eye(Side Side) : Part;

    public T Match<T>(Func<Leg, T> leg, Func<Claw, T> claw, Func<Eye, T> eye) => this switch
    {
        Leg it => leg(it),
        Claw it => claw(it),
        Eye it => eye(it),
        _ => throw new InvalidOperationException(),
    };
}

public sealed record Bone(string Name, Vector3 At);

public sealed record Built(Part Part, ImmutableList<Joint> Joints);

public sealed record Scene(RigDraft Rig, Joint Shell, Control World, Control Body, Group Systems);

public static class Pipe
{
    extension<T>(T value)
    {
        public TOut To<TOut>(Func<T, TOut> then) => then(value);

        public T Also(Action<T> effect)
        {
            effect(value);
            return value;
        }
    }

    extension<T>(IEnumerable<T> source)
    {
        public void Each(Action<T> effect)
        {
            foreach (var item in source)
                effect(item);
        }
    }

    public static Func<T, TOut> Then<T, TMid, TOut>(this Func<T, TMid> first, Func<TMid, TOut> second) => value => second(first(value));
}

public sealed class ShoreCrab : IRigDefinition
{
    private static readonly Func<Part, ImmutableList<Bone>> BonesOf = part => part.Match(
        leg => Limb($"leg_{leg.Number}", leg.Side, new(0.05f, 0f, 0.03f - (0.02f * leg.Number)), new(0.05f, 0.03f, 0f), new(0.05f, -0.05f, 0f)),
        claw => Limb("claw", claw.Side, new(0.05f, 0f, 0.05f), new(0.04f, 0.01f, 0.04f), new(-0.01f, 0f, 0.06f))
            .Add(new($"claw_finger_{claw.Side}", new(0f, 0.01f, 0.02f))),
        eye => [new($"eye_{eye.Side}", new(0.015f * eye.Side.Sign, 0.02f, 0.05f))]);

    private static readonly ImmutableArray<Part> Anatomy =
    [
        .. from side in Side.Both
           from number in Enumerable.Range(1, 4)
           select new Part.Leg(number, side),
        .. Side.Both.Select(side => new Part.Claw(side)),
        .. Side.Both.Select(side => new Part.Eye(side)),
    ];

    public void Define(RigDraft rig) =>
        Stage(rig).To(scene =>
            Anatomy
                .Select(BonesOf.Then(Declare(scene.Shell)).To(declare => (Func<Part, Built>)(part => new Built(part, declare(part)))))
                .ToImmutableList()
                .To(all => (scene, all)))
            .To(it => it.all.Also(all => all.Each(Attach(it.scene))));

    private static Scene Stage(RigDraft rig)
    {
        var shell = rig.Skeleton("shore_crab").Root("carapace", at: new(0f, 0.06f, 0f));
        var world = rig.Control("world");
        var body = rig.Control("carapace_move").Under(world).PlacedAt(shell);
        rig.Drive(shell).ByChannels(body);
        return new(rig, shell, world, body, rig.Group("systems_group").Under(body));
    }

    private static ImmutableList<Bone> Limb(string name, Side side, Vector3 root, Vector3 upper, Vector3 lower)
    {
        Vector3 Mirrored(Vector3 v) => v with { X = v.X * side.Sign };
        return
        [
            new($"{name}_base_{side}", Mirrored(root)),
            new($"{name}_knee_{side}", Mirrored(upper)),
            new($"{name}_tip_{side}", Mirrored(lower)),
        ];
    }

    private static Func<ImmutableList<Bone>, ImmutableList<Joint>> Declare(Joint shell) => bones =>
        bones.Aggregate(
            (Above: shell, Made: ImmutableList<Joint>.Empty),
            (state, bone) => state.Above.Child(bone.Name, at: bone.At).To(joint => (joint, state.Made.Add(joint))),
            state => state.Made);

    private static Action<Built> Attach(Scene scene) => built =>
    {
        Action attach = built switch
        {
            { Part: Part.Leg leg } => () => Walk(scene, leg, built.Joints),
            { Part: Part.Claw claw } => () => Pinch(scene, claw, built.Joints),
            { Part: Part.Eye, Joints: [var only] } => () => Turn(scene, scene.Body, only),
            { Part: var odd } => throw new InvalidOperationException($"Nothing is known of {odd}."),
        };
        attach();
    };

    private static Control Turn(Scene scene, Control above, Joint joint) =>
        scene.Rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint).Also(control => scene.Rig.Drive(joint).ByChannels(control));

    private static void Walk(Scene scene, Part.Leg leg, ImmutableList<Joint> joints)
    {
        var chain = scene.Rig.Chain(joints[0], joints[^1]);
        var ik = chain.Copy("ik").Under(scene.Systems);
        var foot = scene.Rig.Control($"foot_{leg.Number}_{leg.Side}").Under(scene.World).PlacedAt(chain.Tip);
        var pole = scene.Rig.Control($"knee_{leg.Number}_{leg.Side}").Under(scene.Body).PlacedAt(ik.PolePoint(0.08f));
        scene.Rig.TwoBone(ik).Reach(foot).Face(pole);
        scene.Rig.Blend(chain).From(ik, 1f);
    }

    private static void Pinch(Scene scene, Part.Claw claw, ImmutableList<Joint> joints)
    {
        var chain = scene.Rig.Chain(joints[0], joints[2]);
        var (ik, fk) = (chain.Copy("ik").Under(scene.Systems), chain.Copy("fk").Under(scene.Systems));
        var goal = scene.Rig.Control($"claw_{claw.Side}").Under(scene.Body).PlacedAt(chain.Tip);
        scene.Rig.TwoBone(ik).Reach(goal);
        chain.Aggregate(scene.Body, (above, joint) =>
            scene.Rig.Control($"bend_{joint.Name}").Under(above).PlacedAt(joint).Also(control => scene.Rig.Drive(fk.Of(joint)).ByChannels(control)));
        goal.Switch("fk").To(fkAmount => scene.Rig.Blend(chain).From(ik, fkAmount).From(fk, fkAmount));
        Turn(scene, goal, joints[3]).LimitTurn(Axis.X, -10f, 50f);
    }
}
