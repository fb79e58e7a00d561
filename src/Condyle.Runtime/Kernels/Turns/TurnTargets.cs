namespace Condyle.Runtime.Kernels;

/// <summary>Nodes whose rotation is written alone, and what their channels stand in.</summary>
internal sealed class TurnTargets
{
    public required int[] Channels { get; init; }

    public required int[] Bases { get; init; }

    public required Affines Placements { get; init; }

    /// <summary>Its signs say which way a frame with scale is turned.</summary>
    public required Vectors RestScales { get; init; }
}
