namespace Condyle.Runtime;

/// <summary>Which side of a key a slope is for. With different slopes before and after it, motion has a corner there.</summary>
public enum KeySide
{
    /// <summary>Before the key and after it: the motion goes through smoothly.</summary>
    Both,

    /// <summary>Before the key: how the motion comes to it.</summary>
    Before,

    /// <summary>After the key: how the motion leaves it.</summary>
    After,
}
