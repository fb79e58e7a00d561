using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R03;

/// <summary>A shore crab: eight walking legs and two claws, as one pipeline of values.</summary>
public sealed class Crab : IRigDefinition
{
    private sealed record Plan(string Part, float Forward, float Reach, float Rise);

    private sealed record Leg(Plan Plan, Side Side, ImmutableArray<Joint> Joints)
    {
        public string Name => $"{Plan.Part}_{Side}";
    }

    private sealed record Limb(Leg Leg, Chain Chain, Copy Ik, Control Goal);

    private static readonly ImmutableArray<Plan> Plans =
    [
        new("claw", 0.05f, 0.09f, 0.02f),
        .. Enumerable.Range(1, 4).Select(static n => new Plan($"leg_{n}", 0.045f - n * 0.02f, 0.08f - Math.Abs(n - 2) * 0.008f, 0.03f)),
    ];

    public void Define(RigDraft rig)
    {
        var shell = rig.Skeleton("crab").Root("shell", at: new Vector3(0, 0.05f, 0));
        var top = rig.Group("crab_group");
        var world = rig.Control("world").Under(top);
        var body = Follow(rig, world, shell, "body");

        var legs = (from plan in Plans from side in Side.Both select Grow(shell, plan, side)).ToImmutableList();

        var limbs = legs.Select(Solve).ToImmutableList();

        var gait = limbs
            .Where(limb => limb.Leg.Plan.Part != "claw")
            .Select((limb, index) => (limb, even: (index / 2 + index) % 2 == 0))
            .ToLookup(pair => pair.even, pair => pair.limb);

        var tripod = new[] { true, false }
            .ToImmutableDictionary(even => even, even => rig.Control(even ? "gait_even" : "gait_odd").Under(world).LimitMove(Axis.Y, 0, 0.05f));

        _ = gait.SelectMany(set => set.Select(limb => limb.Goal.Under(tripod[set.Key]))).ToList();

        var pinchers = limbs.Where(limb => limb.Leg.Plan.Part == "claw").Select(Pinch).ToList();

        var eyes = Side.Both
            .Select(side => (side, stalk: shell.Child($"eyestalk_{side}", at: new Vector3(0.02f * side.Sign, 0.02f, 0.045f))))
            .Select(it => (it.stalk, tip: it.stalk.Child($"eye_{it.side}", at: new Vector3(0, 0.015f, 0))))
            .Select(it => (it.tip, root: Follow(rig, body, it.stalk, $"{it.stalk}_turn")))
            .Select(it => Follow(rig, it.root, it.tip, $"{it.tip}_turn"))
            .ToList();

        pinchers.Concat(eyes).ToList().ForEach(control => control.Lock(Channels.Move));

        Limb Solve(Leg leg)
        {
            var chain = rig.Chain(leg.Joints[1], leg.Joints[3]);
            var coxa = Follow(rig, body, leg.Joints[0], $"{leg.Name}_swing");
            var holder = rig.Group($"{leg.Name}_group").Under(coxa).PlacedAt(chain.Root);
            var ik = chain.Copy("ik").Under(holder);
            var goal = rig.Control($"{leg.Name}_goal").Under(world).PlacedAt(chain.Tip);
            var pole = rig.Control($"{leg.Name}_pole").Under(coxa).PlacedAt(ik.PolePoint(0.08f));
            _ = rig.TwoBone(ik).Reach(goal).Face(pole);
            var straight = goal.Switch("fk");
            var fk = chain.Copy("fk").Under(holder);
            _ = chain.Aggregate((Node)coxa, (above, joint) => Hang(above, joint, fk.Of(joint)));
            _ = rig.Blend(chain).From(ik, straight.Inverse).From(fk, straight);
            return new Limb(leg, chain, ik, goal);
        }

        Node Hang(Node above, Joint at, CopyJoint target)
        {
            var control = rig.Control($"fk_{at}").Under(above).PlacedAt(at);
            rig.Drive(target).ByChannels(control);
            return control;
        }

        Control Pinch(Limb claw) =>
            Follow(rig, claw.Goal, claw.Chain.Tip.Child($"{claw.Leg.Name}_finger", at: new Vector3(0, 0.01f, 0.02f)), $"{claw.Leg.Name}_pinch")
                .LimitTurn(Axis.X, -5, 50);
    }

    private static Leg Grow(Joint shell, Plan plan, Side side) =>
        new(
            plan,
            side,
            Segments(plan, side)
                .Aggregate(
                    (Above: shell, Made: ImmutableArray<Joint>.Empty),
                    (so, next) => so.Above.Child(next.Name, at: next.At) is var joint ? (joint, so.Made.Add(joint)) : so)
                .Made);

    private static IEnumerable<(string Name, Vector3 At)> Segments(Plan plan, Side side) =>
        new (string Segment, Vector3 Offset)[]
        {
            ("coxa", new(0.04f, 0, plan.Forward)),
            ("merus", new(0.015f, 0, 0)),
            ("carpus", new(plan.Reach * 0.5f, plan.Rise, 0)),
            ("dactyl", new(plan.Reach * 0.5f, -plan.Rise - 0.04f, 0)),
        }
        .Select(part => ($"{plan.Part}_{part.Segment}_{side}", part.Offset with { X = part.Offset.X * side.Sign }));

    private static Control Follow(RigDraft rig, Node above, Joint joint, string name)
    {
        var control = rig.Control(name).Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
