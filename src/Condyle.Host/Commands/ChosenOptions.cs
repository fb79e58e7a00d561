using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>Options of choices as they are said on a command line, <c>name=option</c> or <c>name=option@seconds</c>, as a clip that keys them.</summary>
internal static class ChosenOptions
{
    private const string Option = "--choice";

    /// <summary>None where nothing is said.</summary>
    /// <exception cref="BadInputException">It can't be understood, or lies after the motion's end.</exception>
    public static Clip? Of(IReadOnlyList<string> said, CompiledRig rig, float seconds)
    {
        if (said.Count == 0)
            return null;
        var picks = said.Select(each => Pick(each).Within(seconds, Option)).ToList();
        var clip = new Clip(Option, picks.Max(pick => pick.At) + 1);
        foreach (var choice in picks.GroupBy(pick => pick.Name))
        {
            // Before its first key a choice would hold that one; said from a time on, it is at rest until then.
            if (choice.All(pick => pick.At > 0) && rig.Choices.FirstOrDefault(known => known.Name == choice.Key || known.AlsoKnownAs.Contains(choice.Key)) is { } known)
                clip.Choice(choice.Key, 0, known.Options[0]);
            foreach (var pick in choice)
                clip.Choice(choice.Key, pick.At, pick.Value);
        }

        return clip;
    }

    private static TimedValue Pick(string said) => TimedValue.Of(said)
        ?? throw new BadInputException(Option, $"'{said}' doesn't say which option a choice has", "Write NAME=OPTION, or NAME=OPTION@SECONDS for one from a time on");
}
