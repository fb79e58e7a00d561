using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R08;

internal interface ILimb<TSelf> where TSelf : struct, ILimb<TSelf>
{
    static abstract string Part { get; }

    static abstract (string Name, Vector3 At)[] Joints(Side side);

    static abstract float PoleDistance { get; }
}

internal readonly struct Flipper : ILimb<Flipper>
{
    public static string Part => "flipper";

    public static float PoleDistance => 0.35f;

    public static (string Name, Vector3 At)[] Joints(Side side) =>
    [
        ("shoulder", new(0.18f * side.Sign, -0.05f, 0)),
        ("elbow", new(0.12f * side.Sign, -0.04f, -0.05f)),
        ("wrist", new(0.12f * side.Sign, -0.04f, 0.02f)),
    ];
}

internal readonly struct TailFluke : ILimb<TailFluke>
{
    public static string Part => "fluke";

    public static float PoleDistance => 0.3f;

    public static (string Name, Vector3 At)[] Joints(Side side) =>
    [
        ("hip", new(0.06f * side.Sign, 0, -0.1f)),
        ("knee", new(0.02f * side.Sign, 0.02f, -0.12f)),
        ("ankle", new(0.02f * side.Sign, -0.03f, -0.14f)),
    ];
}

internal static class Make
{
    public static Dictionary<TKey, TValue> Table<TKey, TValue>(IEnumerable<TKey> keys, Func<TKey, TValue> make)
        where TKey : notnull
    {
        var table = new Dictionary<TKey, TValue>();
        foreach (var key in keys)
            table[key] = make(key);
        return table;
    }

    public static TState Fold<TItem, TState>(IReadOnlyList<TItem> items, TState start, Func<TState, TItem, TState> step)
    {
        var state = start;
        for (var i = 0; i < items.Count; i++)
            state = step(state, items[i]);
        return state;
    }

    public static (Chain Chain, Switch Fk) Limb<T>(RigDraft rig, Side side, Joint on, Control above)
        where T : struct, ILimb<T>
    {
        var made = new List<Joint>();
        Fold(T.Joints(side), on, (parent, row) =>
        {
            var joint = parent.Child($"{row.Name}_{side}", at: row.At);
            made.Add(joint);
            return joint;
        });

        var chain = rig.Chain(made.First(), made.Last());
        var group = rig.Group($"{T.Part}_{side}_group").Under(above).PlacedAt(chain.Root);
        var copies = Table(new[] { "ik", "fk" }, tag => chain.Copy(tag).Under(group));
        var goal = rig.Control($"{T.Part}_goal_{side}").Under(above).PlacedAt(chain.Tip);
        var pole = rig.Control($"{T.Part}_pole_{side}").Under(above).PlacedAt(copies["ik"].PolePoint(T.PoleDistance));
        rig.TwoBone(copies["ik"]).Reach(goal).Face(pole);
        Fold<Joint, Node>(chain, group, (parent, joint) =>
        {
            var control = rig.Control($"turn_{joint.Name}").Under(parent).PlacedAt(joint);
            rig.Drive(copies["fk"].Of(joint)).ByChannels(control);
            return control;
        });
        var fk = goal.Switch("fk");
        rig.Blend(chain).From(copies["ik"], fk.Inverse).From(copies["fk"], fk);
        return (chain, fk);
    }
}

public sealed class GreySeal : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var pelvis = rig.Skeleton("grey_seal").Root("pelvis", at: new Vector3(0, 0.3f, -0.4f));
        var chest = pelvis.Child("chest", at: new Vector3(0, 0.05f, 0.6f));
        var body = rig.Control("body").PlacedAt(pelvis);
        var ribs = rig.Control("ribs").Under(body).PlacedAt(chest);
        rig.Drive(pelvis).ByChannels(body);
        rig.Drive(chest).ByChannels(ribs);

        var flippers = Make.Table(Side.Both, side => Make.Limb<Flipper>(rig, side, chest, ribs));
        var flukes = Make.Table(Side.Both, side => Make.Limb<TailFluke>(rig, side, pelvis, body));
        foreach (var (side, limb) in flippers)
            rig.Label($"fk_flipper_label_{side}", "FK").ShownBy(limb.Fk);
        foreach (var side in flukes.Keys)
            rig.Label($"fk_fluke_label_{side}", "FK").ShownBy(flukes[side].Fk);
    }
}
