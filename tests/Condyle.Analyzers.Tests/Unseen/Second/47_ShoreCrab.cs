using System;
using System.Globalization;
using System.Linq;
using System.Numerics;
using System.Text;
using Condyle;

namespace Unseen.Second.R47;

/// <summary>A shore crab: four walking legs and a claw on each side. Its names follow the old sheet of the modelling team, hence the work on strings.</summary>
public sealed class ShoreCrab : IRigDefinition
{
    private static readonly string[] LegWords = { "First", "Second", "Third", "Fourth" };

    public void Define(RigDraft rig)
    {
        var names = new StringBuilder();
        var shell = rig.Skeleton(Snake("ShoreCrab")).Root(Snake("Shell"), at: new Vector3(0, 0.06f, 0));
        var body = rig.Control(Snake("BodyMove")).PlacedAt(shell);
        rig.Drive(shell).ByChannels(body);

        foreach (var side in Side.Both)
        {
            for (var i = 0; i < LegWords.Length; i++)
            {
                var word = string.Concat(LegWords[i], "Leg", char.ToUpperInvariant(side.ToString()[0]), side.ToString().Substring(1));
                Leg(rig, shell, body, word, side, i);
                names.Append(names.Length > 0 ? ", " : string.Empty).AppendFormat(CultureInfo.InvariantCulture, "{0}={1:0.0}", Snake(word).Split('_')[0], Spread(i));
            }

            Claw(rig, shell, body, side);
        }

        names.Insert(0, '[').Append(']').Replace("first", "1st").Replace("second", "2nd");
        rig.Label("legs_label", names.ToString()).Under(body).ShownBy(body.Switch("sheet"));
    }

    private static void Leg(RigDraft rig, Joint shell, Control body, string word, Side side, int index)
    {
        var snake = Snake(word);
        var stem = snake.Remove(snake.LastIndexOf('_'));
        string Part(string part) => string.Format("{0}_{1}_{2}", stem, part, side);

        var spread = Quaternion.CreateFromAxisAngle(Vector3.UnitY, Spread(index) * MathF.PI / 180 * -side.Sign);
        var direction = Vector3.Transform(Vector3.UnitX, spread) * side.Sign;
        direction = direction with { Z = MathF.Round(direction.Z, 4) };
        var coxa = shell.Child(Part("coxa"), at: direction * 0.05f);
        var merus = coxa.Child(Part("merus"), at: direction * 0.06f + new Vector3(0, 0.04f, 0));
        var tip = merus.Child(Part("tip"), at: direction * 0.05f - new Vector3(0, 0.1f, 0));

        var leg = rig.Chain(coxa, tip);
        var group = rig.Group(Part("leg").Replace("leg_leg", "leg") + "_group").Under(body).PlacedAt(coxa);
        var solved = leg.Copy("ik").Under(group);
        var foot = rig.Control(Part("foot")).PlacedAt(tip);
        var pole = rig.Control(Part("knee") + "_pole").Under(group).PlacedAt(solved.PolePoint(0.1f));
        rig.TwoBone(solved).Reach(foot).Face(pole);
        for (var i = 0; i < leg.Count; i++)
        {
            // A crab's legs are never posed by their joints, so the copy has the leg for good.
            rig.Drive(leg[i]).ByChannels(solved.Of(leg[i]));
        }
    }

    private static void Claw(RigDraft rig, Joint shell, Control body, Side side)
    {
        var text = side.ToString();
        var padded = text.PadLeft(6, '.').PadRight(8, '.');
        var bare = padded.Trim('.');
        var above = body;
        var joint = shell;
        foreach (var (line, index) in "arm;0.05;palm;0.04;finger;0.03".Split(';').Chunk(2).Select((pair, i) => (string.Join(':', pair), i)))
        {
            var colon = line.IndexOf(':');
            var length = float.Parse(line.AsSpan(colon + 1), NumberStyles.Float, CultureInfo.InvariantCulture);
            joint = joint.Child($"claw_{line[..colon]}_{bare}", at: new Vector3(index == 0 ? 0.05f * side.Sign : 0, 0, length));
            var control = rig.Control("turn_" + joint).Under(above).PlacedAt(joint).Lock(Channels.Move);
            if (line is ['f', ..])
                control.Lock(Channels.TurnX | Channels.TurnZ).LimitTurn(Axis.Y, text == "left" ? 0 : -40, text.Equals("left", StringComparison.Ordinal) ? 40 : 0);
            rig.Drive(joint).ByChannels(control);
            above = control;
        }
    }

    private static float Spread(int leg) => 30 - 25 * leg;

    private static string Snake(string pascal)
    {
        var text = new StringBuilder(pascal.Length + 4);
        for (var i = 0; i < pascal.Length; i++)
        {
            var c = pascal[i];
            if (char.IsUpper(c))
            {
                if (text.Length != 0)
                    text.Append('_');
                c = char.ToLowerInvariant(c);
            }

            text.Append(c);
        }

        return text.ToString();
    }
}
