using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R33;

/// <summary>A skiff with two oars, written as one expression of "builds": functions from what is around (draft, groups, hull) to what they make.</summary>
public sealed class PairOarSkiff : IRigDefinition
{
    public void Define(RigDraft rig) => Skiff(new Surroundings(rig, rig.Skeleton("pair_oar_skiff"), rig.Group("systems_group")));

    private static Build<Skiff> Skiff =>
        from hull in Hull
        from oars in Builds.Sequence(Side.Both.Select(Oar(hull)))
        from rudder in Rudder(hull)
        from thwarts in Builds.Sequence(Enumerable.Range(1, 2).Select(Stretcher(hull)))
        select new Skiff(hull, [.. oars], rudder, thwarts.Count);

    private static Build<Part> Hull =>
        from joint in Builds.Root("hull", new Vector3(0, 0.2f, 0))
        from control in Builds.Handle("skiff", joint, none: true)
        from heel in Builds.Follows(joint, control)
        select new Part(joint, control);

    private static Func<Side, Build<Oar>> Oar(Part hull) => side =>
        from pin in Builds.Child(hull.Joint, $"pin_{side}", new Vector3(0.75f * side.Sign, 0.35f, 0.1f))
        from loom in Builds.Child(pin, $"loom_{side}", new Vector3(0.9f * side.Sign, -0.12f, -0.1f))
        from blade in Builds.Child(loom, $"blade_{side}", new Vector3(0.9f * side.Sign, -0.2f, 0.1f))
        from chain in Builds.Ask(s => s.Rig.Chain(pin, blade))
        from parts in Builds.Follower($"oar_{side}_group", hull)
        from swing in Swung(chain, parts, hull.Control)
        from dip in Dipped(chain, parts, hull.Control, side)
        from amount in Builds.Ask(s => dip.Grip.Switch("free"))
        from blend in Builds.Ask(s => s.Rig.Blend(chain).From(dip.Source, amount.Inverse).From(swing.Source, amount))
        from shown in Builds.Ask(s => new[] { ("stroke", amount.Inverse), ("free", amount) }
            .Select(line => s.Rig.Label($"{line.Item1}_label_{side}", line.Item1.ToUpperInvariant()).Under(dip.Grip).ShownBy(line.Item2)).ToList())
        select new Oar(side, chain, shown.Count);

    private static Build<Way> Swung(Chain chain, Group parts, Control above) => s =>
    {
        var copy = chain.Copy("free").Under(parts);
        var last = chain.Aggregate(above, (higher, joint) =>
        {
            var control = s.Rig.Control($"turn_{joint.Name}").Under(higher).PlacedAt(joint).Lock(Channels.Move);
            s.Rig.Drive(copy.Of(joint)).ByChannels(control);
            return control;
        });
        return new Way(copy, last);
    };

    private static Build<Way> Dipped(Chain chain, Group parts, Control above, Side side) =>
        from copy in Builds.Ask(s => chain.Copy("stroke").Under(parts))
        from grip in Builds.Ask(s => s.Rig.Control($"blade_tip_{side}").Under(above).PlacedAt(chain.Tip))
        from pole in Builds.Ask(s => s.Rig.Control($"feather_{side}").Under(above).PlacedAt(copy.PolePoint(0.5f)).Lock(Channels.Turn))
        from solver in Builds.Ask(s => s.Rig.TwoBone(copy).Reach(grip).Face(pole))
        select new Way(copy, grip);

    private static Build<Part> Rudder(Part hull) =>
        from joint in Builds.Child(hull.Joint, "rudder", new Vector3(0, 0.1f, -2))
        from control in Builds.Handle("tiller", joint)
        from limited in Builds.Ask(_ => control.Under(hull.Control).LimitTurn(Axis.Y, -40, 40))
        from heel in Builds.Follows(joint, limited)
        select new Part(joint, limited);

    private static Func<int, Build<Part>> Stretcher(Part hull) => number =>
        from joint in Builds.Child(hull.Joint, $"stretcher_{number}", new Vector3(0, 0.05f, 0.6f - (number * 0.7f)))
        from control in Builds.Handle($"slide_{joint.Name}", joint)
        from limited in Builds.Ask(_ => control.Under(hull.Control).Lock(Channels.Turn | Channels.MoveX | Channels.MoveY).LimitMove(Axis.Z, -0.2f, 0.2f))
        from heel in Builds.Follows(joint, limited)
        select new Part(joint, limited);
}

internal sealed record Surroundings(RigDraft Rig, Skeleton Skeleton, Group Systems);

internal sealed record Part(Joint Joint, Control Control);

internal sealed record Way(Copy Source, Control Grip);

internal sealed record Oar(Side Side, Chain Chain, int Labels);

internal sealed record Skiff(Part Hull, Oar[] Oars, Part Rudder, int Thwarts);

/// <summary>Something that can be made once its surroundings are given.</summary>
internal delegate T Build<out T>(Surroundings surroundings);

internal static class Builds
{
    public static Build<T> Ask<T>(Func<Surroundings, T> question) => surroundings => question(surroundings);

    public static Build<TResult> Select<T, TResult>(this Build<T> build, Func<T, TResult> map) => surroundings => map(build(surroundings));

    public static Build<TResult> SelectMany<T, TNext, TResult>(this Build<T> build, Func<T, Build<TNext>> next, Func<T, TNext, TResult> map) =>
        surroundings =>
        {
            var first = build(surroundings);
            return map(first, next(first)(surroundings));
        };

    public static Build<IReadOnlyList<T>> Sequence<T>(IEnumerable<Build<T>> builds) =>
        surroundings => builds.Select(build => build(surroundings)).ToList();

    public static Build<Joint> Root(string name, Vector3 at) => Ask(s => s.Skeleton.Root(name, at: at));

    public static Build<Joint> Child(Joint above, string name, Vector3 at) => Ask(_ => above.Child(name, at: at));

    public static Build<Control> Handle(string name, Node at, bool none = false) =>
        Ask(s => s.Rig.Control(name).PlacedAt(at).Lock(none ? Channels.None : Channels.Scale));

    public static Build<Drive> Follows(Node node, Control control) => Ask(s => s.Rig.Drive(node).ByChannels(control));

    public static Build<Group> Follower(string name, Part part) =>
        from @group in Ask(s => s.Rig.Group(name).Under(s.Systems).PlacedAt(part.Control))
        from drive in Ask(s => s.Rig.Drive(@group).ByMatrix(part.Control))
        select @group;
}
