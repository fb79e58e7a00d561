using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R07;

/// <summary>The quay dog. Everything that a modeller may want to change stands in the tables below.</summary>
public sealed class QuayDog : IRigDefinition
{
    // joint          under       role    x      y      z
    private const string Bones = """
        pelvis        -           deform  0      0.50  -0.25
        waist         pelvis      deform  0      0.02   0.16
        chest         waist       deform  0      0.01   0.20
        neck          chest       deform  0      0.08   0.12
        head          neck        deform  0      0.14   0.08
        jaw           head        deform  0     -0.03   0.05
        ear_*         head        deform  0.04   0.06  -0.01
        tail_1        pelvis      deform  0      0.03  -0.08
        tail_2        tail_1      deform  0      0.04  -0.08
        tail_3        tail_2      deform  0      0.05  -0.07
        tail_4        tail_3      deform  0      0.05  -0.06
        collar_ring   neck        helper  0     -0.04   0.05
        shoulder_*    chest       deform  0.08  -0.02   0.05
        elbow_*       shoulder_*  deform  0     -0.17  -0.05
        elbow_roll_*  elbow_*     twist   0     -0.08   0
        wrist_*       elbow_*     deform  0     -0.18   0.03
        paw_front_*   wrist_*     deform  0     -0.08   0.04
        hip_*         pelvis      deform  0.07  -0.02   0
        knee_*        hip_*       deform  0     -0.18   0.06
        ankle_*       knee_*      deform  0     -0.16  -0.09
        paw_back_*    ankle_*     deform  0     -0.10   0.05
        """;

    // control        under       at            locks  
    private const string Handles = """
        body          world       pelvis        -
        waist_turn    body        waist         move
        breast        waist_turn  chest         move
        neck_turn     breast      neck          move
        nod           neck_turn   head          -
        bark          nod         jaw           move
        flick_*       nod         ear_*         move
        wag_1         body        tail_1        move
        wag_2         wag_1       tail_2        move
        wag_3         wag_2       tail_3        move
        wag_4         wag_3       tail_4        move
        lead          neck_turn   collar_ring   turn
        """;

    private static readonly (string Name, string Root, string Tip, string Above, float Pole, float AtRest)[] Legs =
    [
        ("front", "shoulder", "wrist", "breast", 0.30f, 1f),
        ("back", "hip", "ankle", "body", 0.35f, 1f),
    ];

    private static readonly Dictionary<string, Channels> Locks = new()
    {
        ["-"] = Channels.None,
        ["move"] = Channels.Move,
        ["turn"] = Channels.Turn,
    };

    public void Define(RigDraft rig)
    {
        var joints = new Dictionary<string, Joint>();
        var skeleton = rig.Skeleton("quay_dog");
        foreach (var row in Rows(Bones))
        {
            var role = Enum.Parse<JointRole>(row[2], ignoreCase: true);
            var at = new Vector3(Number(row[3]), Number(row[4]), Number(row[5]));
            joints[row[0]] = row[1] == "-" ? skeleton.Root(row[0], role, at) : joints[row[1]].Child(row[0], role, at);
        }

        var controls = new Dictionary<string, Control> { ["world"] = rig.Control("world") };
        foreach (var row in Rows(Handles))
        {
            var control = rig.Control(row[0]).Under(controls[row[1]]).PlacedAt(joints[row[2]]);
            if (Locks[row[3]] is not Channels.None and var locked)
                control.Lock(locked);
            rig.Drive(joints[row[2]]).ByChannels(control);
            controls.Add(row[0], control);
        }

        var systems = rig.Group("systems_group");
        foreach (var (name, root, tip, above, pole, atRest) in Legs)
            foreach (var side in Side.Both)
            {
                var chain = rig.Chain(joints[$"{root}_{side}"], joints[$"{tip}_{side}"]).Without(JointRole.Twist);
                var group = rig.Group($"{name}_leg_{side}_group").Under(systems).PlacedAt(chain.Root);
                rig.Drive(group).ByMatrix(controls[above]).KeepingOffset();

                var goal = rig.Control($"paw_{name}_{side}").Under(controls["world"]).PlacedAt(chain.Tip);
                var facing = rig.Control($"pole_{name}_{side}").Under(controls["world"]).PlacedAt(chain.PolePoint(pole));
                var copies = new[] { "ik", "fk" }.ToDictionary(tag => tag, tag => chain.Copy(tag).Under(group));
                rig.TwoBone(copies["ik"]).Reach(goal).Face(facing);

                Node over = controls[above];
                foreach (var joint in chain)
                {
                    var turn = rig.Control($"turn_{joint.Name}").Under(over).PlacedAt(joint);
                    rig.Drive(copies["fk"].Of(joint)).ByChannels(turn);
                    over = turn;
                }

                var ik = goal.Switch("ik", atRest);
                var weights = new Dictionary<string, Weight> { ["ik"] = ik, ["fk"] = ik.Inverse };
                var blend = rig.Blend(chain);
                foreach (var (tag, copy) in copies)
                {
                    blend = blend.From(copy, weights[tag]);
                    rig.Label($"{tag}_{name}_label_{side}", tag.ToUpperInvariant()).Under(goal).ShownBy(weights[tag]);
                }

                var pad = joints[$"paw_{name}_{side}"];
                rig.Drive(pad).ByChannels(rig.Control($"pad_{name}_{side}").Under(goal).PlacedAt(pad));
            }
    }

    private static IEnumerable<string[]> Rows(string table)
    {
        foreach (var line in table.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var cells = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (!cells[0].Contains('*'))
            {
                yield return cells;
                continue;
            }

            foreach (var side in Side.Both)
            {
                var own = cells.Select(cell => cell.Replace("*", side.ToString())).ToArray();
                if (own.Length == 6)
                    own[3] = (Number(own[3]) * side.Sign).ToString(CultureInfo.InvariantCulture);
                yield return own;
            }
        }
    }

    private static float Number(string cell) => float.Parse(cell, CultureInfo.InvariantCulture);
}
