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

    /// <summary>As a rigger says it: <c>move X</c>, <c>turn Y</c>, <c>scale Z</c>.</summary>
    public static string Say(Channels channel)
    {
        var name = channel.ToString();
        return $"{name[..^1].ToLowerInvariant()} {name[^1]}";
    }
}
