namespace Condyle;

/// <summary>What a control customarily rides.</summary>
public enum BodySpace
{
    /// <summary>The world.</summary>
    World,

    /// <summary>The hips.</summary>
    Hips,

    /// <summary>The chest.</summary>
    Chest,

    /// <summary>The head.</summary>
    Head,
}
