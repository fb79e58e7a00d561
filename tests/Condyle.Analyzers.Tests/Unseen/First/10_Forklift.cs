using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R10;

[Flags]
public enum Fittings : ushort
{
    None = 0,
    Mast = 1 << 0,
    Tilt = 1 << 1,
    SideShift = 1 << 2,
    Forks = 1 << 3,
    Steering = 1 << 4,
    Beacon = 1 << 5,
    Clamp = 1 << 6,
    Bale = Mast | SideShift | Clamp,
    Standard = Mast | Tilt | Forks | Steering,
    Everything = Standard | Bale | Beacon,
}

/// <summary>A warehouse forklift; a word of flags says which of its parts it was ordered with.</summary>
public sealed class Forklift : IRigDefinition
{
    private const Fittings Ordered = (Fittings.Everything & ~Fittings.Clamp) | Fittings.SideShift;

    public void Define(RigDraft rig)
    {
        var frame = rig.Skeleton("forklift").Root("frame", at: new Vector3(0, 0.4f, 0));
        var truck = rig.Control("truck").PlacedAt(frame);
        rig.Drive(frame).ByChannels(truck);

        var places = new Dictionary<Fittings, (Joint Joint, Control Control)> { [Fittings.None] = (frame, truck) };
        for (var rest = (uint)Ordered; rest != 0; rest &= rest - 1)
        {
            var fitting = (Fittings)(rest & (~rest + 1));
            var (joint, control) = places[Carrier(fitting)];
            places[fitting] = Fit(rig, fitting, joint, control);
        }

        if (Ordered.HasFlag(Fittings.Forks))
            Forks(rig, places[Fittings.Forks]);
        Wheels(rig, frame, truck, BitOperations.PopCount((uint)(Ordered & Fittings.Standard)));

        var word = Convert.ToString((int)Ordered, 2).PadLeft(8, '0');
        rig.Label("fittings_label", $"{word} {Ordered & (Fittings.Beacon | Fittings.SideShift)}").Under(truck);
    }

    private static Fittings Carrier(Fittings fitting) => fitting switch
    {
        Fittings.Mast or Fittings.Steering => Fittings.None,
        Fittings.Tilt or Fittings.Beacon => Fittings.Mast,
        Fittings.SideShift when (Ordered & Fittings.Tilt) != 0 => Fittings.Tilt,
        Fittings.Forks or Fittings.Clamp when (Ordered & Fittings.SideShift) == Fittings.SideShift => Fittings.SideShift,
        _ => Fittings.Mast,
    };

    private static (Joint Joint, Control Control) Fit(RigDraft rig, Fittings fitting, Joint carrier, Control above)
    {
        var name = fitting.ToString().ToLowerInvariant();
        var joint = carrier.Child(name, fitting == Fittings.Beacon ? JointRole.Helper : JointRole.Deform, at: PlaceOf(fitting));
        var control = rig.Control($"{name}_lever").Under(above).PlacedAt(joint).Lock(Channels.All & ~FreeOf(fitting));
        if ((FreeOf(fitting) & Channels.MoveY) != 0)
            control.LimitMove(Axis.Y, 0, 3.2f);
        rig.Drive(joint).ByChannels(control);
        return (joint, control);
    }

    private static Channels FreeOf(Fittings fitting)
    {
        var free = Channels.None;
        if ((fitting & Fittings.Mast) != 0)
            free |= Channels.MoveY;
        if ((fitting & Fittings.Tilt) != 0)
            free |= Channels.TurnX;
        if ((fitting & Fittings.Bale & ~Fittings.Mast) != 0)
            free |= Channels.MoveX;
        if ((fitting & (Fittings.Steering | Fittings.Beacon)) != 0)
            free ^= Channels.TurnY;
        return free;
    }

    private static Vector3 PlaceOf(Fittings fitting)
    {
        var bit = BitOperations.TrailingZeroCount((ushort)fitting);
        var packed = 0x3A_1B_24_12_00_15UL >> (bit * 8) & 0xFF;
        return new Vector3(0, (packed >> 4) * 0.1f, (packed & 0x0F) * 0.1f);
    }

    private static void Forks(RigDraft rig, (Joint Joint, Control Control) carriage)
    {
        var spread = rig.Group("fork_spread_group").Under(carriage.Control).Unlock(Channels.MoveX | Channels.ScaleX);
        foreach (var side in Side.Both)
        {
            var fork = carriage.Joint.Child($"fork_{side}", at: new Vector3(0.25f * side.Sign, -0.3f, 0.1f));
            rig.Drive(fork).ByChannels(rig.Control($"fork_{side}_lever").Under(spread).PlacedAt(fork).Lock(Channels.All ^ Channels.MoveX));
        }
    }

    private static void Wheels(RigDraft rig, Joint frame, Control truck, int count)
    {
        for (var corner = 0; corner < count; corner++)
        {
            var (isRight, isRear) = ((corner & 1) != 0, (corner & 2) != 0);
            var name = $"wheel_{(isRear ? "rear" : "front")}_{(isRight ? Side.Right : Side.Left)}";
            var wheel = frame.Child(name, at: new Vector3(isRight ? -0.5f : 0.5f, -0.15f, isRear ? -0.8f : 0.8f));
            rig.Drive(wheel).ByMatrix(rig.Control($"spin_{name}").Under(truck).PlacedAt(wheel).Lock(~Channels.TurnX & Channels.All))
                .Accept("CDY3001", because: "the wheels are spun by the vehicle code in the game");
        }
    }
}
