using System;
using System.Collections.Immutable;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R27;

/// <summary>One flipper's plan; a variant is made from another by <c>with</c>.</summary>
public sealed record FlipperPlan(string Name, Vector3 Root, ImmutableArray<Vector3> Bones, float Pole)
{
    public Channels Locked { get; init; } = Channels.None;

    public bool StartsFree { get; init; }

    public FlipperPlan Scaled(float by) => this with { Bones = [.. Bones.Select(bone => bone * by)], Pole = Pole * by };

    public FlipperPlan On(Side side) => side == Side.Left
        ? this with { Name = $"{Name}_{side}" }
        : this with { Name = $"{Name}_{side}", Root = Mirrored(Root), Bones = [.. Bones.Select(Mirrored)] };

    private static Vector3 Mirrored(Vector3 at) => at with { X = -at.X };
}

/// <summary>What has been built so far; each step gives back a new one.</summary>
public sealed record Progress(RigDraft Rig, Joint Body, Control Shell)
{
    public ImmutableDictionary<string, Control> Goals { get; init; } = ImmutableDictionary<string, Control>.Empty;

    public ImmutableStack<Group> Open { get; init; } = [];

    public ImmutableList<string> Said { get; init; } = [];

    public Progress Say(string text) => this with { Said = Said.Add(text) };
}

/// <summary>The turtle that comes in with the tide.</summary>
public sealed class SeaTurtle : IRigDefinition
{
    private static readonly FlipperPlan Fore = new("fore", new(0.25f, 0, 0.3f), [new(0.2f, 0.02f, 0.05f), new(0.25f, -0.02f, -0.15f)], 0.4f)
    {
        StartsFree = true,
    };

    private static readonly FlipperPlan Hind = Fore.Scaled(0.6f) with
    {
        Name = "hind",
        Root = new Vector3(0.2f, 0, -0.3f),
        StartsFree = false,
        Locked = Channels.Turn,
    };

    private static readonly ImmutableArray<FlipperPlan> Flippers = ImmutableArray.Create(Fore, Hind);

    public void Define(RigDraft rig)
    {
        var body = rig.Skeleton("sea_turtle").Root("carapace", at: new Vector3(0, 0.2f, 0));
        var shell = rig.Control("shell").PlacedAt(body);
        rig.Drive(body).ByChannels(shell);

        var start = new Progress(rig, body, shell) with { Open = ImmutableStack.Create(rig.Group("systems_group")) };
        var plans = Flippers.SelectMany(plan => Side.Both.Select(plan.On)).ToImmutableArray();
        var swum = plans.Aggregate(Neck(start), Flipper);

        var diving = swum.Goals.Values.Select(goal => goal.Name).Order(StringComparer.Ordinal).ToImmutableSortedSet(StringComparer.Ordinal);
        rig.Label("turtle_label", $"{swum.Said.Count}: {string.Join(",", diving)}").Under(shell);
        if (swum.Goals.TryGetValue("fore_left", out var left) && swum.Goals.TryGetValue("fore_right", out var right))
            Tail(swum with { Shell = shell }, left.Switch("tail_follows").AlsoOn(right));
    }

    private static Progress Neck(Progress so)
    {
        var builder = ImmutableArray.CreateBuilder<Joint>(3);
        foreach (var step in ImmutableArray.Create(0.3f, 0.12f, 0.1f))
            builder.Add((builder.Count == 0 ? so.Body : builder[^1]).Child($"neck_{builder.Count}", at: new Vector3(0, 0.03f, step)));
        return builder.MoveToImmutable().Aggregate((So: so, Above: so.Shell), (state, joint) =>
        {
            var turn = state.So.Rig.Control($"turn_{joint}").Under(state.Above).PlacedAt(joint).LimitTurn(Axis.X, -30, 30);
            state.So.Rig.Drive(joint).ByChannels(turn);
            return (state.So.Say(joint.Name), turn);
        }).So;
    }

    private static Progress Flipper(Progress so, FlipperPlan plan)
    {
        var (name, at, bones, distance) = plan;
        var root = so.Body.Child($"{name}_0", at: at);
        var joints = bones.Aggregate(ImmutableList.Create(root), (list, bone) => list.Add(list[^1].Child($"{name}_{list.Count}", at: bone)));
        var chain = so.Rig.Chain(joints[0], joints[^1]);

        var parts = so.Rig.Group($"{name}_group").Under(so.Open.Peek()).PlacedAt(so.Shell);
        so.Rig.Drive(parts).ByMatrix(so.Shell);
        var copies = new[] { "ik", "fk" }.ToImmutableDictionary(tag => tag, tag => chain.Copy(tag).Under(parts));
        var goal = so.Rig.Control($"{name}_goal").Under(so.Shell).PlacedAt(chain.Tip).Lock(plan.Locked);
        var pole = so.Rig.Control($"{name}_pole").Under(so.Shell).PlacedAt(copies["ik"].PolePoint(distance));
        so.Rig.TwoBone(copies["ik"]).Reach(goal).Face(pole);

        _ = joints.Aggregate(so.Shell, (above, joint) =>
        {
            var turn = so.Rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            so.Rig.Drive(copies["fk"].Of(joint)).ByChannels(turn);
            return turn;
        });
        var free = goal.Switch("fk", plan.StartsFree ? 1f : 0f);
        so.Rig.Blend(chain).From(copies["fk"], free).From(copies["ik"], free.Inverse);
        return so.Say(name) with { Goals = so.Goals.SetItem(name, goal), Open = so.Open.Push(parts) };
    }

    private static void Tail(Progress so, Switch follows)
    {
        var tail = so.Body.Child("tail", at: new Vector3(0, -0.02f, -0.45f));
        var (own, led) = (so.Rig.Control("tail_own").Under(so.Shell).PlacedAt(tail), so.Rig.Group("tail_led_group").Under(so.Open.Last()).PlacedAt(tail));
        so.Rig.Drive(led).ByMatrix(so.Goals["hind_left"]).KeepingOffset();
        so.Rig.Blend(tail).From(own, follows).From(led, follows);
    }
}
