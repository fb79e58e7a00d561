namespace Condyle;

/// <summary>A plain colour for a control. Colours mean nothing by themselves; without one, each layer has its own.</summary>
public enum Tint
{
    /// <summary>Yellow towards orange.</summary>
    Amber,

    /// <summary>Blue towards green.</summary>
    Teal,

    /// <summary>Between blue and red.</summary>
    Violet,

    /// <summary>Green towards brown.</summary>
    Moss,

    /// <summary>Light brown.</summary>
    Sand,

    /// <summary>Pink towards orange.</summary>
    Coral,

    /// <summary>Grey towards blue.</summary>
    Slate,

    /// <summary>White.</summary>
    White,
}
