using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>
/// The channels that an animator may use on either side, and how far. A range may be wider on one side on purpose; but one that is turned round where the frames
/// don't ask for it, or isn't where they do, limits the wrong direction.
/// </summary>
internal static class Freedom
{
    private const double Tolerance = 1e-3;

    public static SideDifference? Between(RigNode left, RigNode right, MirrorBehaviour? frames, bool isEnd) => Locks(left, right) ?? Limits(left, right, frames, isEnd);

    /// <summary>Whether both have the same channels locked, and no limits: then it doesn't matter how their frames lie.</summary>
    public static bool AreFreeAlike(RigNode left, RigNode right) =>
        left.Limits.Count == 0 && right.Limits.Count == 0 && left.Locked.TryKnown(out var one) && right.Locked.TryKnown(out var other) && one == other;

    private static SideDifference? Locks(RigNode left, RigNode right)
    {
        if (!left.Locked.TryKnown(out var one) || !right.Locked.TryKnown(out var other) || one == other)
            return null;
        var parts = new List<string>();
        if ((one & ~other) is not Channels.None and var onLeft)
            parts.Add($"{onLeft} {(IsOne(onLeft) ? "is" : "are")} locked on the left alone");
        if ((other & ~one) is not Channels.None and var onRight)
            parts.Add($"{onRight} {(IsOne(onRight) ? "is" : "are")} locked on the right alone");
        return new SideDifference(string.Join(" and ", parts), left.Place, right.Place);
    }

    private static SideDifference? Limits(RigNode left, RigNode right, MirrorBehaviour? frames, bool isEnd)
    {
        if (left.LimitsAreOpen || right.LimitsAreOpen)
            return null;
        for (var i = 0; i < left.Limits.Count + right.Limits.Count; i++)
        {
            var limit = i < left.Limits.Count ? left.Limits[i] : right.Limits[i - left.Limits.Count];
            var (one, other) = (Find(left, limit), Find(right, limit));
            if (one is null || other is null)
                return new SideDifference($"{ChannelOf(limit)} is limited on the {(one is null ? "right" : "left")} alone", limit.Place, limit.Place);
            if (limit != one)
                continue;
            var (turns, axis) = (limit.Turns, limit.Axis);
            if (frames is not { } mirror || RangeOf(one) is not { } range || RangeOf(other) is not { } theirs)
                continue;
            var sign = turns ? mirror.TurnSign(axis) : mirror.MoveSign(axis);
            var (wanted, wrong) = sign > 0 ? (range, Turned(range)) : (Turned(range), range);
            if (!AreSame(wanted, wrong) && AreSame(theirs, wrong) && !(isEnd && IsOneWay(range)))
                return new SideDifference($"{ChannelOf(limit)} goes {Written(range, turns)} on the left and {Written(theirs, turns)} on the right, and as their frames lie the mirror image of the left is {Written(wanted, turns)}", one.Place, other.Place);
        }

        return null;
    }

    private static ChannelLimit? Find(RigNode node, ChannelLimit limit)
    {
        foreach (var its in node.Limits)
        {
            if (its.Turns == limit.Turns && its.Axis == limit.Axis)
                return its;
        }

        return null;
    }

    private static string ChannelOf(ChannelLimit limit) => limit.Turns ? $"the turn about {limit.Axis}" : $"the move along {limit.Axis}";

    private static (double From, double To)? RangeOf(ChannelLimit limit) => limit.From.TryKnown(out var from) && limit.To.TryKnown(out var to) ? (from, to) : null;

    private static (double From, double To) Turned((double From, double To) range) => (0 - range.To, 0 - range.From);

    // A latch at the end of a machine may turn the same way on both sides.
    private static bool IsOneWay((double From, double To) range) => range.From == 0 || range.To == 0;

    private static bool AreSame((double From, double To) one, (double From, double To) other) => AreNear(one.From, other.From) && AreNear(one.To, other.To);

    private static bool AreNear(double one, double other) => Math.Abs(one - other) <= Tolerance * Math.Max(1, Math.Max(Math.Abs(one), Math.Abs(other)));

    private static string Written((double From, double To) range, bool turns) => $"from {Invariant.Short(range.From)} to {Invariant.Short(range.To)}{(turns ? "°" : " m")}";

    private static bool IsOne(Channels channels) => (channels & (channels - 1)) == 0;
}
