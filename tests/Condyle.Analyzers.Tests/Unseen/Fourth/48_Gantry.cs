using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R48;

internal interface IMotion<TSelf>
    where TSelf : IMotion<TSelf>
{
    static abstract string Verb { get; }

    static abstract Control Restrict(Control control, float amount);
}

internal readonly struct Slide : IMotion<Slide>
{
    public static string Verb => "slide";

    public static Control Restrict(Control control, float amount) =>
        control.Lock(Channels.Turn).LimitMove(Axis.Z, -amount, amount);
}

internal readonly struct Hoist : IMotion<Hoist>
{
    public static string Verb => "hoist";

    public static Control Restrict(Control control, float amount) =>
        control.Lock(Channels.Turn | Channels.MoveX | Channels.MoveZ).LimitMove(Axis.Y, -amount, 0);
}

internal readonly struct Slew : IMotion<Slew>
{
    public static string Verb => "slew";

    public static Control Restrict(Control control, float amount) =>
        control.Lock(Channels.Move).LimitTurn(Axis.Y, -amount, amount);
}

internal static class Helpers
{
    public static Control Rigged<TMotion>(this RigDraft rig, Joint joint, Control above, float amount)
        where TMotion : struct, IMotion<TMotion>
    {
        var control = TMotion.Restrict(rig.Control($"{TMotion.Verb}_{joint}").Under(above).PlacedAt(joint), amount);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    public static TResult[] Map<TSource, TResult>(IReadOnlyList<TSource> from, Func<TSource, TResult> how)
    {
        var result = new TResult[from.Count];
        for (var i = 0; i < result.Length; i++)
            result[i] = how(from[i]);
        return result;
    }

    public static TBlend Fold<TBlend, TItem>(TBlend seed, IEnumerable<TItem> items, Func<TBlend, TItem, TBlend> how)
    {
        foreach (var item in items)
            seed = how(seed, item);
        return seed;
    }

    public static T Also<T>(this T value, Action<T> action)
    {
        action(value);
        return value;
    }
}

public sealed class Gantry : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var rail = rig.Skeleton("gantry").Root("rail", JointRole.Helper);
        var legs = Helpers.Map(Side.Both, side => rail.Child($"leg_{side}", at: new Vector3(6 * side.Sign, 0, 0)));
        var beam = rail.Child("beam", at: new Vector3(0, 12, 0));
        var trolley = beam.Child("trolley", at: new Vector3(0, -0.5f, 0));
        var spreader = trolley.Child("spreader", at: new Vector3(0, -4, 0));
        var box = spreader.Child("container", at: new Vector3(0, -1.3f, 0));

        var world = rig.Control("world");
        var whole = rig.Rigged<Slide>(rail, world, 80);
        var run = rig.Rigged<Slide>(trolley, whole, 6);
        var hang = rig.Rigged<Hoist>(spreader, run, 9);
        foreach (var leg in legs)
            rig.Rigged<Slew>(leg, whole, 2);

        var ground = rig.Control("ground_place").Under(world).PlacedAt(box);
        var truck = rig.Control("truck_place").Under(world).PlacedAt(box);
        var held = hang.Switch("held", 1).Also(amount => amount.AlsoOn(ground).AlsoOn(truck));
        var onTruck = truck.Switch("on_truck");

        Helpers.Fold(
            rig.Blend(box),
            new (Node Source, Weight Weight)[]
            {
                (hang, held),
                (ground, held.Inverse * onTruck.Inverse),
                (truck, onTruck),
            },
            (blend, pair) => blend.From(pair.Source, pair.Weight));
    }
}
