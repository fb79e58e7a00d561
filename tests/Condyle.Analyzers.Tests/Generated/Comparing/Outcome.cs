namespace Condyle.Analyzers.Tests.Generated;

internal enum Verdict
{
    /// <summary>It is read as it runs.</summary>
    Same,

    /// <summary>All that is known is so, but something is left open.</summary>
    Open,

    /// <summary>It is read otherwise than it runs.</summary>
    Wrong,

    /// <summary>It isn't C#: the generator is at fault.</summary>
    Broken,
}

/// <summary>How a program was read, compared with how it runs.</summary>
internal sealed record Outcome(Verdict Verdict, string Details);
