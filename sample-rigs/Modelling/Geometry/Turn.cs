namespace Modelling.Geometry;

/// <summary>A unit quaternion.</summary>
public readonly record struct Turn(double X, double Y, double Z, double W)
{
    /// <summary>The turn that takes the world's axes to three perpendicular unit vectors (right-handed).</summary>
    public static Turn ToAxes(Vec x, Vec y, Vec z)
    {
        // Of the four squares, the largest is divided by: nothing is lost to cancellation.
        var squares = new[] { 1 + x.X - y.Y - z.Z, 1 - x.X + y.Y - z.Z, 1 - x.X - y.Y + z.Z, 1 + x.X + y.Y + z.Z };
        var largest = Array.IndexOf(squares, squares.Max());
        var (x01, x02, x12) = (x.Y + y.X, x.Z + z.X, y.Z + z.Y);
        var (w0, w1, w2) = (y.Z - z.Y, z.X - x.Z, x.Y - y.X);
        var turn = largest switch
        {
            0 => new Turn(squares[0], x01, x02, w0),
            1 => new Turn(x01, squares[1], x12, w1),
            2 => new Turn(x02, x12, squares[2], w2),
            _ => new Turn(w0, w1, w2, squares[3]),
        };
        var scale = (turn.W < 0 ? -1 : 1) / Math.Sqrt(turn.X * turn.X + turn.Y * turn.Y + turn.Z * turn.Z + turn.W * turn.W);
        return new Turn(turn.X * scale, turn.Y * scale, turn.Z * scale, turn.W * scale);
    }
}
