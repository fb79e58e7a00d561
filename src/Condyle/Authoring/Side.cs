namespace Condyle;

/// <summary>A side of the character. Its text is the side's word in names: <c>$"hand_{side}"</c> is <c>hand_left</c> or <c>hand_right</c>.</summary>
public sealed class Side
{
    private readonly string word;

    private Side(string word) => this.word = word;

    /// <summary>The character's left: +X.</summary>
    public static Side Left { get; } = new("left");

    /// <summary>The character's right: −X.</summary>
    public static Side Right { get; } = new("right");

    /// <summary>Left, then right: <c>foreach (var side in Side.Both)</c> builds a limb twice.</summary>
    public static IReadOnlyList<Side> Both { get; } = [Left, Right];

    /// <summary>The other side.</summary>
    public Side Opposite => this == Left ? Right : Left;

    /// <summary>+1 on the left, −1 on the right: the sign of X.</summary>
    public float Sign => this == Left ? 1f : -1f;

    /// <summary>The side's word in names, <c>left</c> or <c>right</c>.</summary>
    /// <returns>The word, in lower case.</returns>
    public override string ToString() => word;
}
