using System.Numerics;

namespace Condyle.Runtime.Clips.Files;

/// <summary>Outlines of controls, as pairs of points: one wide, about the origin, across Y.</summary>
internal static class Outlines
{
    private const int RingSides = 24;

    /// <summary>The same in the size and across the axis that a control wants.</summary>
    public static Vector3[] Of(ControlShape shape, float size, Axis facing) => [.. Lines(shape).Select(point => size * (facing switch
    {
        Axis.X => new Vector3(point.Y, point.Z, point.X),
        Axis.Z => new Vector3(point.Z, point.X, point.Y),
        _ => point,
    }))];

    private static IEnumerable<Vector3> Lines(ControlShape shape) => shape switch
    {
        ControlShape.Ring => Around(RingSides, 0),
        ControlShape.Square => Around(4, MathF.PI / 4, MathF.Sqrt(0.5f)),
        ControlShape.Triangle => Around(3, 0),
        ControlShape.Cross => [new(-0.5f, 0, 0), new(0.5f, 0, 0), new(0, 0, -0.5f), new(0, 0, 0.5f)],
        ControlShape.Diamond => [.. Around(4, 0), .. ToTips(Around(4, 0))],
        ControlShape.Box => [.. At(-0.5f), .. At(0.5f), .. Around(4, MathF.PI / 4, MathF.Sqrt(0.5f)).Where((_, i) => i % 2 == 0).SelectMany(corner => new[] { corner - (Vector3.UnitY / 2), corner + (Vector3.UnitY / 2) })],
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "It is no shape of a control."),
    };

    private static IEnumerable<Vector3> At(float height) => Around(4, MathF.PI / 4, MathF.Sqrt(0.5f)).Select(point => point + (Vector3.UnitY * height));

    private static IEnumerable<Vector3> ToTips(IEnumerable<Vector3> corners) =>
        corners.Where((_, i) => i % 2 == 0).SelectMany(corner => new[] { corner, Vector3.UnitY / 2, corner, -Vector3.UnitY / 2 });

    /// <summary>The sides of a polygon, from corner to corner; its first corner lies at an angle from Z towards X.</summary>
    private static IEnumerable<Vector3> Around(int sides, float from, float radius = 0.5f)
    {
        for (var side = 0; side < sides; side++)
        {
            yield return Corner(side);
            yield return Corner((side + 1) % sides);
        }

        Vector3 Corner(int corner) => radius * new Vector3(MathF.Sin(from + (corner * MathF.Tau / sides)), 0, MathF.Cos(from + (corner * MathF.Tau / sides)));
    }
}
