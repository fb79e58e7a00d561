using System.Numerics;
using Condyle;

namespace Unseen.First.R16;

/// <summary>A cast net: a sheet of knots between four corner weights, gathered by a drawstring along its hem.</summary>
public sealed class FishingNet : IRigDefinition
{
    private const int Rows = 5;
    private const int Columns = 5;
    private const float Mesh = 0.4f;

    // Which way each knot hangs: rows from the hem up, bits for columns.
    private static readonly byte[] Floats = [0b10101, 0b00000, 0b00100, 0b00000, 0b10001];

    private static readonly string[][] CornerNames = [["corner_back_right", "corner_back_left"], ["corner_front_right", "corner_front_left"]];

    public void Define(RigDraft rig)
    {
        var centre = rig.Skeleton("fishing_net").Root("centre", JointRole.Helper, new Vector3(0, 1, 0));
        var net = rig.Control("net").PlacedAt(centre);
        rig.Drive(centre).ByChannels(net);
        var gather = net.Switch("gather");

        var knots = new Joint[Rows, Columns];
        for (var row = 0; row < knots.GetLength(0); row++)
        {
            for (var column = 0; column < knots.GetLength(1); column++)
                knots[row, column] = centre.Child($"knot_{row}{(char)('a' + column)}", at: PlaceOf(row, column));
        }

        var corners = new Control[2, 2];
        for (var v = 0; v < 2; v++)
        {
            for (var u = 0; u < 2; u++)
            {
                var knot = knots[v * (Rows - 1), u * (Columns - 1)];
                corners[v, u] = rig.Control(CornerNames[v][u]).Under(net).PlacedAt(knot);
            }
        }

        var drawn = rig.Control("drawstring").Under(net).Lock(Channels.Turn);
        var floats = 0;
        checked
        {
            foreach (var (row, column) in Cells())
            {
                var isFloat = (Floats[row] >> (Columns - 1 - column) & 1) == 1;
                floats += isFloat ? 1 : 0;
                var knot = knots[row, column];
                if (isFloat && !IsCorner(row, column))
                    Free(rig, knot, net, checked((byte)(row * Columns + column)));
                else if (row == 0 && !IsCorner(row, column))
                    Hem(rig, knot, corners, column / (float)(Columns - 1), drawn, gather);
                else
                    Stretch(rig, knot, corners, row / (float)(Rows - 1), column / (float)(Columns - 1));
            }
        }

        rig.Label("net_label", $"{knots.Length} knots, rank {knots.Rank}, {floats} floats").Under(net);
    }

    private static System.Collections.Generic.IEnumerable<(int Row, int Column)> Cells()
    {
        for (var cell = 0; cell < Rows * Columns; cell++)
            yield return (cell / Columns, cell % Columns);
    }

    private static bool IsCorner(int row, int column) => row is 0 or Rows - 1 && column is 0 or Columns - 1;

    private static Vector3 PlaceOf(int row, int column) => new((column - (Columns - 1) / 2) * Mesh, 0, (row - (Rows - 1) / 2) * Mesh);

    // Every knot rests where the shares of the four corners put it, so the sheet is flat until a corner moves.
    private static void Stretch(RigDraft rig, Joint knot, Control[,] corners, float v, float u)
    {
        float[,] shares = { { (1 - v) * (1 - u), (1 - v) * u }, { v * (1 - u), v * u } };
        var blend = rig.Blend(knot);
        for (var i = 0; i < shares.Length; i++)
        {
            if (shares[i >> 1, i & 1] > 0)
                blend = blend.From(corners[i >> 1, i & 1], shares[i >> 1, i & 1]);
        }
    }

    private static void Hem(RigDraft rig, Joint knot, Control[,] corners, float u, Control drawn, Switch gather) =>
        rig.Blend(knot).From(corners[0, 0], (1 - u) * gather.Inverse).From(corners[0, 1], u * gather.Inverse).From(drawn, gather * 0.5f);

    private static void Free(RigDraft rig, Joint knot, Control net, byte id)
    {
        var weight = rig.Control($"float_{id:x2}").Under(net).PlacedAt(knot).Lock(Channels.Turn).LimitMove(Axis.Y, -0.5f, 0.5f);
        rig.Drive(knot).ByChannels(weight);
    }
}
