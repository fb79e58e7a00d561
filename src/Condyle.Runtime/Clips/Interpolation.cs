namespace Condyle.Runtime;

/// <summary>How a track goes from key to key: the modes of a glTF 2.0 sampler.</summary>
internal enum Interpolation
{
    /// <summary>Along a line; turns by the shortest slerp.</summary>
    Linear,

    /// <summary>A key's value holds until the next key.</summary>
    Step,

    /// <summary>By a cubic Hermite spline through the keys, with a slope into each key and one out of it.</summary>
    Spline,
}
