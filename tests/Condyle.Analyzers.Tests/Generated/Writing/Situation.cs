namespace Condyle.Analyzers.Tests.Generated;

/// <summary>What the statements at one place may do.</summary>
internal sealed record Situation
{
    /// <summary>What the function returns; none where it returns nothing.</summary>
    public CodeType? Returns { get; init; }

    /// <summary>Whether it can be left from here: not from a final part.</summary>
    public bool CanReturn { get; init; }

    /// <summary>Whether <c>break</c> leaves a loop, and <c>continue</c> begins its next turn.</summary>
    public bool CanBreak { get; init; }

    /// <summary>What an iterator hands out from here.</summary>
    public CodeType? Yields { get; init; }

    /// <summary>Whether this is code of an iterator, also where it can't hand out items.</summary>
    public bool IsIterator { get; init; }

    /// <summary>Whether this is code of an async method.</summary>
    public bool CanAwait { get; init; }

    /// <summary>Whether this is a <c>catch</c> or a <c>finally</c>.</summary>
    public bool IsHandler { get; init; }

    /// <summary>How many blocks lie around it.</summary>
    public int Depth { get; init; }
}
