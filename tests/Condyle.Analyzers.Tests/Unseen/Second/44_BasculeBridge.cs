using System;
using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R44;

/// <summary>The bascule bridge at the inner basin: two leaves with counterweights, locks at mid-span, barriers and lamps.</summary>
public sealed partial class BasculeBridge : IRigDefinition
{
    private const float HalfSpan = 11.5f;
    private const float LeafLength = HalfSpan - Gap / 2;
    private const float Gap = 0.06f;
    private const string LeafPrefix = "leaf";

    public void Define(RigDraft rig)
    {
        var state = new BuildState(rig);
        Foundation(ref state);
        for (var i = 0; i < Side.Both.Count; i++)
        {
            if (!TryLeaf(ref state, Side.Both[i], out var leaf, out var why))
            {
                rig.Label($"problem_{i}", why).ShownBy(1);
                continue;
            }

            Barriers(state, leaf, in i);
        }

        Lock(state);
    }

    private ref struct BuildState(RigDraft rig)
    {
        public readonly RigDraft Rig = rig;
        public Joint Pier;
        public Control All;
        public Leaf? Left, Right;
        public int Leaves;

        [UnscopedRef]
        public ref Leaf? this[Side side] => ref GetSlot(side);

        [UnscopedRef]
        private ref Leaf? GetSlot(Side side)
        {
            if (side == Side.Left)
                return ref Left;
            return ref Right;
        }
    }
}

public sealed partial class BasculeBridge
{
    private sealed class Leaf
    {
        private Leaf(Side side, Joint hinge, Control lift) => (Side, Hinge, Lift) = (side, hinge, lift);

        public Side Side { get; }

        public Joint Hinge { get; }

        public Control Lift { get; }

        public Joint Nose { get; private set; }

        internal sealed class Maker
        {
            private readonly Side side;
            private float open = 82f;

            public Maker(Side side) => this.side = side;

            public Maker OpensTo(float degrees)
            {
                open = degrees;
                return this;
            }

            public Leaf Make(RigDraft rig, Joint pier, Control all)
            {
                var hinge = pier.Child($"{LeafPrefix}_{side}", at: Out(HalfSpan, 0.5f));
                var lift = rig.Control($"lift_{side}").Under(all).PlacedAt(hinge).Lock(Channels.All & ~Channels.TurnZ);
                _ = side == Side.Left ? lift.LimitTurn(Axis.Z, -open, 0) : lift.LimitTurn(Axis.Z, 0, open);
                rig.Drive(hinge).ByChannels(lift);
                return new Leaf(side, hinge, lift) { Nose = hinge.Child($"nose_{side}", at: Out(-LeafLength, 0)) };
            }

            private Vector3 Out(float x, float y) => new(x * side.Sign, y, 0);
        }
    }

    private static void Foundation(ref BuildState state)
    {
        state.Pier = state.Rig.Skeleton("bascule_bridge").Root("pier");
        state.All = state.Rig.Control("bridge").PlacedAt(state.Pier);
        state.Rig.Drive(state.Pier).ByChannels(state.All);
    }

    private static bool TryLeaf(ref BuildState state, Side side, [NotNullWhen(true)] out Leaf? leaf, [NotNullWhen(false)] out string? why)
    {
        (leaf, why) = (null, null);
        ref var slot = ref state[side];
        if (slot is not null)
        {
            why = $"the {side} leaf is there already";
            return false;
        }

        slot = leaf = new Leaf.Maker(side).OpensTo(side == Side.Left ? 80 : 82).Make(state.Rig, state.Pier, state.All);
        state.Leaves += 1;

        // The counterweight goes round with the leaf: it is geared to it, so a matrix seemed enough.
        var weight = leaf.Hinge.Child($"counterweight_{side}", at: new Vector3(3 * side.Sign, -0.8f, 0));
        var gear = state.Rig.Group($"counterweight_{side}_group").Under(leaf.Lift).PlacedAt(weight);
        state.Rig.Drive(weight).ByMatrix(gear);
        return true;
    }

    private static void Barriers(in BuildState state, Leaf leaf, in int number)
    {
        foreach (var end in (ReadOnlySpan<string>)["near", "far"])
        {
            var post = state.Pier.Child($"barrier_{end}_{leaf.Side}", at: new Vector3((HalfSpan + 4) * leaf.Side.Sign, 1, end is "near" ? 3 : -3));
            var bar = state.Rig.Control($"bar_{number}_{end}").Under(state.All).PlacedAt(post).Lock(Channels.Move | Channels.TurnX | Channels.TurnY);
            state.Rig.Drive(post).ByChannels(bar.LimitTurn(Axis.Z, 0, 88));
        }
    }

    private static void Lock(in BuildState state)
    {
        if (state is not { Left: { } left, Right: { } right, Leaves: 2 })
            return;
        var locked = state.All.Switch("locked", 1);
        var seat = state.Rig.Control("lock_pin").Under(state.All).PlacedAt(left.Nose);
        var tail = state.Rig.Group("lock_seat_group").Under(right.Lift).PlacedAt(left.Nose);
        state.Rig.Blend(left.Nose).From(seat, locked.Inverse).From(tail, locked);
        state.Rig.Drive(right.Nose).ByChannels(right.Lift).KeepingOffset();
        state.Rig.Label("locked_label", nameof(locked).ToUpperInvariant()).Under(state.All).ShownBy(locked);
    }
}
