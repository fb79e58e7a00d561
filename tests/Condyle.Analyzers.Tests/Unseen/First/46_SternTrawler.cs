using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R46;

/// <summary>A stern trawler with gallows, warps and otter boards, from a script of one verb a line. The verbs are a table, so a new one is one entry.</summary>
public sealed class SternTrawler : IRigDefinition
{
    private const string Script = """
        skeleton stern_trawler
        joint hull 0 0.8 0
          joint wheelhouse 0 3 5
          joint winch 0 1.6 1.5
          each side
            joint gallows_$side 2.2*$sign 2.1 -6
              joint block_$side 0.2*$sign 2.4 -0.8
                joint warp_$side 0.3*$sign -0.6 -2.5
            joint board_$side 1.8*$sign 0.4 -12
          end
        control vessel hull
        group deck_group vessel
        control haul winch under vessel
        lock haul Move TurnY TurnZ
        control steer wheelhouse under vessel
        limit steer Y -30 30
        each side
          limb gallows_$side warp_$side holder deck_group goal shoot_$side space vessel
          control door_$side board_$side under vessel
          switch towed door_$side
          blend board_$side shoot_$side towed door_$side
        end
        check joints 11
        """;

    private readonly Dictionary<string, Joint> joints = [];
    private readonly Dictionary<string, Control> controls = [];
    private readonly Dictionary<string, Group> groups = [];
    private readonly Dictionary<string, Switch> switches = [];
    private readonly Stack<(int Indent, Joint Joint)> above = new();

    public void Define(RigDraft rig)
    {
        Skeleton skeleton = default;
        var verbs = new Dictionary<string, Action<Line>>
        {
            ["skeleton"] = line => skeleton = rig.Skeleton(line[0]),
            ["joint"] = line => AddJoint(skeleton, line),
            ["group"] = line => rig.Drive(groups[line[0]] = rig.Group(line[0]).PlacedAt(controls[line[1]])).ByMatrix(controls[line[1]]),
            ["control"] = line => AddControl(rig, line[0], joints[line[1]], line.Option("under")),
            ["lock"] = line => controls[line[0]].Lock(line.Words.Skip(1).Select(word => Enum.Parse<Channels>(word)).Aggregate((all, one) => all | one)),
            ["limit"] = line => controls[line[0]].LimitTurn(Enum.Parse<Axis>(line[1]), line.Number(2), line.Number(3)),
            ["switch"] = line => switches.Add(line[0] + "@" + line[1], controls[line[1]].Switch(line[0])),
            ["limb"] = line => AddLimb(rig, line),
            ["blend"] = line => AddBlend(rig, line),
            ["check"] = line => Check(line),
        };

        foreach (var line in Expand(new Queue<string>(Script.Split('\n')), null))
        {
            if (!verbs.TryGetValue(line.Verb, out var verb))
                throw new ScriptException(line, $"there is no verb '{line.Verb}', only {string.Join(", ", verbs.Keys.Order(StringComparer.Ordinal))}");
            verb(line);
        }
    }

    /// <summary>Unrolls the loops: what lies between "each" and its "end" is taken once for each side.</summary>
    private static IEnumerable<Line> Expand(Queue<string> lines, Side? side)
    {
        while (lines.TryDequeue(out var text))
        {
            var line = Line.Parse(text, side);
            switch (line.Verb)
            {
                case "each":
                    var body = new List<string>();
                    for (var depth = 1; depth > 0;)
                    {
                        var next = lines.Dequeue();
                        depth += next.TrimStart().StartsWith("each", StringComparison.Ordinal) ? 1 : next.Trim() == "end" ? -1 : 0;
                        if (depth > 0)
                            body.Add(next);
                    }

                    foreach (var inner in Side.Both.SelectMany(which => Expand(new Queue<string>(body), which)))
                        yield return inner;
                    break;
                case "":
                    continue;
                default:
                    yield return line;
                    break;
            }
        }
    }

    private void AddJoint(Skeleton skeleton, Line line)
    {
        while (above.TryPeek(out var top) && top.Indent >= line.Indent)
            above.Pop();
        var at = new Vector3(line.Number(1), line.Number(2), line.Number(3));
        var joint = above.Count == 0 ? skeleton.Root(line[0], at: at) : above.Peek().Joint.Child(line[0], at: at);
        joints.Add(line[0], joint);
        above.Push((line.Indent, joint));
    }

    private Control AddControl(RigDraft rig, string name, Joint at, string? under, bool drives = true)
    {
        var control = rig.Control(name).PlacedAt(at);
        if (under is not null)
            control.Under(controls[under]);

        // A board is blended later, and so is what a limb's tip reaches.
        if (drives && !at.Name.StartsWith("board_", StringComparison.Ordinal))
            rig.Drive(at).ByChannels(control);
        return controls[name] = control;
    }

    private void AddLimb(RigDraft rig, Line line)
    {
        var chain = rig.Chain(joints[line[0]], joints[line[1]]);
        var solved = chain.Copy("led").Under(groups[line.Option("holder") ?? throw new ScriptException(line, "a limb needs a holder")]);
        var goal = AddControl(rig, line.Option("goal") ?? "goal_" + line[1], chain.Tip, line.Option("space"), drives: false);
        rig.TwoBone(solved).Reach(goal);
        foreach (var (joint, led) in chain.Select(joint => (joint, solved.Of(joint))))
            rig.Drive(joint).ByChannels(led);
    }

    private void AddBlend(RigDraft rig, Line line)
    {
        var (target, with, name, without) = (joints[line[0]], controls[line[1]], line[2], controls[line[3]]);
        var amount = switches[name + "@" + without.Name];
        var towed = rig.Group($"{name}_{target}_group").Under(with).PlacedAt(target);
        rig.Blend(target).From(towed, amount).From(without, amount.Inverse);
    }

    private void Check(Line line)
    {
        var found = line[0] switch
        {
            "joints" => joints.Count,
            "controls" => controls.Count,
            var what => throw new ScriptException(line, $"can't count {what}"),
        };
        if (found != (int)line.Number(1))
            throw new ScriptException(line, $"there are {found}");
    }

    private sealed class ScriptException(Line line, string what) : Exception($"'{line.Text}': {what}.");

    private sealed record Line(string Text, int Indent, string Verb, string[] Words)
    {
        public string this[int index] => index < Words.Length ? Words[index] : throw new ScriptException(this, $"argument {index + 1} is missing");

        public static Line Parse(string text, Side? side)
        {
            text = text.TrimEnd();
            if (side is not null)
                text = text.Replace("$side", side.ToString(), StringComparison.Ordinal).Replace("$sign", side.Sign.ToString("0", CultureInfo.InvariantCulture));
            var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            return new Line(text.Trim(), text.TakeWhile(char.IsWhiteSpace).Count(), words.FirstOrDefault(""), words is [_, .. var rest] ? rest : []);
        }

        public string? Option(string key) => Array.IndexOf(Words, key) is >= 0 and var at ? this[at + 1] : null;

        public float Number(int index) =>
            this[index].Split('*').Aggregate(1f, (product, factor) => product * float.Parse(factor, CultureInfo.InvariantCulture));
    }
}
