using Condyle.Model;

namespace Condyle.Naming;

/// <summary>A name that says its side, taken apart at the mark: at the end of the name, or before an underscore (<c>arm_left_group</c>).</summary>
internal readonly record struct SidedName(Side Side, string Name, int MarkAt, Conventions Conventions)
{
    /// <summary>The same name on the other side.</summary>
    public string Counterpart =>
        Name.Substring(0, MarkAt) + Conventions.MarkOf(Side.Opposite) + Name.Substring(MarkAt + Conventions.MarkOf(Side).Length);

    /// <summary>Takes a name apart; none where it isn't known, says no side, or says both.</summary>
    public static SidedName? Of(Text text, Conventions conventions)
    {
        if (!text.TryKnown(out var name))
            return null;
        var (left, right) = (MarkIn(name, conventions.LeftMark), MarkIn(name, conventions.RightMark));
        return left < 0 == right < 0 ? null : left >= 0 ? new(Side.Left, name, left, conventions) : new(Side.Right, name, right, conventions);
    }

    /// <summary>Where a mark stands last at the end of a name or before an underscore; below zero where it doesn't.</summary>
    internal static int MarkIn(string name, string mark)
    {
        for (var at = name.LastIndexOf(mark, StringComparison.Ordinal); at >= 0; at = at == 0 ? -1 : name.LastIndexOf(mark, at - 1, StringComparison.Ordinal))
        {
            var end = at + mark.Length;
            if (end == name.Length || name[end] == '_')
                return at;
        }

        return -1;
    }
}
