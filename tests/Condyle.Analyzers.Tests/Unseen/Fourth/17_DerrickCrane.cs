using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R17;

[Flags]
public enum Fit : ushort
{
    Bare = 0,
    Handle = 1,
    Turns = 1 << 1,
    Slides = 1 << 2,
    Limited = 1 << 3,
    Helper = 1 << 4,
    Labelled = 1 << 5,
    Hinge = Handle | Turns | Limited,
    Rail = Handle | Slides | Limited,
    Swivel = Handle | Turns,
}

public sealed class DerrickCrane : IRigDefinition
{
    private const Channels Frozen = Channels.Scale;

    public void Define(RigDraft rig)
    {
        var foot = rig.Skeleton("derrick_crane").Root("foot", Role(Fit.Bare));
        var main = rig.Control("main");
        rig.Drive(foot).ByChannels(main);

        var (slew, slewHandle) = Part(rig, foot, main, "slew", new(0, 1.5f, 0), Fit.Swivel | Fit.Labelled, Axis.Y);
        var (cab, _) = Part(rig, slew, slewHandle, "cab", new(0.9f, 0.4f, 0.3f), Fit.Helper, Axis.Y);
        var (boom, boomHandle) = Part(rig, slew, slewHandle, "boom", new(0, 0.5f, 0.6f), Fit.Hinge, Axis.X);
        var (jib, jibHandle) = Part(rig, boom, boomHandle, "jib", new(0, 4, 6), Fit.Rail & ~Fit.Limited | Fit.Labelled, Axis.Z);
        Part(rig, jib, jibHandle, "hook", new(0, -3, 1), Fit.Swivel | Fit.Slides, Axis.Y);
        Part(rig, cab, slewHandle, "cab_door", new(0.4f, 0, 0), Fit.Hinge ^ Fit.Limited, Axis.Y);
    }

    private static JointRole Role(Fit fit) => (fit & Fit.Helper) != 0 ? JointRole.Helper : JointRole.Deform;

    private static Channels Locked(Fit fit, Axis axis)
    {
        var free = Channels.None;
        if (fit.HasFlag(Fit.Turns))
            free |= (Channels)((int)Channels.TurnX << (int)axis);
        if (fit.HasFlag(Fit.Slides))
            free |= (Channels)((int)Channels.MoveX << (int)axis);
        return (Channels.Move | Channels.Turn) & ~free | Frozen;
    }

    private static (Joint Joint, Control Handle) Part(RigDraft rig, Joint parent, Control above, string name, Vector3 at, Fit fit, Axis axis)
    {
        var joint = parent.Child(name, Role(fit), at);
        if ((fit & Fit.Handle) == 0)
            return (joint, above);

        var handle = rig.Control("turn_" + name).Under(above).PlacedAt(joint).Lock(Locked(fit, axis));
        if ((fit & (Fit.Limited | Fit.Turns)) == (Fit.Limited | Fit.Turns))
            handle.LimitTurn(axis, -15, 70);
        if ((fit & (Fit.Limited | Fit.Slides)) == (Fit.Limited | Fit.Slides))
            handle.LimitMove(axis, 0, 4);

        if (fit.HasFlag(Fit.Labelled))
        {
            // by hand, or riding the parent
            var riding = rig.Group($"{name}_riding_group").Under(above).PlacedAt(joint);
            var byHand = handle.Switch("hand", 1f);
            rig.Blend(joint).From(handle, byHand).From(riding, byHand.Inverse);
            rig.Label($"{name}_hand_label", $"{name}: {fit & Fit.Swivel}").ShownBy(byHand).Under(handle);
        }
        else
        {
            rig.Drive(joint).ByChannels(handle);
        }

        return (joint, handle);
    }
}
