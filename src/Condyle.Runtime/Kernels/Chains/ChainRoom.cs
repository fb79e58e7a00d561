using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>Where solvers of chains work; it holds nothing between two of them.</summary>
/// <param name="joints">The most joints that a chain has.</param>
/// <param name="samples">The most samples that a curve has.</param>
/// <param name="nodes">The most nodes that a curve goes through.</param>
internal sealed class ChainRoom(int joints, int samples, int nodes)
{
    /// <summary>The unsolved bones' directions; none where a bone has no length.</summary>
    public Vector3[] Rest { get; } = new Vector3[joints];

    public float[] Lengths { get; } = new float[joints];

    /// <summary>The solved bones' directions.</summary>
    public Vector3[] Bones { get; } = new Vector3[joints];

    /// <summary>Bones that are tried, or the joints that they end in.</summary>
    public Vector3[] Tried { get; } = new Vector3[joints];

    /// <summary>The joints' rotations in the world: unsolved, then solved.</summary>
    public Quaternion[] Turns { get; } = new Quaternion[joints];

    /// <summary>How many times its length each bone has.</summary>
    public float[] Factors { get; } = new float[joints];

    public CurveSample[] Samples { get; } = new CurveSample[samples];

    public Vector3[] Nodes { get; } = new Vector3[nodes];

    public Vector3[] Slopes { get; } = new Vector3[nodes];
}
