namespace Condyle.Analyzers.Reading;

/// <summary>What the code that calls a function does with the task that it may get.</summary>
internal enum Waiting
{
    /// <summary>It goes on, whether the task is done or not.</summary>
    None,

    /// <summary>It awaits it there and then.</summary>
    Awaits,

    /// <summary>It stops until the task is done.</summary>
    Blocks,

    /// <summary>It returns it to its own caller.</summary>
    Returns,
}
