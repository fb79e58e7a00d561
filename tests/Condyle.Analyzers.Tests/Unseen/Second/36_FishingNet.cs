using System;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R36;

/// <summary>A net hung up to dry: knots in a grid, a handle on every second one of the rim, the inside carried by its neighbours.</summary>
public sealed class FishingNet : IRigDefinition
{
    private const int Columns = 7;
    private const int Rows = 5;

    public void Define(RigDraft rig)
    {
        var beam = rig.Skeleton("fishing_net").Root("beam", JointRole.Helper, new Vector3(0, 3, 0));
        var hang = rig.Control("beam_move").PlacedAt(beam);
        rig.Drive(beam).ByChannels(hang);

        var knots = Knots(beam);
        var handles = new Node?[Columns, Rows];
        var inside = rig.Group("net_inside_group").Under(hang);

        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var cell = new Cell(column, row);
                if (!cell.OnRim(Columns, Rows) || (column + row) % 2 != 0)
                    continue;
                var handle = rig.Control($"knot_{cell}_pull").Under(hang).PlacedAt(knots[column, row]).Lock(Channels.Turn);
                rig.Drive(knots[column, row]).ByChannels(handle);
                handles[column, row] = handle;
            }
        }

        // The rest, from the outside in: each knot goes with the knots around it that are done already.
        var done = new bool[Columns, Rows];
        foreach (var ring in new[] { 0, 1, 2 })
        {
            for (var column = ring; column < Columns - ring; column++)
            {
                for (var row = ring; row < Rows - ring; row++)
                {
                    var cell = new Cell(column, row);
                    if (handles[column, row] is null && !done[column, row])
                        handles[column, row] = Carry(rig, knots[column, row], handles, cell, inside);
                    done[column, row] = true;
                }
            }
        }
    }

    private static Group Carry(RigDraft rig, Joint knot, Node?[,] handles, Cell cell, Group inside)
    {
        Span<Cell> around = [cell + Cell.Left, cell - Cell.Left, cell + Cell.Up, cell - Cell.Up];
        var count = 0;
        foreach (var next in around)
        {
            if (next.In(Columns, Rows) && handles[next.Column, next.Row] is not null)
                around[count++] = next;
        }

        var carried = rig.Group($"knot_{cell}_group").Under(inside).PlacedAt(knot);
        rig.Drive(knot).ByChannels(carried);
        if (count == 0)
            return carried;

        var blend = rig.Blend(carried);
        for (var i = 0; i < count; i++)
        {
            var (column, row) = around[i];
            var seat = rig.Group($"knot_{cell}_on_{around[i]}_group").Under(handles[column, row]!.Value).PlacedAt(knot);
            blend.From(seat, 1f / count);
        }

        return carried;
    }

    private static Joint[,] Knots(Joint beam)
    {
        var knots = new Joint[Columns, Rows];
        for (var column = 0; column < knots.GetLength(0); column++)
        {
            var above = beam;
            for (var row = 0; row < knots.GetLength(1); row++)
            {
                var cell = new Cell(column, row);
                var step = row == 0 ? new Vector3((column - Columns / 2) * 0.4f, -0.2f, 0) : new Vector3(0, -0.4f, 0.02f * row);
                above = knots[column, row] = above.Child($"knot_{cell}", at: step);
            }
        }

        return knots;
    }

    private readonly struct Cell(int column, int row) : IEquatable<Cell>
    {
        public static readonly Cell Left = new(1, 0);
        public static readonly Cell Up = new(0, -1);

        public int Column { get; } = column;

        public int Row { get; } = row;

        public static Cell operator +(Cell a, Cell b) => new(a.Column + b.Column, a.Row + b.Row);

        public static Cell operator -(Cell a, Cell b) => a + -b;

        public static Cell operator -(Cell a) => new(-a.Column, -a.Row);

        public static bool operator ==(Cell a, Cell b) => a.Equals(b);

        public static bool operator !=(Cell a, Cell b) => !(a == b);

        public bool In(int columns, int rows) => Column >= 0 && Row >= 0 && Column < columns && Row < rows;

        public bool OnRim(int columns, int rows) => In(columns, rows) && (Column == 0 || Row == 0 || Column == columns - 1 || Row == rows - 1);

        public void Deconstruct(out int column, out int row) => (column, row) = (Column, Row);

        public bool Equals(Cell other) => Column == other.Column && Row == other.Row;

        public override bool Equals(object? obj) => obj is Cell other && Equals(other);

        public override int GetHashCode() => Column * 397 ^ Row;

        public override string ToString() => $"{(char)('a' + Column)}{Row + 1}";
    }
}
