using System;
using System.Collections.Immutable;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R08;

/// <summary>A ladder that hangs over the ship's side. Data first, then one fold that makes joints of it, then one that makes controls.</summary>
public sealed class PilotLadder : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var rungs = Ladder.Default
            .Pipe(Ladder.Plan)
            .Pipe(plan => Ladder.Joints(rig.Skeleton("pilot_ladder"), plan));

        var rail = rig.Control("rail");

        var _ = rungs.Aggregate(
            seed: new Hanging(rail, ImmutableList<Control>.Empty),
            func: (state, rung) => Ladder.Hang(rig, state, rung));

        Ladder.Sway(rig, rail, rungs);
    }
}

internal enum RungKind
{
    Plain,
    Spreader,
    Bottom,
}

internal sealed record LadderSpec(int Count, float Spacing, int SpreaderEvery);

internal sealed record RungPlan(int Index, RungKind Kind, Vector3 Offset)
{
    public string Name => Kind switch
    {
        RungKind.Spreader => $"spreader_{Index}",
        RungKind.Bottom => "bottom_rung",
        _ => $"rung_{Index}",
    };
}

internal sealed record Rung(RungPlan Plan, Joint Joint);

internal sealed record Hanging(Control Last, ImmutableList<Control> Controls);

internal static class Ladder
{
    public static LadderSpec Default { get; } = new(Count: 8, Spacing: 0.33f, SpreaderEvery: 4);

    public static ImmutableArray<RungPlan> Plan(LadderSpec spec) =>
        [.. Enumerable.Range(0, spec.Count).Select(index => new RungPlan(index, KindOf(spec, index), OffsetOf(spec, index)))];

    public static ImmutableArray<Rung> Joints(Skeleton skeleton, ImmutableArray<RungPlan> plan) =>
        plan.Aggregate(
            ImmutableArray<Rung>.Empty,
            (made, next) => made.Add(new Rung(next, made switch
            {
                [] => skeleton.Root(next.Name, at: next.Offset),
                [.., var above] => above.Joint.Child(next.Name, RoleOf(next.Kind), at: next.Offset),
            })));

    public static Hanging Hang(RigDraft rig, Hanging state, Rung rung)
    {
        var control = rig.Control($"swing_{rung.Joint.Name}")
            .Under(state.Last)
            .PlacedAt(rung.Joint)
            .Pipe(c => Restrict(c, rung.Plan.Kind));
        rig.Drive(rung.Joint).ByChannels(control);
        return state with { Last = control, Controls = state.Controls.Add(control) };
    }

    public static void Sway(RigDraft rig, Control rail, ImmutableArray<Rung> rungs)
    {
        var bottom = rungs.Single(rung => rung.Plan.Kind is RungKind.Bottom);
        var group = rig.Group("sway_group").Under(rail).PlacedAt(bottom.Joint);
        rig.Drive(group).ByMatrix(bottom.Joint);
        rig.Label("weight_label", $"{rungs.Length} rungs").Under(group).ShownBy(1f);
    }

    private static Control Restrict(Control control, RungKind kind) => kind switch
    {
        RungKind.Plain => control.Lock(Channels.Move).LimitTurn(Axis.X, -25, 25).LimitTurn(Axis.Z, -15, 15),
        RungKind.Spreader => control.Lock(Channels.Move | Channels.TurnY),
        RungKind.Bottom => control.Lock(Channels.MoveY),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such rung."),
    };

    private static RungKind KindOf(LadderSpec spec, int index) => (index + 1, index % spec.SpreaderEvery) switch
    {
        var (number, _) when number == spec.Count => RungKind.Bottom,
        (_, 0) when index > 0 => RungKind.Spreader,
        _ => RungKind.Plain,
    };

    private static Vector3 OffsetOf(LadderSpec spec, int index) =>
        index == 0 ? new Vector3(0, 6, 0) : -spec.Spacing * Vector3.UnitY;

    private static JointRole RoleOf(RungKind kind) => kind is RungKind.Bottom ? JointRole.Helper : JointRole.Deform;
}

internal static class FunctionalExtensions
{
    public static TOut Pipe<TIn, TOut>(this TIn input, Func<TIn, TOut> next) => next(input);
}
