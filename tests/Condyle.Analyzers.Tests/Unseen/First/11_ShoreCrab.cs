using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R11;

/// <summary>A shore crab, written as a page of text: one line for each part, millimetres, a star for "on both sides".</summary>
public sealed class ShoreCrab : IRigDefinition
{
    private const string Page = """
        # name         above          x    y    z   how
        shell          -              0   45    0   move
        stalk*         shell          9   12   28   turn
        eye*           stalk*         0   10    4   turn
        coxa1*         shell         24   -6   16   limb leg1
        femur1*        coxa1*        30   14    8   limb leg1
        dactyl1*       femur1*       28  -40    6   limb leg1
        coxa2*         shell         26   -6    2   limb leg2
        femur2*        coxa2*        32   16    1   limb leg2
        dactyl2*       femur2*       28  -42    0   limb leg2
        coxa3*         shell         24   -6  -12   limb leg3
        femur3*        coxa3*        30   14   -9   limb leg3
        dactyl3*       femur3*       26  -40   -6   limb leg3
        palm*          shell         20    0   30   turn
        finger*        palm*          6    4   22   turn -40..5
        """;

    public void Define(RigDraft rig)
    {
        var lines = Page.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0 && line[0] != '#').SelectMany(Line.Read).ToList();
        var skeleton = rig.Skeleton("shore_crab");
        var crab = rig.Control("crab");
        var legs = rig.Group("legs_rig");

        var joints = new Dictionary<string, Joint>();
        var handles = new Dictionary<string, Control>(StringComparer.Ordinal);
        var limbs = new SortedDictionary<string, List<Joint>>(StringComparer.Ordinal);
        foreach (var line in lines)
        {
            var joint = line.Above == "-" ? skeleton.Root(line.Name, at: line.At) : joints[line.Above].Child(line.Name, at: line.At);
            joints.Add(line.Name, joint);
            switch (line.How)
            {
                case "limb":
                    if (!limbs.TryGetValue(line.Detail, out var limb))
                        limbs.Add(line.Detail, limb = []);
                    limb.Add(joint);
                    break;
                case "move":
                case "turn":
                    var above = handles.GetValueOrDefault(line.Above, crab);
                    var handle = rig.Control($"{line.How}_{line.Name}").Under(above).PlacedAt(joint);
                    if (line.How == "turn")
                        handle.Lock(Channels.Move);
                    if (line.Detail.Contains("..", StringComparison.Ordinal))
                        Limit(handle, line.Detail);
                    rig.Drive(joint).ByChannels(handle);
                    handles[line.Name] = handle;
                    break;
                default:
                    throw new FormatException($"'{line.How}' in the line of '{line.Name}' is no way to pose a joint.");
            }
        }

        foreach (var (name, bones) in limbs)
            Leg(rig, name, rig.Chain(bones[0], bones[^1]), handles["shell"], crab, legs);
    }

    private static void Limit(Control handle, string range)
    {
        var dots = range.IndexOf("..", StringComparison.Ordinal);
        var from = float.Parse(range.Substring(0, dots), CultureInfo.InvariantCulture);
        var to = float.Parse(range.Substring(dots + 2), CultureInfo.InvariantCulture);
        handle.LimitTurn(Axis.Y, from, to);
    }

    private static void Leg(RigDraft rig, string name, Chain bones, Control shell, Control crab, Group legs)
    {
        var parts = rig.Group(name + "_group").Under(legs).PlacedAt(shell);
        rig.Drive(parts).ByMatrix(shell);
        var ik = bones.Copy("ik").Under(parts);
        var foot = rig.Control("foot_" + name).Under(crab).PlacedAt(bones.Tip);
        rig.TwoBone(ik).Reach(foot).Face(rig.Control("pole_" + name).Under(shell).PlacedAt(ik.PolePoint(0.05f)));
        rig.Blend(bones).From(ik, 1);
    }

    private sealed record Line(string Name, string Above, Vector3 At, string How, string Detail)
    {
        public static IEnumerable<Line> Read(string text)
        {
            var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words.Length < 6)
                throw new FormatException($"'{text}' has {words.Length} words; a line has six or seven.");
            var at = new Vector3(Metres(words[2]), Metres(words[3]), Metres(words[4]));
            var line = new Line(words[0], words[1], at, words[5], words.Length > 6 ? words[6] : string.Empty);
            return line.Name.EndsWith('*') ? Side.Both.Select(line.On) : new[] { line };
        }

        private Line On(Side side) => this with
        {
            Name = Name.Replace("*", "_" + side, StringComparison.Ordinal),
            Above = Above.TrimEnd('*') + (Above.EndsWith('*') ? $"_{side}" : ""),
            At = At * new Vector3(side.Sign, 1, 1),
            Detail = How is "limb" ? $"{Detail}_{side}" : Detail,
        };

        private static float Metres(string millimetres) => int.Parse(millimetres, NumberStyles.Integer, CultureInfo.InvariantCulture) / 1000f;
    }
}
