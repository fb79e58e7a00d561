namespace Condyle;

/// <summary>A choice of a node's own channels: moves (translation), turns (rotation) and scales, by axis.</summary>
[Flags]
public enum Channels
{
    /// <summary>No channel.</summary>
    None = 0,

    /// <summary>Translation along X.</summary>
    MoveX = 1 << 0,

    /// <summary>Translation along Y.</summary>
    MoveY = 1 << 1,

    /// <summary>Translation along Z.</summary>
    MoveZ = 1 << 2,

    /// <summary>Rotation about X.</summary>
    TurnX = 1 << 3,

    /// <summary>Rotation about Y.</summary>
    TurnY = 1 << 4,

    /// <summary>Rotation about Z.</summary>
    TurnZ = 1 << 5,

    /// <summary>Scale along X.</summary>
    ScaleX = 1 << 6,

    /// <summary>Scale along Y.</summary>
    ScaleY = 1 << 7,

    /// <summary>Scale along Z.</summary>
    ScaleZ = 1 << 8,

    /// <summary>All translation.</summary>
    Move = MoveX | MoveY | MoveZ,

    /// <summary>All rotation.</summary>
    Turn = TurnX | TurnY | TurnZ,

    /// <summary>All scale.</summary>
    Scale = ScaleX | ScaleY | ScaleZ,

    /// <summary>Every channel.</summary>
    All = Move | Turn | Scale,
}
