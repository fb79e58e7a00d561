using System;
using System.Collections.Generic;
using System.Globalization;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R35;

public sealed class Forklift : IRigDefinition
{
    // name; parent; role; x; y; z
    private const string JointTable = """
        chassis;            ;helper;  0.00; 0.00;  0.00
        body;        chassis;deform;  0.00; 0.55;  0.00
        seat;           body;deform;  0.00; 0.60; -0.30
        steering;       body;deform;  0.00; 0.80;  0.25
        guard;          body;deform;  0.00; 1.70; -0.10
        beacon;        guard;deform;  0.00; 0.10; -0.30
        mast;           body;deform;  0.00;-0.30;  0.75
        inner_mast;     mast;deform;  0.00; 0.20;  0.02
        carriage; inner_mast;deform;  0.00; 0.10;  0.06
        fork_left;  carriage;deform;  0.25; 0.00;  0.05
        fork_right; carriage;deform; -0.25; 0.00;  0.05
        load;       carriage;helper;  0.00; 0.10;  0.60
        drive_left; chassis;deform;   0.45; 0.30;  0.60
        drive_right;chassis;deform;  -0.45; 0.30;  0.60
        steer_axle; chassis;deform;   0.00; 0.25; -0.65
        steer_left; steer_axle;deform; 0.40; 0.00; 0.00
        steer_right;steer_axle;deform;-0.40; 0.00; 0.00
        tilt_base_left;body;deform;   0.30;-0.10;  0.20
        tilt_rod_left;tilt_base_left;deform;0.00;0.05;0.25
        tilt_base_right;body;deform; -0.30;-0.10;  0.20
        tilt_rod_right;tilt_base_right;deform;0.00;0.05;0.25
        """;

    // control; joint; parent control; free channels; limit (axis from to)
    private const string ControlTable = """
        drive      |chassis    |           |MoveX MoveZ TurnY |
        suspension |body       |drive      |MoveY TurnX TurnZ |MoveY -0.05 0.05
        seat       |seat       |suspension |TurnY             |
        wheel      |steering   |suspension |TurnY             |TurnY -540 540
        roof       |guard      |suspension |                  |
        beacon     |beacon     |roof       |TurnY             |
        tilt       |mast       |suspension |TurnX             |TurnX -6 12
        lift       |inner_mast |tilt       |MoveY             |MoveY 0 1.6
        carriage   |carriage   |lift       |MoveX MoveY       |MoveX -0.1 0.1
        fork_left  |fork_left  |carriage   |MoveX             |MoveX -0.15 0.3
        fork_right |fork_right |carriage   |MoveX             |MoveX -0.3 0.15
        load       |load       |carriage   |Move Turn         |
        roll_left  |drive_left |drive      |TurnX             |
        roll_right |drive_right|drive      |TurnX             |
        axle       |steer_axle |drive      |TurnZ             |TurnZ -4 4
        steer_left |steer_left |axle       |TurnX TurnY       |TurnY -75 75
        steer_right|steer_right|axle       |TurnX TurnY       |TurnY -75 75
        """;

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("forklift");
        var joints = new Dictionary<string, Joint>();
        foreach (var row in Rows(JointTable, ';'))
        {
            var at = new Vector3(Number(row[3]), Number(row[4]), Number(row[5]));
            var role = Enum.Parse<JointRole>(row[2], ignoreCase: true);
            joints[row[0]] = row[1].Length == 0 ? skeleton.Root(row[0], role, at) : joints[row[1]].Child(row[0], role, at);
        }

        var controls = new Dictionary<string, Control>();
        foreach (var row in Rows(ControlTable, '|'))
        {
            var control = rig.Control($"c_{row[0]}").PlacedAt(joints[row[1]]);
            if (row[2] != "")
                control.Under(controls[row[2]]);
            control.Lock(Channels.All & ~Free(row[3]));
            Limit(control, row[4]);
            rig.Drive(joints[row[1]]).ByChannels(control);
            controls.Add(row[0], control);
        }

        // The tilt rods aren't worth a table of their own.
        foreach (var side in Side.Both)
        {
            rig.Drive(joints[$"tilt_base_{side}"]).ByChannels(controls["suspension"]).KeepingOffset();
            rig.Drive(joints[$"tilt_rod_{side}"]).ByChannels(controls["tilt"]).KeepingOffset();
        }
    }

    private static IEnumerable<string[]> Rows(string table, char separator)
    {
        foreach (var line in table.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            yield return line.Split(separator, StringSplitOptions.TrimEntries);
    }

    private static float Number(string text) => float.Parse(text, CultureInfo.InvariantCulture);

    private static Channels Free(string text)
    {
        var free = Channels.None;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            free |= Enum.Parse<Channels>(word);
        return free;
    }

    private static void Limit(Control control, string text)
    {
        if (text.Split(' ') is not [var channel, var from, var to])
            return;
        var axis = Enum.Parse<Axis>(channel[^1..]);
        if (channel.StartsWith("Move", StringComparison.Ordinal))
            control.LimitMove(axis, Number(from), Number(to));
        else
            control.LimitTurn(axis, Number(from), Number(to));
    }
}
