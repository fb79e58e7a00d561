using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Numerics;
using System.Text;
using Condyle;

namespace Unseen.First.R54;

/// <summary>A cormorant that dries its wings. What a feather does is asked from its name, like in the old scripts.</summary>
public sealed class DryingCormorant : IRigDefinition
{
    private static readonly string[] FEATHERS =
    [
        "wing_left_primary_04", "wing_left_primary_02", "wing_left_primary_03", "wing_left_primary_01", "wing_left_secondary_02", "wing_left_secondary_01",
        "wing_right_primary_01", "wing_right_primary_02", "wing_right_primary_03", "wing_right_primary_04",
        "wing_right_secondary_01", "wing_right_secondary_02",
        "tail_center_rect_02", "tail_center_rect_01", "tail_center_rect_03",
    ];

    private static readonly Dictionary<string, (double Span, double Fan, string[] Rides)> ROWS = new()
    {
        ["primary"] = (0.16, 42.5, ["wrist", "tip"]),
        ["secondary"] = (0.1, 25, ["elbow", "wrist"]),
        ["rect"] = (0.12, 30, ["tail"]),
    };

    private Dictionary<string, Joint> _joints = [];
    private readonly Dictionary<string, Control> _controls = [];

    public void Define(RigDraft rig)
    {
        _joints = Skeleton(rig.Skeleton("drying_cormorant")).ToDictionary(j => j.Name, j => j);
        foreach (var (n, j) in _joints)
            _controls[n] = Handle(rig, n, j, _parents.GetValueOrDefault(n));

        // {("wing", "left"): {"primary": [...], "secondary": [...]}, ...}, natural order inside
        var by_place = FEATHERS
            .Select(f => (name: f, bits: f.Split('_')))
            .GroupBy(f => (f.bits[0], f.bits[1]))
            .ToDictionary(g => g.Key, g => g.GroupBy(f => f.bits[2], f => f.name).ToDictionary(r => r.Key, r => r.OrderBy(n => int.Parse(n[^2..])).ToList()));

        foreach (var ((part, side), rows) in by_place)
        {
            foreach (var (row, names) in rows)
            {
                for (int i = 0; i < names.Count; i++)
                    Feather(rig, names[i], part, side, row, t: names.Count > 1 ? i / (double)(names.Count - 1) : 0.5);
            }
        }

        Spread(rig);
    }

    private readonly Dictionary<string, string> _parents = [];

    private IEnumerable<Joint> Skeleton(Skeleton skeleton)
    {
        var body = skeleton.Root("body", at: new Vector3(0, 0.4f, 0));
        yield return body;
        yield return Add(body, "tail", 0, -0.05, -0.22);
        var neck = Add(body, "neck", 0, 0.2, 0.08);
        yield return neck;
        yield return Add(neck, "head", 0, 0.17, 0.03);
        foreach (var (side, s) in new[] { ("left", 1), ("right", -1) })
        {
            var last = body;
            foreach (var (n, x, y) in new[] { ("shoulder", 0.06, 0.14), ("elbow", 0.16, 0.05), ("wrist", 0.2, 0.06), ("tip", 0.15, -0.04) })
                yield return last = Add(last, $"{n}_{side}", x * s, y, n == "elbow" ? -0.05 : 0.02);
        }
    }

    private Joint Add(Joint parent, string name, double x, double y, double z)
    {
        _parents[name] = parent.Name;
        return parent.Child(name, at: new Vector3((float)x, (float)y, (float)z));
    }

    private Control Handle(RigDraft rig, string name, Joint joint, string? parent = null, params (Axis axis, double from, double to)[] limits)
    {
        var c = rig.Control("{0}_{1}".Replace("{0}", parent is null ? "move" : "turn").Replace("{1}", name)).PlacedAt(joint);
        if (parent is not null)
            c = c.Under(_controls[parent]).Lock(Channels.Move);
        foreach (var limit in limits)
            c = c.LimitTurn(limit.axis, (float)limit.from, (float)limit.to);
        rig.Drive(joint).ByChannels(c);
        return c;
    }

    /// <summary>A feather sits between the joints that its row rides, at the part t of the way.</summary>
    private void Feather(RigDraft rig, string name, string part, string side, string row, double t)
    {
        var (span, fan, rides) = ROWS[row];
        string suffix = side == "center" ? "" : "_" + side;
        var holders = rides.Select(r => _joints[r + suffix]).ToArray();
        var out_by = side switch { "left" => 1.0, "right" => -1.0, _ => 2 * (t - 0.5) };
        var j = holders[0].Child(name, at: new Vector3((float)(out_by * span * t * 0.5), -0.02f, (float)-span / 2));

        var quill = rig.Control(Format("quill_{part}_{row}_{n}{side}", ("part", part), ("row", row), ("n", (int)Math.Round(t * 100)), ("side", suffix)))
            .PlacedAt(j).LimitTurn(Axis.Y, (float)-fan, (float)fan);
        if (holders is [var only])
        {
            var g = rig.Group($"{name}_ride_group").PlacedAt(only);
            rig.Drive(g).ByMatrix(only);
            quill.Under(g);
            rig.Drive(j).ByChannels(quill);
            return;
        }

        // The more it is out, the more it goes with the outer joint.
        var riders = holders.Select((h, i) => (weight: (float)(i == 0 ? 1 - t : t), ride: Rider(rig, name, h, j))).Where(r => r.weight > 0).ToList();
        var carrier = rig.Group($"{name}_carrier_group").PlacedAt(j);
        var blend = rig.Blend(carrier);
        riders.ForEach(r => blend.From(r.ride, r.weight));
        rig.Drive(j).ByChannels(quill.Under(carrier));
    }

    private static Group Rider(RigDraft rig, string feather, Joint joint, Joint at)
    {
        var g = rig.Group($"{feather}_on_{joint.Name}").PlacedAt(at);
        rig.Drive(g).ByMatrix(joint).KeepingOffset();
        return g;
    }

    /// <summary>"{a}_{b}".format(a=..., b=...), in invariant culture.</summary>
    private static string Format(string pattern, params (string key, object value)[] values)
    {
        var sb = new StringBuilder();
        for (int i = 0; i < pattern.Length; i++)
        {
            if (pattern[i] != '{')
            {
                sb.Append(pattern[i]);
                continue;
            }

            int end = pattern.IndexOf('}', i);
            string key = pattern.Substring(i + 1, end - i - 1);
            sb.Append(Convert.ToString(values.First(v => v.key == key).value, CultureInfo.InvariantCulture));
            i = end;
        }

        return sb.ToString();
    }

    private void Spread(RigDraft rig)
    {
        var sun = rig.Control("sun").Under(_controls["body"]).Lock(Channels.Turn).LimitMove(Axis.Y, 0, 1);
        var open = sun.Switch("spread");
        var labels = new Dictionary<bool, string> { [true] = "WINGS OPEN", [false] = "WINGS SHUT" };
        foreach (var (is_open, text) in labels.OrderByDescending(l => l.Key))
            rig.Label("label_" + text.ToLowerInvariant().Replace(' ', '_'), text).Under(sun).ShownBy(is_open ? open : open.Inverse);
    }
}
