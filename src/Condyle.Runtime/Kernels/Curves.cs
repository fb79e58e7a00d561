namespace Condyle.Runtime.Kernels;

/// <summary>
/// Curves in pieces, one stretch a curve. Each piece is a cubic of the way u from where it begins: ((c·u + b)·u + a)·u + v, the cubic Hermite spline of
/// glTF 2.0 (appendix C) with its products multiplied out. The first and the last piece go on beyond the keys.
/// </summary>
internal sealed class Curves
{
    /// <summary>For each curve, the end of its stretch of pieces.</summary>
    public required int[] Ends { get; init; }

    /// <summary>Where each piece gives way to the next one of its curve.</summary>
    public required float[] Until { get; init; }

    /// <summary>Where each piece begins.</summary>
    public required float[] From { get; init; }

    public required float[] Values { get; init; }

    public required float[] Slopes { get; init; }

    public required float[] Squares { get; init; }

    public required float[] Cubes { get; init; }

    /// <summary>The input of each curve.</summary>
    public required int[] Inputs { get; init; }
}
