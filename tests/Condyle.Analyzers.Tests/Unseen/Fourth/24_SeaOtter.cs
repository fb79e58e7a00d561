using System;
using System.Collections.Generic;
using System.Globalization;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R24;

public sealed class SeaOtter : IRigDefinition
{
    private const string Table = """
        # name      parent    x      y      z     | what
        pelvis      -         0      0.2   -0.2   | h
        waist       pelvis    0      0.02   0.15  | h
        chest       waist     0      0.02   0.15  | h
        head        chest     0      0.1    0.12  | h
        tail        pelvis    0      0     -0.15  | h
        shoulder_?  chest     0.07  -0.02   0     |
        elbow_?     shoulder_? 0.02 -0.08  -0.03  |
        wrist_?     elbow_?   0     -0.07   0.03  | ik
        hip_?       pelvis    0.06  -0.02   0     |
        knee_?      hip_?     0.02  -0.07   0.03  |
        ankle_?     knee_?    0     -0.08  -0.04  | ik
        """;

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("sea_otter");
        var joints = new Dictionary<string, Joint>();
        var parents = new Dictionary<string, string>();
        var controls = new Dictionary<string, Control>();
        var water = rig.Control("water");

        foreach (var line in Table.AsSpan().EnumerateLines())
        {
            var row = line.Trim();
            if (row.IsEmpty || row[0] == '#')
                continue;
            var bar = row.IndexOf('|');
            var what = row[(bar + 1)..].Trim();
            var cells = row[..bar];
            var name = Next(ref cells);
            var parent = Next(ref cells);
            var at = new Vector3(Number(Next(ref cells)), Number(Next(ref cells)), Number(Next(ref cells)));

            if (name.IndexOf('?') < 0)
            {
                Add(name.ToString(), parent.ToString(), at, what);
                continue;
            }

            foreach (var side in Side.Both)
            {
                var n = name.ToString().Replace("?", side.ToString());
                var p = parent.ToString().Replace("?", side.ToString());
                Add(n, p, at with { X = at.X * side.Sign }, what);
            }
        }

        void Add(string name, string parent, Vector3 at, ReadOnlySpan<char> what)
        {
            var joint = parent == "-" ? skeleton.Root(name, at: at) : joints[parent].Child(name, at: at);
            joints.Add(name, joint);
            parents.Add(name, parent);
            if (what is "h")
            {
                var control = rig.Control("turn_" + name).PlacedAt(joint);
                control.Under(parent == "-" ? water : controls[parent]);
                controls.Add(name, control);
                rig.Drive(joint).ByChannels(control);
            }
            else if (what.SequenceEqual("ik"))
            {
                var middle = parents[name];
                Limb(joints[parents[middle]], joint, controls[parents[parents[middle]]]);
            }
        }

        void Limb(Joint from, Joint to, Control above)
        {
            var under = to.Name.LastIndexOf('_');
            var (part, side) = (to.Name[..under], to.Name[(under + 1)..]);
            var chain = rig.Chain(from, to);
            var group = rig.Group($"{part}_{side}_group").Under(above).PlacedAt(from);
            ReadOnlySpan<Copy> copies = [chain.Copy("ik").Under(group), chain.Copy("fk").Under(group)];
            var goal = rig.Control($"{part}_goal_{side}").Under(water).PlacedAt(to);
            rig.TwoBone(copies[0]).Reach(goal).Face(rig.Control($"{part}_pole_{side}").Under(water).PlacedAt(copies[0].PolePoint(0.15f)));
            Node up = group;
            for (var i = 0; i < chain.Count; i++)
            {
                var turn = rig.Control($"turn_{chain[i].Name}").Under(up).PlacedAt(chain[i]);
                rig.Drive(copies[1].Of(chain[i])).ByChannels(turn);
                up = turn;
            }

            var sw = goal.Switch("fk");
            ReadOnlySpan<Weight> weights = [sw.Inverse, sw];
            var blend = rig.Blend(chain);
            for (var i = 0; i < copies.Length; i++)
                blend.From(copies[i], weights[i]);
        }
    }

    private static ReadOnlySpan<char> Next(ref ReadOnlySpan<char> rest)
    {
        rest = rest.TrimStart();
        var end = rest.IndexOf(' ');
        if (end < 0)
            end = rest.Length;
        var cell = rest[..end];
        rest = rest[end..];
        return cell;
    }

    private static float Number(ReadOnlySpan<char> cell) => float.Parse(cell, NumberStyles.Float, CultureInfo.InvariantCulture);
}
