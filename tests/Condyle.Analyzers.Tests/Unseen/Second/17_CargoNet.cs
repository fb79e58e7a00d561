using System.Numerics;
using Condyle;

namespace Unseen.Second.R17;

/// <summary>A cargo net of knots: four corners are handled by the animators, the edges hang between them, the inside can be pushed.</summary>
public sealed class CargoNet : IRigDefinition
{
    private const int Columns = 5;
    private const int Rows = 4;
    private const float Mesh = 0.6f;

    public void Define(RigDraft rig)
    {
        var ring = rig.Skeleton("cargo_net").Root("ring", JointRole.Helper, at: new Vector3(0, 3, 0));
        var knots = new Joint[Columns, Rows];
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var at = new Vector3((column - (Columns - 1) / 2f) * Mesh, -2, (row - (Rows - 1) / 2f) * Mesh);
                knots[column, row] = ring.Child($"knot_{column}_{row}", at: at);
            }
        }

        var hang = rig.Control("hang_net").PlacedAt(ring);
        rig.Drive(ring).ByChannels(hang);

        var corners = new Control[2, 2];
        for (var x = 0; x < 2; x++)
            for (var z = 0; z < 2; z++)
                corners[x, z] = rig.Control($"corner_{(x == 0 ? "right" : "left")}_{(z == 0 ? "back" : "front")}")
                    .Under(hang)
                    .PlacedAt(knots[x * (Columns - 1), z * (Rows - 1)])
                    .Lock(Channels.Turn);

        var gather = hang.Switch("gather");
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var knot = knots[column, row];
                if (IsCorner(column, row))
                {
                    rig.Drive(knot).ByChannels(corners[column / (Columns - 1), row / (Rows - 1)]);
                    continue;
                }

                var spread = Spread(column, row);
                if (IsEdge(column, row))
                    rig.Drive(knot).ByChannels(spread);
                else
                    Inside(knot, spread);
            }
        }

        return;

        // Bilinear between the four corners, in two steps because a blend of two reads better than one of four.
        Group Spread(int column, int row)
        {
            float u = (float)column / (Columns - 1), v = (float)row / (Rows - 1);
            var back = Between($"back_{column}_{row}_group", corners[0, 0], corners[1, 0], u);
            var front = Between($"front_{column}_{row}_group", corners[0, 1], corners[1, 1], u);
            return Between($"net_{column}_{row}_group", back, front, v);
        }

        Group Between(string name, Node first, Node second, float t)
        {
            var group = rig.Group(name).Under(hang);
            rig.Blend(group).From(first, 1 - t).From(second, t);
            return group;
        }

        // An inner knot has a handle of its own, and is drawn up to the ring when the net is gathered.
        void Inside(Joint knot, Group spread)
        {
            var push = rig.Control($"push_{knot.Name}").Under(spread).PlacedAt(knot).Lock(Channels.Turn);
            var drawn = rig.Group($"drawn_{knot.Name}_group").Under(hang);
            rig.Blend(knot)
                .From(push, gather.Inverse + gather * 0.2f)
                .From(drawn, gather * 0.8f);
        }
    }

    private static bool IsCorner(int column, int row) => (column is 0 or Columns - 1) && (row is 0 or Rows - 1);

    private static bool IsEdge(int column, int row) => column is 0 or Columns - 1 || row is 0 or Rows - 1;
}
