using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R32;

/// <summary>An octopus that explores a lobster pot. Everything about it is a value; the draft is touched only at the ends of the pipelines.</summary>
public sealed class CuriousOctopus : IRigDefinition
{
    private static readonly Func<int, ArmPlan> PlanOf = ArmPlan.Around(count: 8).Curry()(0.22f);

    public void Define(RigDraft rig) =>
        Body(rig)
            .Tap(body => rig.Drive(body.Mantle).ByChannels(body.Steer))
            .Tap(body => Enumerable.Range(0, 8).Select(PlanOf).Select(Grow(rig, body)).ToImmutableArray().Each(Pose(rig, body)))
            .Pipe(body => Eyes(rig, body).Count() switch
            {
                2 => body,
                var count => throw new InvalidOperationException($"An octopus with {count} eyes?"),
            });

    private static OctopusBody Body(RigDraft rig) =>
        rig.Skeleton("curious_octopus")
            .Root("mantle", at: new Vector3(0, 0.4f, 0))
            .Pipe(mantle => new OctopusBody(mantle, rig.Control("octopus").PlacedAt(mantle), rig.Group("systems_group")));

    // An arm is a left fold over its segment lengths.
    private static Func<ArmPlan, Arm> Grow(RigDraft rig, OctopusBody body) => plan =>
        plan.Segments
            .Aggregate(
                ImmutableList.Create(body.Mantle.Child(plan.Name(0), at: plan.Anchor, turned: plan.Facing)),
                (grown, length) => grown.Add(grown[^1].Child(plan.Name(grown.Count), at: Vector3.UnitZ * length)))
            .Pipe(joints => new Arm(plan, rig.Chain(joints[0], joints[^1])));

    private static Action<Arm> Pose(RigDraft rig, OctopusBody body) => arm =>
    {
        var parts = rig.Group($"{arm.Plan.Stem}_group").Under(body.Systems).PlacedAt(body.Steer)
            .Tap(group => rig.Drive(group).ByMatrix(body.Steer));
        var (fk, sweep) = ("fk", "sweep").Both(tag => arm.Chain.Copy(tag).Under(parts));

        var turns = arm.Chain.Scan((Node)body.Steer, (above, joint) => rig.Control($"turn_{joint}").Under(above).PlacedAt(joint)
            .Tap(control => rig.Drive(fk.Of(joint)).ByChannels(control)));

        // A sweep is one wheel that all segments turn with, so the arm swings as a whole.
        var wheel = rig.Control($"{sweep.Tag()}_{arm.Plan.Stem}").Under(body.Steer).PlacedAt(arm.Chain.Root).Lock(Channels.Move);
        arm.Chain.Each(joint => rig.Drive(sweep.Of(joint)).ByChannels(wheel).KeepingOffset());

        var amount = turns.Head.Match(none: () => wheel.Switch("sweep"), some: root => root.Switch("sweep").AlsoOn(wheel));
        rig.Blend(arm.Chain).From(fk, amount.Inverse).From(sweep, amount);
    };

    private static IEnumerable<Control> Eyes(RigDraft rig, OctopusBody body) =>
        from side in Side.Both
        let place = new Vector3(0.06f * side.Sign, 0.08f, 0.11f)
        let eye = body.Mantle.Child($"eye_{side}", at: place)
        let control = rig.Control($"look_{side}").Under(body.Steer).PlacedAt(eye).Lock(Channels.Move)
        let drive = rig.Drive(eye).ByChannels(control)
        select control.LimitTurn(Axis.X, -25, 25).LimitTurn(Axis.Y, -40, 40);
}

internal sealed record OctopusBody(Joint Mantle, Control Steer, Group Systems);

internal sealed record Arm(ArmPlan Plan, Chain Chain);

internal sealed record ArmPlan(string Stem, Vector3 Anchor, Quaternion Facing, ImmutableArray<float> Segments)
{
    public static Func<float, int, ArmPlan> Around(int count) => (radius, nth) =>
        Quaternion.CreateFromAxisAngle(Vector3.UnitY, (nth + 0.5f) * (2 * MathF.PI / count))
            .Pipe(turn => new ArmPlan(
                Stem: $"arm_{(char)('a' + nth)}",
                Anchor: Vector3.Transform(Vector3.UnitZ * radius, turn) - (Vector3.UnitY * 0.1f),
                Facing: turn,
                Segments: [.. Lengths(0.16f, 0.8f).TakeWhile(length => length > 0.06f)]));

    public string Name(int segment) => $"{Stem}_{segment}";

    private static IEnumerable<float> Lengths(float first, float ratio)
    {
        for (var length = first; ; length *= ratio)
            yield return length;
    }
}

/// <summary>Maybe a value: there is one, or there is none.</summary>
internal readonly record struct Option<T>(bool Has, T Value)
{
    public TResult Match<TResult>(Func<TResult> none, Func<T, TResult> some) => Has ? some(Value) : none();
}

internal sealed record Scanned<T>(ImmutableArray<T> All)
{
    public Option<T> Head => All.IsEmpty ? default : new(true, All[0]);
}

internal static class Functions
{
    public static TResult Pipe<T, TResult>(this T value, Func<T, TResult> next) => next(value);

    public static T Tap<T, TIgnored>(this T value, Func<T, TIgnored> effect)
    {
        _ = effect(value);
        return value;
    }

    public static T Tap<T>(this T value, Action<T> effect)
    {
        effect(value);
        return value;
    }

    public static void Each<T>(this IEnumerable<T> items, Action<T> effect)
    {
        foreach (var item in items)
            effect(item);
    }

    public static void Each<T, TIgnored>(this IEnumerable<T> items, Func<T, TIgnored> effect) => items.Each(item => { _ = effect(item); });

    public static Func<TA, Func<TB, TResult>> Curry<TA, TB, TResult>(this Func<TA, TB, TResult> function) => a => b => function(a, b);

    public static (TResult, TResult) Both<T, TResult>(this (T First, T Second) pair, Func<T, TResult> map) => (map(pair.First), map(pair.Second));

    public static string Tag(this Copy copy) => copy.Tip.Name.Split('_') is [var tag, ..] ? tag : "sweep";

    public static Scanned<Control> Scan(this IEnumerable<Joint> joints, Node seed, Func<Node, Joint, Control> step) =>
        new(joints.Aggregate((Above: seed, Made: ImmutableArray<Control>.Empty), (state, joint) =>
        {
            var made = step(state.Above, joint);
            return (made, state.Made.Add(made));
        }).Made);
}
