namespace Condyle.Runtime;

/// <summary>How a track goes from key to key: the modes of a glTF 2.0 sampler. What a spline needs besides values is added to <see cref="Track{T}"/> with it.</summary>
internal enum Interpolation
{
    /// <summary>Along a line; turns by the shortest slerp.</summary>
    Linear,

    /// <summary>A key's value holds until the next key.</summary>
    Step,
}
