using System.Globalization;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>Options of choices as they are said on a command line, <c>name=option</c> or <c>name=option@seconds</c>, as a clip that keys them.</summary>
internal static class ChosenOptions
{
    /// <summary>None where nothing is said.</summary>
    /// <exception cref="BadInputException">It can't be understood, or lies after the motion's end.</exception>
    public static Clip? Of(IReadOnlyList<string> said, CompiledRig rig, float seconds)
    {
        var picks = said.Select(Pick).ToList();
        if (picks.Count == 0)
            return null;
        if (picks.Find(pick => pick.At > seconds) is { Name: not null } late)
            throw new BadInputException("--choice", FormattableString.Invariant($"'{late.Name}={late.Option}@{late.At}' comes after the motion, which ends at {seconds:0.##} s"), "Give a time within it");
        var clip = new Clip("--choice", picks.Max(pick => pick.At) + 1);
        foreach (var choice in picks.GroupBy(pick => pick.Name))
        {
            // Before its first key a choice would hold that one; said from a time on, it is at rest until then.
            if (choice.All(pick => pick.At > 0) && rig.Choices.FirstOrDefault(known => known.Name == choice.Key || known.AlsoKnownAs.Contains(choice.Key)) is { } known)
                clip.Choice(choice.Key, 0, known.Options[0]);
            foreach (var (_, option, at) in choice)
                clip.Choice(choice.Key, at, option);
        }

        return clip;
    }

    private static (string Name, string Option, float At) Pick(string said)
    {
        if (said.Split('=') is [{ Length: > 0 } name, { Length: > 0 } picked])
        {
            if (picked.Split('@') is [{ Length: > 0 } option, var at] && float.TryParse(at, NumberStyles.Float, CultureInfo.InvariantCulture, out var seconds) && float.IsFinite(seconds) && seconds >= 0)
                return (name, option, seconds);
            if (!picked.Contains('@', StringComparison.Ordinal))
                return (name, picked, 0);
        }

        throw new BadInputException("--choice", $"'{said}' doesn't say which option a choice has", "Write NAME=OPTION, or NAME=OPTION@SECONDS for one from a time on");
    }
}
