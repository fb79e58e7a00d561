using System;
using System.Collections.Generic;
using System.Globalization;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R40;

/// <summary>
/// A little language for laying out machines. A word is a part; (x y z) places it under the part that encloses it; { } encloses;
/// *n repeats the part as a line of n, each below the one before; ~ spins, | slides, @ is free; % doubles a part left and right.
/// </summary>
public sealed class AnchorWinch : IRigDefinition
{
    private const string Layout = """
        bed (0 0.2 0)
        {
            drum (0 0.6 0) ~ { brake (0.4 0 0) ~ pawl% (0.5 0.3 0.1) ~ }
            gypsy (0.9 0.6 0) ~
            { links *18 (0 0 0.18) @ { shackle (0 0 0.2) @ { anchor (0 0 0.3) @ { fluke% (0.35 -0.2 0.1) ~ } } } }
            motor (-0.9 0.5 0) { clutch (0.3 0 0) | { shaft (0.2 0 0) ~ } }
            lever% (0.3 0.9 -0.5) ~ { knob (0 0.25 0) @ }
            fairlead% (0.5 0.3 1.6) { roller% (0.1 0.1 0) ~ }
        }
        """;

    private enum Token
    {
        Word,
        Open,
        Close,
        Place,
        Mark,
        End,
    }

    private RigDraft rig = null!;
    private Skeleton skeleton;
    private Queue<(Token Kind, string Text)> tokens = null!;

    public void Define(RigDraft draft)
    {
        rig = draft;
        skeleton = draft.Skeleton("anchor_winch");
        tokens = new Queue<(Token, string)>(Scan(Layout));
        var world = draft.Control("world");
        foreach (var part in Parts())
            Build(part, null, world, null);
    }

    private static IEnumerable<(Token Kind, string Text)> Scan(string text)
    {
        var at = 0;
        while (at < text.Length)
        {
            var c = text[at];
            if (char.IsWhiteSpace(c))
            {
                at++;
            }
            else if (char.IsLetter(c))
            {
                var start = at;
                while (at < text.Length && (char.IsLetterOrDigit(text[at]) || text[at] == '_'))
                    at++;
                yield return (Token.Word, text[start..at]);
            }
            else if (c == '(')
            {
                var end = text.IndexOf(')', at);
                yield return (Token.Place, text[(at + 1)..end]);
                at = end + 1;
            }
            else if (c == '*')
            {
                var start = at++;
                while (at < text.Length && char.IsDigit(text[at]))
                    at++;
                yield return (Token.Mark, text[start..at]);
            }
            else
            {
                at++;
                yield return c switch
                {
                    '{' => (Token.Open, "{"),
                    '}' => (Token.Close, "}"),
                    '~' or '|' or '@' or '%' => (Token.Mark, c.ToString()),
                    _ => throw new FormatException($"'{c}' means nothing in a layout."),
                };
            }
        }

        yield return (Token.End, "");
    }

    private List<Part> Parts()
    {
        var parts = new List<Part>();
        while (tokens.Peek().Kind == Token.Word)
        {
            var part = new Part(tokens.Dequeue().Text);
            while (tokens.Peek().Kind is Token.Mark or Token.Place)
            {
                var (kind, text) = tokens.Dequeue();
                if (kind == Token.Place)
                    part.At = Vector(text);
                else if (text[0] == '*')
                    part.Repeat = int.Parse(text.AsSpan(1), CultureInfo.InvariantCulture);
                else if (text == "%")
                    part.Doubled = true;
                else
                    part.Motion = text[0];
            }

            if (tokens.Peek().Kind == Token.Open)
            {
                tokens.Dequeue();
                part.Inside = Parts();
                if (tokens.Dequeue().Kind != Token.Close)
                    throw new FormatException($"'{part.Name}' is never closed.");
            }

            parts.Add(part);
        }

        return parts;
    }

    private void Build(Part part, Joint? above, Control parent, Side? side)
    {
        // Doubled inside doubled: the inner pair goes by number.
        if (part.Doubled && side is null)
        {
            foreach (var each in Side.Both)
                One(part, above, parent, each, $"{part.Name}_{each}", part.At * new Vector3(each.Sign, 1f, 1f));
        }
        else if (part.Doubled)
        {
            One(part, above, parent, side, $"{part.Name}_1_{side}", part.At);
            One(part, above, parent, side, $"{part.Name}_2_{side}", part.At * new Vector3(-1f, 1f, 1f));
        }
        else
        {
            One(part, above, parent, side, side is null ? part.Name : $"{part.Name}_{side}", part.At);
        }
    }

    private void One(Part part, Joint? above, Control parent, Side? side, string name, Vector3 at)
    {
        for (var i = 1; i <= part.Repeat; i++)
        {
            var called = part.Repeat == 1 ? name : $"{name}_{i}";
            var joint = above is { } up ? up.Child(called, at: at) : skeleton.Root(called, at: at);
            var control = rig.Control($"c_{called}").Under(parent).PlacedAt(joint);
            if (part.Motion != '@')
                control.Lock(part.Motion == '~' ? Channels.Move | Channels.TurnY | Channels.TurnZ : part.Motion == '|' ? Channels.Turn : Channels.All);
            rig.Drive(joint).ByChannels(control);
            (above, parent) = (joint, control);
        }

        foreach (var inner in part.Inside)
            Build(inner, above, parent, side);
    }

    private static Vector3 Vector(string text)
    {
        var numbers = Array.ConvertAll(text.Split(' '), word => float.Parse(word, CultureInfo.InvariantCulture));
        return new Vector3(numbers[0], numbers[1], numbers[2]);
    }

    private sealed class Part(string name)
    {
        public string Name { get; } = name;

        public Vector3 At { get; set; }

        public int Repeat { get; set; } = 1;

        public bool Doubled { get; set; }

        public char Motion { get; set; } = '#';

        public List<Part> Inside { get; set; } = [];
    }
}
