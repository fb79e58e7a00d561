namespace Condyle.Analyzers.Reading;

internal enum End
{
    Joined,
    Returned,
    Threw,
}

/// <summary>How one way through the code ended: where, with which result, with what on the stack, or with which exception.</summary>
internal sealed record Way(End End, int Position, object? Result, object?[] Stack, ThrownByCode? Thrown = null)
{
    /// <summary>Where else it may have gone: further on, or out of the function.</summary>
    public IReadOnlyList<Way> Ahead { get; init; } = [];

    public IEnumerable<Way> All => [this, .. Ahead];
}
