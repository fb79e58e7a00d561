using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R24;

/// <summary>A barge with a derrick on each side. Everything that is there twice is a <see cref="Twin{T}"/>.</summary>
public sealed class DerrickBarge : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var deck = rig.Skeleton("derrick_barge").Root("deck", at: new Vector3(0, 0.8f, 0));
        var barge = rig.Control("barge").PlacedAt(deck);
        rig.Drive(deck).ByChannels(barge);

        var booms = Twin.Of(side => deck.Child($"boom_{side}", at: new Vector3(3 * side.Sign, 1.5f, -4)));
        var ends = booms.Select((side, boom) => boom.Child($"boom_end_{side}", at: new Vector3(0.5f * side.Sign, 7, 4)));
        var blocks = ends.Select((side, end) => end.Child($"cargo_block_{side}", at: new Vector3(0, -3, 0)));

        var topping = booms.Select((side, boom) => rig.Control($"top_boom_{side}").Under(barge).PlacedAt(boom).Lock(Channels.Move | Channels.TurnZ));
        Connect(booms, topping, (boom, control) => rig.Drive(boom).ByChannels(control));

        var tips = ends.Select((side, end) => rig.Group($"boom_end_{side}_group").Under(topping[side]).PlacedAt(end));
        var runners = blocks.Select((side, block) => rig.Control($"run_block_{side}").Under(tips[side]).PlacedAt(block).Lock(Channels.Turn));

        // Union purchase: one hook on both runners. Each block goes its own way, or to the hook.
        var hook = rig.Control("union_hook").Under(barge).PlacedAt(deck);
        var union = hook.Switch("union").AlsoOn(barge);
        var onHook = blocks.Select((side, block) => rig.Group($"{block}_on_hook_group").Under(hook).PlacedAt(block));
        foreach (var (side, block) in blocks)
            rig.Blend(block).From(onHook[side], union).From(runners[side], union.Inverse);

        Winches(rig, deck, barge);
    }

    private static void Winches(RigDraft rig, Joint deck, Control barge)
    {
        var winches = Twin.Of(side => Enumerable.Range(1, 2)
            .Select(number => deck.Child($"winch_{number}_{side}", at: new Vector3(1.2f * side.Sign, 0.3f, -6 + number)))
            .ToList());
        var spins = winches.Select((_, drums) => drums.ConvertAll(drum => rig.Control($"spin_{drum}").Under(barge).PlacedAt(drum)));

        Connect(winches, spins, (drums, controls) =>
        {
            foreach (var (drum, control) in drums.Zip(controls))
                rig.Drive(drum).ByMatrix(control.Lock(Channels.Move));
        });
    }

    private static void Connect<TFirst, TSecond>(Twin<TFirst> first, Twin<TSecond> second, Action<TFirst, TSecond> connect)
    {
        foreach (var side in Side.Both)
            connect(first[side], second[side]);
    }
}

internal static class Twin
{
    public static Twin<T> Of<T>(Func<Side, T> make) => new(make(Side.Left), make(Side.Right));
}

internal sealed class Twin<T>(T left, T right) : IEnumerable<KeyValuePair<Side, T>>
{
    public T this[Side side] => side == Side.Left ? left : right;

    public Twin<TResult> Select<TResult>(Func<Side, T, TResult> selector) => Twin.Of(side => selector(side, this[side]));

    public IEnumerator<KeyValuePair<Side, T>> GetEnumerator()
    {
        yield return KeyValuePair.Create(Side.Left, left);
        yield return KeyValuePair.Create(Side.Right, right);
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
