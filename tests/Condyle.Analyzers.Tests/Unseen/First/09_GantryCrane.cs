using System;
using System.Numerics;
using Condyle;

namespace Unseen.First.R09;

// Exported from the sheet "gantry_07", table "nodes". Change the sheet, not this file.
public sealed class GantryCrane : IRigDefinition
{
    private const int KindJoint = 1;
    private const int KindControl = 2;
    private const int KindGroup = 3;
    private const int KindDrive = 4;
    private const int KindBlend = 5;

    // id, kind, parent or target, place or source, x mm, y mm, z mm, flags
    private static readonly int[] Table =
    [
        100, KindJoint, 0, 0, 0, 0, 0, 0,
        101, KindJoint, 100, 0, 0, 12000, 0, 0,
        102, KindJoint, 101, 0, 0, 600, 0, 0,
        103, KindJoint, 102, 0, 0, -800, 0, 0,
        104, KindJoint, 103, 0, 0, -5200, 0, 0,
        105, KindJoint, 104, 0, 1200, -150, 0, 0,
        106, KindJoint, 104, 0, -1200, -150, 0, 0,
        110, KindJoint, 100, 0, 4500, 0, 2500, 0,
        111, KindJoint, 100, 0, 4500, 0, -2500, 0,
        112, KindJoint, 100, 0, -4500, 0, 2500, 0,
        113, KindJoint, 100, 0, -4500, 0, -2500, 0,
        200, KindGroup, 0, 100, 0, 0, 0, 0,
        201, KindControl, 200, 100, 0, 0, 0, 0x03B,
        202, KindControl, 201, 101, 0, 0, 0, 0x03F,
        203, KindControl, 202, 102, 0, 0, 0, 0x03E,
        204, KindControl, 203, 103, 0, 0, 0, 0x02F,
        205, KindControl, 204, 104, 0, 0, 0, 0x038,
        206, KindControl, 205, 105, 0, 0, 0, 0x007,
        207, KindControl, 205, 106, 0, 0, 0, 0x007,
        208, KindControl, 203, 104, 0, 0, 0, 0x000,
        210, KindControl, 201, 110, 0, 0, 0, 0x007,
        211, KindControl, 201, 111, 0, 0, 0, 0x007,
        212, KindControl, 201, 112, 0, 0, 0, 0x007,
        213, KindControl, 201, 113, 0, 0, 0, 0x007,
        300, KindDrive, 100, 201, 0, 0, 0, 0,
        301, KindDrive, 101, 202, 0, 0, 0, 0,
        302, KindDrive, 102, 203, 0, 0, 0, 0,
        303, KindDrive, 103, 204, 0, 0, 0, 0,
        304, KindBlend, 104, 205, 208, 0, 0, 0,
        305, KindDrive, 105, 206, 0, 0, 0, 0,
        306, KindDrive, 106, 207, 0, 0, 0, 0,
        310, KindDrive, 110, 210, 0, 0, 0, 0,
        311, KindDrive, 111, 211, 0, 0, 0, 0,
        312, KindDrive, 112, 212, 0, 0, 0, 0,
        313, KindDrive, 113, 213, 0, 0, 0, 0,
    ];

    private const int Columns = 8;

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("gantry_07");
        var joints = new Joint?[1000];
        var nodes = new Node?[1000];
        var controls = new Control[1000];
        var row = 0;

    next:
        if (row * Columns >= Table.Length)
            return;
        var id = Table[row * Columns];
        var a = Table[row * Columns + 2];
        var b = Table[row * Columns + 3];
        switch (Table[row * Columns + 1])
        {
            case KindJoint:
                var at = new Vector3(Table[row * Columns + 4], Table[row * Columns + 5], Table[row * Columns + 6]) / 1000f;
                var joint = joints[a] is { } above ? above.Child(NameOf(id), at: at) : skeleton.Root(NameOf(id), JointRole.Helper, at);
                joints[id] = joint;
                nodes[id] = joint;
                break;
            case KindControl:
                controls[id] = rig.Control(NameOf(id)).Under(nodes[a]!.Value).PlacedAt(nodes[b]!.Value).Lock((Channels)Table[row * Columns + 7]);
                nodes[id] = controls[id];
                break;
            case KindGroup:
                nodes[id] = rig.Group(NameOf(id)).PlacedAt(nodes[b]!.Value);
                break;
            case KindDrive:
                rig.Drive(nodes[a]!.Value).ByChannels(nodes[b]!.Value);
                break;
            case KindBlend:
                var other = Table[row * Columns + 4];
                var free = controls[b].Switch(NameOf(id));
                rig.Blend(nodes[a]!.Value).From(nodes[b]!.Value, free.Inverse).From(nodes[other]!.Value, free);
                break;
            default:
                throw new NotSupportedException($"Row {row} is of no known kind.");
        }

        row++;
        goto next;
    }

    private static string NameOf(int id)
    {
        switch (id)
        {
            case 100: return "rails";
            case 101: return "bridge";
            case 102: return "trolley";
            case 103: return "drum";
            case 104: return "spreader";
            case 105: return "twistlock_left";
            case 106: return "twistlock_right";
            case 110: return "wheel_front_left";
            case 111: return "wheel_back_left";
            case 112: return "wheel_front_right";
            case 113: return "wheel_back_right";
            case 200: return "gantry_group";
            case >= 201 and <= 207: return "c" + (id - 200).ToString("000") + "_" + NameOf(id - 101);
            case 208: return "c008_free_spreader";
            case >= 210 and < 300: return "c" + (id - 200).ToString("000") + "_" + NameOf(id - 100);
            case 304: return "free";
            default: return "n" + id;
        }
    }
}
