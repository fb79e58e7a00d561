using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R16;

/// <summary>Background character for the fish market. Everything that may change with the body type stands in the two tables.</summary>
public sealed class FishMarketWoman : IRigDefinition
{
    // joint | parent | role | x y z; a star stands for the side, x is the left one's
    private const string JointTable = """
        root       | -          | helper | 0     0     0
        pelvis     | root       | deform | 0     0.95  0
        waist      | pelvis     | deform | 0     0.12  0.01
        chest      | waist      | deform | 0     0.18  -0.01
        neck       | chest      | deform | 0     0.21  -0.02
        head       | neck       | deform | 0     0.10  0.02
        shoulder_* | chest      | deform | 0.17  0.15  -0.01
        elbow_*    | shoulder_* | deform | 0.24  -0.01 -0.02
        forearm_twist_* | elbow_* | twist | 0.11 0     0.01
        wrist_*    | forearm_twist_* | deform | 0.11 0 0.02
        hip_*      | pelvis     | deform | 0.09  -0.06 0
        knee_*     | hip_*      | deform | 0     -0.41 0.02
        ankle_*    | knee_*     | deform | 0     -0.40 -0.03
        """;

    // limb | root | tip | goal | pole | pole distance | starts in fk
    private const string LimbTable = """
        arm | shoulder | wrist | hand | elbow_pole | 0.4 | yes
        leg | hip      | ankle | foot | knee_pole  | 0.5 | no
        """;

    private static readonly string[] Torso = ["pelvis", "waist", "chest", "neck", "head"];

    public void Define(RigDraft rig)
    {
        var joints = ReadJoints(rig.Skeleton("fish_market_woman"));
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints["root"]);
        rig.Drive(joints["root"]).ByChannels(world);

        var torso = new Dictionary<string, Control>();
        var above = world;
        foreach (var name in Torso)
        {
            above = rig.Control($"turn_{name}").Under(above).PlacedAt(joints[name]);
            rig.Drive(joints[name]).ByChannels(above);
            torso[name] = above;
        }

        foreach (var row in Rows(LimbTable))
        {
            var limb = new LimbRow(row[0], row[1], row[2], row[3], row[4], Number(row[5]), row[6] == "yes");
            var hangsFrom = limb.Name == "arm" ? torso["chest"] : torso["pelvis"];
            foreach (var side in Side.Both)
                BuildLimb(rig, joints, limb, side, systems, world, hangsFrom);
        }
    }

    private static void BuildLimb(
        RigDraft rig, IReadOnlyDictionary<string, Joint> joints, LimbRow row, Side side, Group systems, Control world, Control hangsFrom)
    {
        var chain = rig.Chain(joints[$"{row.Root}_{side}"], joints[$"{row.Tip}_{side}"]).Without(JointRole.Twist);
        var root = rig.Control($"{row.Name}_root_{side}").Under(hangsFrom).PlacedAt(chain.Root).Lock(Channels.Turn);
        var parts = rig.Group($"{row.Name}_{side}_group").Under(systems).PlacedAt(root);
        rig.Drive(parts).ByMatrix(root);

        var ik = chain.Copy("ik").Under(parts);
        var goal = rig.Control($"{row.Goal}_{side}").Under(world).PlacedAt(chain.Tip);
        var pole = rig.Control($"{row.Pole}_{side}").Under(world).PlacedAt(ik.PolePoint(row.PoleDistance));
        rig.TwoBone(ik).Reach(goal).Face(pole);

        var fk = chain.Copy("fk").Under(parts);
        var turns = new List<Control> { root };
        foreach (var joint in chain)
        {
            turns.Add(rig.Control($"turn_{joint}").Under(turns[^1]).PlacedAt(joint).Lock(Channels.Move));
            rig.Drive(fk.Of(joint)).ByChannels(turns[^1]);
        }

        var useFk = goal.Switch("fk", atRest: row.StartsInFk ? 1 : 0).AlsoOn(turns.Last());
        rig.Blend(chain).From(ik, useFk.Inverse).From(fk, useFk);
    }

    private static Dictionary<string, Joint> ReadJoints(Skeleton skeleton)
    {
        var joints = new Dictionary<string, Joint>();
        foreach (var row in Rows(JointTable))
        {
            var numbers = row[3].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Number).ToArray();
            var role = Enum.Parse<JointRole>(row[2], ignoreCase: true);
            Side?[] sides = row[0].Contains('*') ? [.. Side.Both] : [null];
            foreach (var side in sides)
            {
                string Named(string cell) => cell.Replace("*", side?.ToString());
                var at = new Vector3(numbers[0] * (side?.Sign ?? 1f), numbers[1], numbers[2]);
                var name = Named(row[0]);
                joints[name] = row[1] == "-" ? skeleton.Root(name, role, at) : joints[Named(row[1])].Child(name, role, at);
            }
        }

        return joints;
    }

    private static IEnumerable<string[]> Rows(string table) =>
        from line in table.Split('\n')
        let text = line.Trim()
        where text.Length > 0
        select text.Split('|', StringSplitOptions.TrimEntries);

    private static float Number(string text) => float.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private sealed record LimbRow(string Name, string Root, string Tip, string Goal, string Pole, float PoleDistance, bool StartsInFk);
}
