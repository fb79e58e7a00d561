using System;
using System.Collections.Generic;
using System.Globalization;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R51;

/// <summary>
/// The semaphore on the pilot station's roof, in the station's own short notation: a name, where it stands, how it turns,
/// and in brackets what it carries.
/// </summary>
public sealed class SemaphoreArms : IRigDefinition
{
    private const string Text =
        "post@0,0,0:- [" +
        " arm_left@0.3,4,0:z(-135..135) [vane_left@0.8,0,0:x(-90..90) lamp_left@1,0.1,0:-]" +
        " arm_right@-0.3,4,0:z(-135..135) [vane_right@-0.8,0,0:x(-90..90) lamp_right@-1,0.1,0:-]" +
        " wheel@0,1.2,0.3:z(-720..720) [grip@0.2,0,0.05:xyz]" +
        "]";

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("semaphore_arms");
        var reader = new NotationReader(Text);
        var open = new Stack<Signal>();
        var lamps = new List<Signal>();
        Signal? last = null;
        while (reader.Read(out var token))
        {
            switch (token.Kind)
            {
                case TokenKind.Open:
                    open.Push(last ?? throw new FormatException("Nothing stands before the bracket that could carry anything."));
                    break;
                case TokenKind.Close:
                    last = open.Pop();
                    break;
                case TokenKind.Part:
                    last = Build(rig, skeleton, token, open.TryPeek(out var above) ? above : null);
                    if (token.Name.AsSpan().StartsWith("lamp_"))
                        lamps.Add(last);
                    break;
            }
        }

        if (last is null)
            return;
        var lit = last.Control.Switch("lit");
        foreach (var lamp in lamps)
            rig.Label($"{lamp.Joint}_label", lamp.Joint.Name switch { [.., 'l', 'e', 'f', 't'] => "L", _ => "R" }).Under(lamp.Control).ShownBy(lit);
    }

    private static Signal Build(RigDraft rig, Skeleton skeleton, Token token, Signal? above)
    {
        var joint = above?.Joint.Child(token.Name, at: token.At) ?? skeleton.Root(token.Name, at: token.At);
        var control = rig.Control($"signal_{token.Name}").PlacedAt(joint).Lock(Channels.Move | Channels.Turn & ~token.Turns);
        if (above is not null)
            control.Under(above.Control);
        for (var axis = Axis.X; axis <= Axis.Z; axis++)
        {
            if (token.Range is { } range && (token.Turns & TurnAbout(axis)) != Channels.None)
                control.LimitTurn(axis, range.From, range.To);
        }

        rig.Drive(joint).ByChannels(control);
        return new Signal(joint, control);
    }

    private static Channels TurnAbout(Axis axis) => axis switch
    {
        Axis.X => Channels.TurnX,
        Axis.Y => Channels.TurnY,
        Axis.Z => Channels.TurnZ,
        _ => throw new ArgumentOutOfRangeException(nameof(axis)),
    };

    private enum TokenKind
    {
        Part,
        Open,
        Close,
    }

    private readonly record struct Token(TokenKind Kind, string Name, Vector3 At, Channels Turns, (float From, float To)? Range);

    private sealed record Signal(Joint Joint, Control Control);

    private ref struct NotationReader(ReadOnlySpan<char> text)
    {
        private ReadOnlySpan<char> rest = text;

        public bool Read(out Token token)
        {
            rest = rest.TrimStart();
            if (rest.IsEmpty)
            {
                token = default;
                return false;
            }

            var kind = rest[0] switch { '[' => TokenKind.Open, ']' => TokenKind.Close, _ => TokenKind.Part };
            if (kind != TokenKind.Part)
            {
                rest = rest[1..];
                token = new Token(kind, "", default, Channels.None, null);
                return true;
            }

            var end = rest.IndexOfAny(' ', '[', ']');
            var word = end < 0 ? rest : rest[..end];
            rest = rest[word.Length..];
            token = Part(word);
            return true;
        }

        private static Token Part(ReadOnlySpan<char> word)
        {
            var at = word.IndexOf('@');
            var colon = word.IndexOf(':');
            var place = word[(at + 1)..colon];
            Span<Range> numbers = stackalloc Range[3];
            if (place.Split(numbers, ',') != 3)
                throw new FormatException($"'{word}' has no place of three numbers.");

            var turning = word[(colon + 1)..];
            var turns = Channels.None;
            var letters = 0;
            for (; letters < turning.Length && char.IsAsciiLetter(turning[letters]); letters++)
                turns |= TurnAbout((Axis)(turning[letters] - 'x'));

            (float From, float To)? range = null;
            if (turning[letters..] is ['(', .. var inside, ')'])
            {
                var dots = inside.IndexOf("..");
                range = (Number(inside[..dots]), Number(inside[(dots + 2)..]));
            }

            return new Token(
                TokenKind.Part,
                word[..at].ToString(),
                new Vector3(Number(place[numbers[0]]), Number(place[numbers[1]]), Number(place[numbers[2]])),
                turns,
                range);
        }

        private static float Number(ReadOnlySpan<char> text) => float.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
    }
}
