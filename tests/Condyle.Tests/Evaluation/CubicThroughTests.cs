using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class CubicThroughTests
{
    private static readonly Gen<Vector3d[]> Points = Any.Vector.Array[2, 7];

    [Fact]
    public void It_goes_through_its_points() => Points.Sample(points =>
    {
        var curve = new CubicThrough(points);
        for (var span = 0; span < curve.Spans; span++)
        {
            Near.Equal(points[span], curve.PointAt(span, 0));
            Near.Equal(points[span + 1], curve.PointAt(span, 1));
        }
    });

    [Fact]
    public void Its_direction_goes_on_from_span_to_span() => Points.Sample(points =>
    {
        var curve = new CubicThrough(points);
        for (var span = 1; span < curve.Spans; span++)
        {
            if (curve.DirectionAt(span - 1, 1) is { } before && curve.DirectionAt(span, 0) is { } after)
                Near.Equal(before, after, 1e-9);
        }
    });

    [Fact]
    public void Its_direction_is_that_in_which_its_points_move() => Gen.Select(Points, Gen.Double[0.05, 0.95]).Sample((points, share) =>
    {
        var curve = new CubicThrough(points);
        var step = curve.PointAt(0, share + 1e-6) - curve.PointAt(0, share - 1e-6);
        if (step.Length > 1e-7)
            Near.Equal(step.Direction!.Value, curve.DirectionAt(0, share)!.Value, 1e-4);
    });

    [Fact]
    public void Between_inner_points_it_is_the_chordal_curve_of_Barry_and_Goldman() => Gen.Select(Any.Vector.Array[4], Gen.Double[0, 1]).Sample((points, share) =>
    {
        // Barry and Goldman 1988, "A recursive evaluation algorithm for a class of Catmull-Rom splines": a pyramid of straight lines over the knots, here chord lengths.
        var knots = new double[4];
        for (var i = 1; i < 4; i++)
            knots[i] = knots[i - 1] + (points[i] - points[i - 1]).Length;
        if (points.Zip(points.Skip(1), (a, b) => (b - a).Length).Min() < 0.05)
            return;
        var t = knots[1] + (share * (knots[2] - knots[1]));
        Vector3d Line(Vector3d a, double from, Vector3d b, double to) => (a * ((to - t) / (to - from))) + (b * ((t - from) / (to - from)));
        var (a1, a2, a3) = (Line(points[0], knots[0], points[1], knots[1]), Line(points[1], knots[1], points[2], knots[2]), Line(points[2], knots[2], points[3], knots[3]));
        var (b1, b2) = (Line(a1, knots[0], a2, knots[2]), Line(a2, knots[1], a3, knots[3]));

        Near.Equal(Line(b1, knots[1], b2, knots[2]), new CubicThrough(points).PointAt(1, share), 1e-8);
    });

    [Fact]
    public void Points_in_line_give_an_even_line()
    {
        var curve = new CubicThrough([new(0, 0, 0), new(1, 2, 2), new(1.5, 3, 3), new(4, 8, 8)]);

        for (var span = 0; span < 3; span++)
            Near.Equal(new Vector3d(1, 2, 2) / 3, curve.DirectionAt(span, 0.3)!.Value);
        Near.Equal(new Vector3d(0.25, 0.5, 0.5), curve.PointAt(0, 0.25));
        Near.Equal(new Vector3d(2, 4, 4), curve.PointAt(2, 0.2));
    }

    [Fact]
    public void Points_that_meet_leave_it_finite()
    {
        foreach (var points in new Vector3d[][] { [Vector3d.One, Vector3d.One], [Vector3d.Zero, Vector3d.Zero, Vector3d.One], [Vector3d.One, Vector3d.Zero, Vector3d.Zero, Vector3d.One] })
        {
            var curve = new FramedCurve(points, Vector3d.UnitX);
            curve.Frame(curve.StartAlong.AnyAcross());
            for (var length = 0.0; length < 3; length += 0.1)
                Near.Finite(Affine3d.Rigid(curve.At(length).Point, curve.At(length).Frame));
        }
    }
}
