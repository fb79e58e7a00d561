using System;
using System.Collections.Generic;
using System.Globalization;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R27;

/// <summary>The slewing crane at the end of the quay. The table below is pasted from the modeller's sheet.</summary>
public sealed class QuayCrane : IRigDefinition
{
    private const string JointTable = """
        # name      | above     |   x   |   y   |   z   | role
        base        | -         |  0    |  0    |  0    | helper
        turntable   | base      |  0    |  3.2  |  0    | deform
        cabin       | turntable |  0.9  |  0.6  |  0.4  | deform
        boom        | turntable |  0    |  1.1  |  0.8  | deform
        jib         | boom      |  0    |  6.0  |  5.0  | deform
        jib_head    | jib       |  0    | -1.5  |  6.0  | deform
        hoist       | jib_head  |  0    | -0.4  |  0.1  | deform
        hook        | hoist     |  0    | -4.0  |  0    | deform
        """;

    private const string LimitTable = """
        boom: turn x -10 60
        jib: turn x -95 15
        hoist: move y -9 2
        cabin: turn y -5 5
        """;

    public void Define(RigDraft rig)
    {
        var joints = ReadJoints(rig.Skeleton("quay_crane"));
        var systems = rig.Group("systems_group");
        var world = rig.Control("world");
        var controls = new Dictionary<string, Control>();

        foreach (var name in new[] { "turntable", "cabin", "boom", "jib", "hoist", "hook" })
        {
            var control = rig.Control("turn_" + name).PlacedAt(joints[name]);
            var above = name switch
            {
                "turntable" => "",
                "cabin" or "boom" => "turntable",
                "jib" => "boom",
                "hoist" => "jib",
                _ => "hoist",
            };
            control = above.Length == 0 ? control.Under(world) : control.Under(controls[above]);
            controls.Add(name, control);
        }

        foreach (var row in LimitTable.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = row.IndexOf(':');
            var words = row[(colon + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var axis = Enum.Parse<Axis>(words[1], ignoreCase: true);
            var (from, to) = (Number(words[2]), Number(words[3]));
            var control = controls[row[..colon].Trim()];
            if (words[0] == "turn")
                control.LimitTurn(axis, from, to);
            else
                control.LimitMove(axis, from, to);
        }

        var arm = rig.Chain(joints["boom"], joints["jib_head"]);
        var load = rig.Control("load").Under(world).PlacedAt(arm.Tip);
        var parts = rig.Group("boom_group").Under(systems).PlacedAt(joints["turntable"]);
        rig.Drive(parts).ByMatrix(controls["turntable"]);
        var ik = arm.Copy("ik").Under(parts);
        var fk = arm.Copy("fk").Under(parts);
        rig.TwoBone(ik).Reach(load);
        rig.Drive(fk.Of(joints["boom"])).ByChannels(controls["boom"]);
        rig.Drive(fk.Of(joints["jib"])).ByChannels(controls["jib"]);
        var reach = load.Switch("ik");
        rig.Blend(arm).From(fk, reach.Inverse).From(ik, reach);

        rig.Drive(joints["turntable"]).ByChannels(controls["turntable"]);
        rig.Drive(joints["cabin"]).ByChannels(controls["cabin"]);
        rig.Drive(joints["hoist"]).ByChannels(controls["hoist"]).KeepingOffset();
        rig.Drive(joints["hook"]).ByChannels(controls["hook"]);
        rig.Label("load_label", "LOAD").Under(load).ShownBy(reach);
    }

    private static Dictionary<string, Joint> ReadJoints(Skeleton skeleton)
    {
        var made = new Dictionary<string, Joint>(StringComparer.Ordinal);
        foreach (var line in JointTable.Split('\n'))
        {
            if (line.StartsWith('#') || string.IsNullOrWhiteSpace(line))
                continue;
            var cells = line.Split('|');
            var name = cells[0].Trim();
            var above = cells[1].Trim();
            var at = new Vector3(Number(cells[2]), Number(cells[3]), Number(cells[4]));
            var role = cells[5].Trim() == "helper" ? JointRole.Helper : JointRole.Deform;
            made[name] = above == "-" ? skeleton.Root(name, role, at) : made[above].Child(name, role, at);
        }

        return made;
    }

    private static float Number(string text) => float.Parse(text.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture);
}
