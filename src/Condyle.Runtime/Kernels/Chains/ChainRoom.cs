namespace Condyle.Runtime.Kernels;

/// <summary>Where solvers of chains work; it holds nothing between two of them.</summary>
internal sealed class ChainRoom
{
    /// <param name="sizes">How much room they need.</param>
    /// <param name="block">Numbers to take it from.</param>
    /// <param name="start">The first of them.</param>
    /// <param name="width">How many rigs lie side by side.</param>
    public ChainRoom(RoomSizes sizes, float[] block, int start, int width)
    {
        int Take(int numbers)
        {
            var first = start;
            start += numbers * width;
            return first;
        }

        Vectors VectorsOf(int count) => new(block, Take(count * Vectors.Components), count, width);
        Numbers NumbersOf(int count) => new(block, Take(count), count, width);
        (Rest, Bones, Tried) = (VectorsOf(sizes.Joints), VectorsOf(sizes.Joints), VectorsOf(sizes.Joints));
        Turns = new(block, Take(sizes.Joints * Rotations.Components), sizes.Joints, width);
        (Lengths, Factors) = (NumbersOf(sizes.Joints), NumbersOf(sizes.Joints));
        (Points, Along, Across, Ways) = (VectorsOf(sizes.Samples), VectorsOf(sizes.Samples), VectorsOf(sizes.Samples), NumbersOf(sizes.Samples));
        (Nodes, Slopes) = (VectorsOf(sizes.Nodes), VectorsOf(sizes.Nodes));
    }

    /// <summary>The unsolved bones' directions; none where a bone has no length.</summary>
    public Vectors Rest { get; }

    public Numbers Lengths { get; }

    /// <summary>The solved bones' directions.</summary>
    public Vectors Bones { get; }

    /// <summary>Bones that are tried, or the joints that they end in.</summary>
    public Vectors Tried { get; }

    /// <summary>The joints' rotations in the world: unsolved, then solved.</summary>
    public Rotations Turns { get; }

    /// <summary>How many times its length each bone has.</summary>
    public Numbers Factors { get; }

    /// <summary>The nodes that a curve goes through.</summary>
    public Vectors Nodes { get; }

    /// <summary>Its slope at each.</summary>
    public Vectors Slopes { get; }

    /// <summary>Points of the curve, its pieces' ends.</summary>
    public Vectors Points { get; }

    /// <summary>The curve's tangent at each.</summary>
    public Vectors Along { get; }

    /// <summary>A direction across it that is carried along without turning about the curve.</summary>
    public Vectors Across { get; }

    /// <summary>The length from the curve's start to each.</summary>
    public Numbers Ways { get; }
}

/// <param name="Joints">The most joints that a chain has.</param>
/// <param name="Samples">The most samples that a curve has.</param>
/// <param name="Nodes">The most nodes that a curve goes through.</param>
internal readonly record struct RoomSizes(int Joints, int Samples, int Nodes)
{
    /// <summary>The numbers of one rig.</summary>
    public int Numbers =>
        (Joints * ((3 * Vectors.Components) + Rotations.Components + 2))
        + (Samples * ((3 * Vectors.Components) + 1))
        + (Nodes * 2 * Vectors.Components);
}
