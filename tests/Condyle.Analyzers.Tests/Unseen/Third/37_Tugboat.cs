using System;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R37;

public enum Piece
{
    Hull,
    Wheelhouse,
    WheelhouseDoor,
    SteeringWheel,
    Funnel,
    FunnelCap,
    RadarMast,
    RadarScanner,
    FireMonitorBase,
    FireMonitorNozzle,
    TowWinchDrum,
    TowHook,
    CraneSlew,
    CraneBoom,
    CraneJib,
    CraneHook,
    RudderLeft,
    RudderRight,
    ScrewLeft,
    ScrewRight,
    FenderBow,
    FenderLeft,
    FenderRight,
    Flag,
    FlagTip,
    Anchor,
}

public enum Motion
{
    Free,
    Spin,
    Swing,
    Slide,
    Fixed,
}

public static class PieceFacts
{
    public static Piece? Parent(this Piece piece) => piece switch
    {
        Piece.Hull => null,
        Piece.WheelhouseDoor or Piece.SteeringWheel or Piece.RadarMast => Piece.Wheelhouse,
        Piece.FunnelCap => Piece.Funnel,
        Piece.RadarScanner => Piece.RadarMast,
        Piece.FireMonitorBase => Piece.Wheelhouse,
        Piece.FireMonitorNozzle => Piece.FireMonitorBase,
        Piece.CraneBoom => Piece.CraneSlew,
        Piece.CraneJib => Piece.CraneBoom,
        Piece.CraneHook => Piece.CraneJib,
        Piece.FlagTip => Piece.Flag,
        _ => Piece.Hull,
    };

    public static Vector3 At(this Piece piece) => piece switch
    {
        Piece.Hull => new(0f, 0.4f, 0f),
        Piece.Wheelhouse => new(0f, 2.2f, 3f),
        Piece.WheelhouseDoor => new(1.1f, 0.2f, -0.8f),
        Piece.SteeringWheel => new(0f, 1f, 0.7f),
        Piece.Funnel => new(0f, 2f, 0f),
        Piece.FunnelCap => new(0f, 1.6f, -0.1f),
        Piece.RadarMast => new(0f, 2.3f, -0.2f),
        Piece.RadarScanner => new(0f, 1.2f, 0.3f),
        Piece.FireMonitorBase => new(0.8f, 2.1f, 0.6f),
        Piece.FireMonitorNozzle => new(0f, 0.3f, 0.2f),
        Piece.TowWinchDrum => new(0f, 1.7f, -2f),
        Piece.TowHook => new(0f, 1.6f, -3.2f),
        Piece.CraneSlew => new(-1.2f, 1.8f, -1f),
        Piece.CraneBoom => new(0f, 0.9f, 0f),
        Piece.CraneJib => new(0f, 0.4f, -1.6f),
        Piece.CraneHook => new(0f, -0.3f, -1.5f),
        Piece.RudderLeft or Piece.ScrewLeft => new(0.9f, -1f, piece is Piece.RudderLeft ? -5.5f : -5f),
        Piece.RudderRight or Piece.ScrewRight => new(-0.9f, -1f, piece is Piece.RudderRight ? -5.5f : -5f),
        Piece.FenderBow => new(0f, 1.2f, 6.5f),
        Piece.FenderLeft => new(2.6f, 0.9f, 0f),
        Piece.FenderRight => new(-2.6f, 0.9f, 0f),
        Piece.Flag => new(0f, 2.8f, -5.8f),
        Piece.FlagTip => new(0f, 0f, -0.6f),
        Piece.Anchor => new(1.4f, 1.1f, 5.6f),
        _ => throw new ArgumentOutOfRangeException(nameof(piece), piece, "no place for this piece"),
    };

    public static Motion Motion(this Piece piece) => piece switch
    {
        Piece.SteeringWheel or Piece.RadarScanner or Piece.TowWinchDrum or Piece.ScrewLeft or Piece.ScrewRight => R37.Motion.Spin,
        Piece.WheelhouseDoor or Piece.FunnelCap or Piece.RudderLeft or Piece.RudderRight or Piece.FireMonitorNozzle => R37.Motion.Swing,
        Piece.Anchor => R37.Motion.Slide,
        Piece.Funnel or Piece.RadarMast => R37.Motion.Fixed,
        _ => R37.Motion.Free,
    };

    public static string Label(this Piece piece) => piece switch
    {
        Piece.RudderLeft => "rudder_left",
        Piece.RudderRight => "rudder_right",
        Piece.ScrewLeft => "screw_left",
        Piece.ScrewRight => "screw_right",
        Piece.FenderLeft => "fender_left",
        Piece.FenderRight => "fender_right",
        _ => piece.ToString().ToLowerInvariant(),
    };
}

public sealed class Tugboat : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var pieces = Enum.GetValues<Piece>();
        var joints = new Joint[pieces.Length];
        var controls = new Control[pieces.Length];

        var skeleton = rig.Skeleton("tugboat");
        foreach (var piece in pieces)
        {
            joints[(int)piece] = piece.Parent() switch
            {
                null => skeleton.Root(piece.Label(), at: piece.At()),
                { } parent => joints[(int)parent].Child(piece.Label(), Role(piece), piece.At()),
            };
        }

        var world = rig.Control("world");
        foreach (var piece in pieces)
        {
            if (piece is Piece.CraneSlew or Piece.CraneBoom or Piece.CraneJib)
                continue;
            var control = rig.Control($"ctl_{piece.Label()}").PlacedAt(joints[(int)piece]);
            control = piece switch
            {
                Piece.Hull => control.Under(world),
                Piece.CraneHook => control.Under(controls[(int)Piece.Hull]),
                _ => control.Under(controls[(int)piece.Parent()!.Value]),
            };
            control = piece.Motion() switch
            {
                Motion.Spin => control.Lock(Channels.Move | Channels.TurnX | Channels.TurnY),
                Motion.Swing => control.Lock(Channels.Move | Channels.TurnX | Channels.TurnZ).LimitTurn(Axis.Y, -70f, 70f),
                Motion.Slide => control.Lock(Channels.Turn).LimitMove(Axis.Y, -30f, 0f),
                Motion.Fixed => control.Lock(Channels.All),
                _ => control,
            };
            controls[(int)piece] = control;
            if (piece != Piece.CraneHook)
                rig.Drive(joints[(int)piece]).ByChannels(control);
        }

        Crane(rig, joints, controls);
    }

    private static JointRole Role(Piece piece) => piece switch
    {
        Piece.TowHook or Piece.CraneHook => JointRole.Helper,
        _ => JointRole.Deform,
    };

    private static void Crane(RigDraft rig, Joint[] joints, Control[] controls)
    {
        var slew = rig.Control("ctl_craneslew").Under(controls[(int)Piece.Hull]).PlacedAt(joints[(int)Piece.CraneSlew]).Lock(Channels.Move);
        rig.Drive(joints[(int)Piece.CraneSlew]).ByChannels(slew);

        var arm = rig.Chain(joints[(int)Piece.CraneBoom], joints[(int)Piece.CraneHook]).Bending(Vector3.UnitY);
        var holder = rig.Group("crane_group").Under(slew);
        var ik = arm.Copy("ik").Under(holder);
        var pole = rig.Control("ctl_crane_pole").Under(slew).PlacedAt(ik.PolePoint(2f));
        rig.TwoBone(ik).Reach(controls[(int)Piece.CraneHook]).Face(pole);
        rig.Blend(arm).From(ik, 1f);
    }
}
