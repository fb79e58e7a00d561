using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R06;

public class Forklift : IRigDefinition
{
    private readonly record struct JointRow(string Name, string? Parent, float X, float Y, float Z, JointRole Role = JointRole.Deform);

    private readonly record struct ControlRow(string Name, string? Parent, string At, Channels Free);

    private readonly record struct LimitRow(string Control, char Kind, Axis Axis, float From, float To);

    private static readonly JointRow[] JointTable =
    [
        new("chassis",     null,        0,     0.5f,  0),
        new("mast",        "chassis",   0,     0.1f,  0.9f),
        new("carriage",    "mast",      0,     0.2f,  0.1f),
        new("fork_left",   "carriage",  0.3f, -0.2f,  0.05f),
        new("fork_right",  "carriage", -0.3f, -0.2f,  0.05f),
        new("load",        "carriage",  0,     0,     0.6f, JointRole.Helper),
        new("wheel_left",  "chassis",   0.5f, -0.2f,  0.7f),
        new("wheel_right", "chassis",  -0.5f, -0.2f,  0.7f),
        new("steer_left",  "chassis",   0.4f, -0.25f, -0.7f),
        new("steer_right", "chassis",  -0.4f, -0.25f, -0.7f),
        new("seat",        "chassis",   0,     0.4f, -0.1f, JointRole.Helper),
    ];

    private static readonly ControlRow[] ControlTable =
    [
        new("drive_main",   null,          "chassis",    Channels.Move | Channels.TurnY),
        new("mast_tilt",    "drive_main",  "mast",       Channels.TurnX),
        new("lift",         "mast_tilt",   "carriage",   Channels.MoveY | Channels.MoveX),
        new("fork_left_slide",  "lift",    "fork_left",  Channels.MoveX),
        new("fork_right_slide", "lift",    "fork_right", Channels.MoveX),
        new("steer_wheels", "drive_main",  "seat",       Channels.TurnY),
    ];

    private static readonly LimitRow[] LimitTable =
    [
        new("mast_tilt", 'T', Axis.X, -12, 6),
        new("lift", 'M', Axis.Y, 0, 2.8f),
        new("lift", 'M', Axis.X, -0.1f, 0.1f),
        new("steer_wheels", 'T', Axis.Y, -70, 70),
        new("fork_left_slide", 'M', Axis.X, -0.2f, 0.25f),
        new("fork_right_slide", 'M', Axis.X, -0.25f, 0.2f),
    ];

    private static readonly (string Joint, string Control, bool Offset)[] DriveTable =
    [
        ("chassis", "drive_main", false),
        ("mast", "mast_tilt", false),
        ("carriage", "lift", false),
        ("fork_left", "fork_left_slide", false),
        ("fork_right", "fork_right_slide", false),
        ("steer_left", "steer_wheels", true),
        ("steer_right", "steer_wheels", true),
    ];

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("forklift");
        var joints = new Dictionary<string, Joint>();
        foreach (var row in JointTable)
        {
            var at = new Vector3(row.X, row.Y, row.Z);
            joints[row.Name] = row.Parent is null
                ? skeleton.Root(row.Name, row.Role, at)
                : joints[row.Parent].Child(row.Name, row.Role, at);
        }

        var controls = new Dictionary<string, Control>();
        foreach (var row in ControlTable)
        {
            var control = rig.Control(row.Name).PlacedAt(joints[row.At]).Lock(Channels.All & ~row.Free);
            if (row.Parent != null)
                control.Under(controls[row.Parent]);
            controls.Add(row.Name, control);
        }

        foreach (var (name, kind, axis, from, to) in LimitTable)
        {
            if (kind == 'T')
                controls[name].LimitTurn(axis, from, to);
            else
                controls[name].LimitMove(axis, from, to);
        }

        foreach (var (joint, control, offset) in DriveTable)
        {
            var drive = rig.Drive(joints[joint]).ByChannels(controls[control]);
            if (offset)
                drive.KeepingOffset();
        }

        // the load rides the forks, or stays on the quay
        var quay = rig.Control("load_quay").PlacedAt(joints["load"]);
        var carried = rig.Control("load_carried").Under(controls["lift"]).PlacedAt(joints["load"]);
        var carry = controls["drive_main"].Switch("carry", 1f).AlsoOn(quay);
        rig.Blend(joints["load"]).From(carried, carry).From(quay, carry.Inverse);
    }
}
