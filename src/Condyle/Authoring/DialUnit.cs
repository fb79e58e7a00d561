namespace Condyle;

/// <summary>What a dial's numbers count.</summary>
public enum DialUnit
{
    /// <summary>Nothing in particular.</summary>
    None,

    /// <summary>Degrees.</summary>
    Degrees,

    /// <summary>Metres.</summary>
    Metres,

    /// <summary>Shares of a whole: one is all of it.</summary>
    Share,
}
