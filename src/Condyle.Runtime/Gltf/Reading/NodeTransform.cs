using System.Numerics;
using Condyle.Model;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>A node's local translation, rotation (unit length) and scale, whichever way the file gives them. They are exact unless a rotation isn't quite of unit length or a matrix is rounded.</summary>
internal readonly record struct NodeTransform(Vector3 Translation, Quaternion Rotation, Vector3 Scale, bool IsExact)
{
    /// <summary>A float's rounding.</summary>
    private const double Rounding = 1e-6;

    /// <exception cref="BadInputException">The node's matrix is sheared or flattens an axis, so no translation, rotation and scale equals it.</exception>
    public static NodeTransform Of(JsonSpot node)
    {
        if (node["matrix"] is { Exists: true } matrix)
            return FromMatrix(matrix);
        double[] rotation = node["rotation"] is { Exists: true } given ? given.Numbers(4) : [0, 0, 0, 1];
        return new NodeTransform(
            Vector(node["translation"], Vector3.Zero),
            LocalMatrix.Normalised(rotation),
            Vector(node["scale"], Vector3.One),
            IsExact: Math.Abs(Math.Sqrt(rotation.Sum(x => x * x)) - 1) < Rounding);
    }

    private static Vector3 Vector(JsonSpot spot, Vector3 whenAbsent) => spot.Exists ? ToVector(spot.Numbers(3)) : whenAbsent;

    private static Vector3 ToVector(double[] xyz) => new((float)xyz[0], (float)xyz[1], (float)xyz[2]);

    private static NodeTransform FromMatrix(JsonSpot spot)
    {
        var parts = LocalMatrix.Of(spot.Numbers(16));
        if (parts.Problem is { } problem)
            throw spot.Wrong(problem, parts.Remedy);
        return new NodeTransform(parts.Transform.Translation, parts.Transform.Rotation, parts.Transform.Scale, parts.IsExact);
    }
}
