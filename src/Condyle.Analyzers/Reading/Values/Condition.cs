namespace Condyle.Analyzers.Reading;

/// <summary>What an unknown truth says of unknown values, as far as that can be followed.</summary>
internal abstract record Condition;

/// <summary>A whole number lies in a range. A text's is its length, that of anything that may be missing is −1 where it is.</summary>
internal sealed record InRange(object Subject, Extent Extent) : Condition;

/// <summary>A text is this one.</summary>
internal sealed record IsText(object Subject, string Text) : Condition;

/// <summary>One truth where a condition holds, another where it doesn't.</summary>
internal sealed record Chosen(OpenValue If, object? Then, object? Else) : Condition;

/// <summary>An unknown text, told from others. Where it comes from outside there may be a path for each thing that it can be.</summary>
internal sealed class UnknownText(bool canFork)
{
    public bool CanFork => canFork;
}
