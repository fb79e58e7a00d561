using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Numerics;
using System.Text.RegularExpressions;
using Condyle;

namespace Unseen.Fourth.R16;

public class Pelican : IRigDefinition
{
    private static readonly string[] Paths =
    {
        "pelvis@0,0.5,0",
        "pelvis/chest@0,0.05,0.25",
        "pelvis/chest/neck@0,0.15,0.1",
        "pelvis/chest/neck/head@0,0.2,0.05",
        "pelvis/chest/neck/head/pouch@0,-0.05,0.15",
        "pelvis/chest/shoulder_*@0.1,0.02,0",
        "pelvis/chest/shoulder_*/elbow_*@0.3,0.02,-0.08",
        "pelvis/chest/shoulder_*/elbow_*/wrist_*@0.35,-0.02,0.09",
        "pelvis/tail@0,0,-0.2",
    };

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("pelican");
        var joints = new Dictionary<string, Joint>();
        foreach (var text in Paths)
        {
            var cut = text.IndexOf('@');
            var path = text.Substring(0, cut);
            var at = text[(cut + 1)..].Split(',').Select(n => float.Parse(n, CultureInfo.InvariantCulture)).ToArray();
            foreach (var side in path.Contains('*') ? Side.Both : new[] { Side.Left })
            {
                var full = path.Replace("*", side.ToString());
                var parts = full.Split('/');
                var name = parts.Last();
                var place = new Vector3(path.EndsWith('*') ? at[0] * side.Sign : at[0], at[1], at[2]);
                joints[name] = parts.Length == 1
                    ? skeleton.Root(name, at: place)
                    : joints[parts[parts.Length - 2]].Child(name, at: place);
            }
        }

        var handles = new Dictionary<string, Control>();
        foreach (var name in "pelvis chest neck head pouch tail".Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var handle = rig.Control(string.Concat("turn_", name)).PlacedAt(joints[name]);
            var path = Paths.First(p => p.Split('@')[0].EndsWith(name, StringComparison.Ordinal)).Split('@')[0];
            var slash = path.LastIndexOf('/');
            if (slash > 0)
                handle = handle.Under(handles[path[..slash].Split('/')[^1]]);
            rig.Drive(joints[name]).ByChannels(handle);
            handles[name] = handle;
        }

        var world = rig.Control("world");
        handles["pelvis"].Under(world);
        foreach (var side in Side.Both)
        {
            var wing = rig.Chain(joints["shoulder_" + side], joints["wrist_" + side]);
            var group = rig.Group(string.Join('_', "wing", side, "group")).Under(handles["chest"]).PlacedAt(wing.Root);
            var ik = wing.Copy("ik").Under(group);
            var fk = wing.Copy("fk").Under(group);
            var tip = rig.Control(Title(wing.Tip.Name, "goal")).Under(world).PlacedAt(wing.Tip);
            rig.TwoBone(ik).Reach(tip).Face(rig.Control(Title(wing[1].Name, "pole")).Under(world).PlacedAt(ik.PolePoint(0.5f)));
            Node above = group;
            foreach (var joint in wing)
            {
                var turn = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(turn);
                above = turn;
            }

            var fkAmount = tip.Switch("FK".ToLowerInvariant(), side.ToString().StartsWith('l') ? 0f : 1f);
            rig.Blend(wing).From(ik, fkAmount.Inverse).From(fk, fkAmount);
            foreach (var word in new[] { "ik", "fk" })
                rig.Label($"{word}_wing_label_{side}", word.ToUpper(CultureInfo.InvariantCulture).PadLeft(4).Trim())
                    .ShownBy(word == "fk" ? fkAmount : fkAmount.Inverse);
        }
    }

    // wrist_left + goal = goal_wrist_left
    private static string Title(string joint, string what) => Regex.Replace(joint, "^(.+)_(left|right)$", what + "_$1_$2");
}
