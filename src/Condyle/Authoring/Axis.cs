namespace Condyle;

/// <summary>An axis of a node's own frame.</summary>
public enum Axis
{
    /// <summary>The local +X axis.</summary>
    X,

    /// <summary>The local +Y axis.</summary>
    Y,

    /// <summary>The local +Z axis.</summary>
    Z,
}
