using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R42;

/// <summary>The pilot who comes aboard up the rope ladder: a whole figure from two dictionaries.</summary>
public sealed class HarbourPilot : IRigDefinition
{
    // Left side only; "~" stands for the side.
    private static readonly Dictionary<string, (string? Above, float X, float Y, float Z)> Body = new()
    {
        ["wrist_~"] = ("elbow_~", 0.02f, -0.24f, 0.03f),
        ["elbow_~"] = ("shoulder_~", 0.05f, -0.27f, -0.03f),
        ["shoulder_~"] = ("collar_~", 0.13f, -0.01f, -0.02f),
        ["collar_~"] = ("chest", 0.05f, 0.18f, 0),
        ["head"] = ("neck", 0, 0.1f, 0.02f),
        ["neck"] = ("chest", 0, 0.24f, 0),
        ["chest"] = ("waist", 0, 0.2f, 0),
        ["waist"] = ("pelvis", 0, 0.12f, 0),
        ["toes_~"] = ("ankle_~", 0, -0.07f, 0.13f),
        ["ankle_~"] = ("knee_~", 0, -0.41f, -0.03f),
        ["knee_~"] = ("hip_~", 0, -0.42f, 0.03f),
        ["hip_~"] = ("pelvis", 0.1f, -0.04f, 0),
        ["pelvis"] = (null, 0, 0.98f, 0),
    };

    private static readonly Dictionary<string, string[]> Limbs = new()
    {
        ["arm"] = ["shoulder_~", "elbow_~", "wrist_~"],
        ["leg"] = ["hip_~", "knee_~", "ankle_~"],
    };

    private static readonly IReadOnlyDictionary<string, string> Goals = new Dictionary<string, string> { { "arm", "hand" }, { "leg", "foot" } };

    public void Define(RigDraft rig)
    {
        var joints = Declare(rig.Skeleton("harbour_pilot"));
        var world = rig.Control("world");
        var systems = rig.Group("systems_group");
        var inLimbs = Limbs.Values.SelectMany(names => names).ToHashSet();
        var controls = new SortedDictionary<string, Control>(System.StringComparer.Ordinal);

        foreach (var (name, row) in Body.Reverse())
        {
            if (inLimbs.Contains(name))
                continue;
            foreach (var real in Sided(name))
            {
                var above = row.Above is null ? world : controls.GetValueOrDefault(SideOf(row.Above, real), world);
                if (row.Above is not null && inLimbs.Contains(row.Above))
                {
                    var holder = rig.Group($"{real}_group").Under(systems).PlacedAt(joints[SideOf(row.Above, real)]);
                    rig.Drive(holder).ByMatrix(joints[SideOf(row.Above, real)]);
                    rig.Drive(joints[real]).ByChannels(
                        controls[real] = rig.Control("turn_" + real).Under(holder).PlacedAt(joints[real]).LimitTurn(Axis.X, -50, 30));
                }
                else
                {
                    rig.Drive(joints[real]).ByChannels(controls[real] = rig.Control("turn_" + real).Under(above).PlacedAt(joints[real]));
                }
            }
        }

        foreach (var (limb, names) in Limbs)
        {
            foreach (var side in Side.Both)
            {
                var bones = names.Select(name => joints[name.Replace("~", side.ToString())]).ToList();
                var above = Body[names[0]].Above!;
                Limb(rig, limb, side, bones, controls[above.Replace("~", $"{side}")], world, systems);
            }
        }
    }

    private static Dictionary<string, Joint> Declare(Skeleton skeleton)
    {
        // The table is in no order that could be declared as it stands: go round until nothing is left.
        var joints = new Dictionary<string, Joint>();
        var left = Body.Keys.ToList();
        while (left.Count > 0)
        {
            var before = left.Count;
            left.RemoveAll(name =>
            {
                var (above, x, y, z) = Body[name];
                if (above is not null && !Sided(above).All(joints.ContainsKey))
                    return false;
                foreach (var real in Sided(name))
                {
                    var at = new Vector3(real.EndsWith("_right") ? -x : x, y, z);
                    joints[real] = above is null ? skeleton.Root(real, at: at) : joints[SideOf(above, real)].Child(real, at: at);
                }

                return true;
            });
            if (left.Count == before)
                break;
        }

        return joints;
    }

    private static void Limb(RigDraft rig, string limb, Side side, List<Joint> bones, Control above, Control world, Group systems)
    {
        var chain = rig.Chain(bones.First(), bones.Last());
        var parts = rig.Group($"{limb}_{side}_group").Under(systems).PlacedAt(above);
        rig.Drive(parts).ByMatrix(above);

        var copies = new[] { "ik", "fk" }.ToDictionary(tag => tag, tag => chain.Copy(tag).Under(parts));
        var goal = rig.Control($"{Goals[limb]}_{side}").Under(world).PlacedAt(chain.Tip);
        var pole = rig.Control($"{limb}_pole_{side}").Under(world).PlacedAt(copies["ik"].PolePoint(0.45f)).Lock(Channels.Turn);
        rig.TwoBone(copies["ik"]).Reach(goal).Face(pole);

        var up = above;
        bones.ForEach(bone => rig.Drive(copies["fk"].Of(bone)).ByChannels(up = rig.Control($"turn_{bone}").Under(up).PlacedAt(bone).Lock(Channels.Move)));

        var amount = goal.Switch("fk").AlsoOn(up);
        var weights = new Dictionary<string, Weight> { ["ik"] = amount.Inverse, ["fk"] = amount };
        var blend = rig.Blend(chain);
        foreach (var (tag, copy) in copies)
        {
            blend = blend.From(copy, weights[tag]);
            rig.Label($"{tag}_{limb}_label_{side}", tag.ToUpper()).Under(goal).ShownBy(weights[tag]);
        }
    }

    private static IEnumerable<string> Sided(string name) => name.Contains('~') ? Side.Both.Select(side => name.Replace("~", side.ToString())) : [name];

    private static string SideOf(string name, string like) => name.Replace("~", like[(like.LastIndexOf('_') + 1)..]);
}
