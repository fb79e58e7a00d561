using System.Globalization;
using Condyle.Host.Reporting;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>Values of dials as they are said on a command line, <c>name=value</c> or <c>name=value@seconds</c>, as a clip that keys them.</summary>
internal static class TurnedDials
{
    private const string Option = "--dial";

    /// <summary>None where nothing is said.</summary>
    /// <exception cref="BadInputException">It can't be understood, names no dial of the rig, leaves the dial's range, or lies after the motion's end.</exception>
    public static Clip? Of(IReadOnlyList<string> said, CompiledRig rig, float seconds)
    {
        if (said.Count == 0)
            return null;
        var turns = said.Select(each => Turn(each).Within(seconds, Option)).ToList();
        var clip = new Clip(Option, turns.Max(turn => turn.At) + 1);
        foreach (var turn in turns)
        {
            var dial = Find(turn.Name, rig);
            clip.Dial(dial.Name, turn.At, ValueOf(turn, dial));
        }

        return clip;
    }

    private static TimedValue Turn(string said) => TimedValue.Of(said)
        ?? throw new BadInputException(Option, $"'{said}' doesn't say what a dial is set to", "Write NAME=VALUE, or NAME=VALUE@SECONDS for a key at a time");

    private static CompiledDial Find(string name, CompiledRig rig) =>
        rig.Dials.FirstOrDefault(dial => dial.Name == name || dial.AlsoKnownAs.Contains(name)) ?? throw new BadInputException(
            Option,
            $"is no dial of the rig '{rig.Name}'",
            rig.Switches.Any(sw => sw.Name == name || sw.AlsoKnownAs.Contains(name)) ? "It is a switch, and --limbs says which way those of limbs go"
            : rig.Dials.Count == 0 ? "The rig has no dial at all" : Nearest.To(name, rig.Dials.SelectMany(dial => dial.AlsoKnownAs.Prepend(dial.Name))),
            name);

    private static float ValueOf(TimedValue turn, CompiledDial dial)
    {
        if (!float.TryParse(turn.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
            throw Wrong($"is set by a number{Counted(dial.Unit)}, not '{turn.Value}'");
        return value >= dial.From && value <= dial.To ? value : throw Wrong($"can't be set to {turn.Value}");

        BadInputException Wrong(string problem) => new(Option, problem, $"It goes from {DialValues.Say(dial, dial.From)} to {DialValues.Say(dial, dial.To)}", turn.Name);
    }

    private static string Counted(DialUnit unit) => unit switch
    {
        DialUnit.Degrees => " of degrees",
        DialUnit.Metres => " of metres",
        _ => "",
    };
}
