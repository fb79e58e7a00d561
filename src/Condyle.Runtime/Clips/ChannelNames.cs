namespace Condyle.Runtime;

/// <summary>Single channels out of a choice of them, and their words.</summary>
internal static class ChannelNames
{
    public static Channels Move(Axis axis) => (Channels)((int)Channels.MoveX << (int)axis);

    public static Channels Turn(Axis axis) => (Channels)((int)Channels.TurnX << (int)axis);

    public static Channels Scale(Axis axis) => (Channels)((int)Channels.ScaleX << (int)axis);

    public static IEnumerable<Channels> Each(Channels channels)
    {
        for (var channel = 1; channel <= (int)Channels.ScaleZ; channel <<= 1)
        {
            if (channels.HasFlag((Channels)channel))
                yield return (Channels)channel;
        }
    }

    /// <summary>What else is locked besides what is told first, by control; nothing where that is all.</summary>
    public static string AndLocked(IReadOnlyList<(string Control, Channels Channel)> others) => others.Count == 0 ? "" : ", as it does "
        + string.Join(", ", others.GroupBy(use => use.Control, StringComparer.Ordinal).Select(of => $"{string.Join(" and ", of.Select(use => Say(use.Channel)))} of '{of.Key}'"));

    /// <summary>As a rigger says it: <c>move X</c>, <c>turn Y</c>, <c>scale Z</c>.</summary>
    public static string Say(Channels channel)
    {
        var name = channel.ToString();
        return $"{name[..^1].ToLowerInvariant()} {name[^1]}";
    }
}
