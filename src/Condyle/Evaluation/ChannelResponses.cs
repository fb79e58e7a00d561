using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// The responses on a node's channels. Each counts from its curve's value at rest: r = curve(now) − curve(at rest), so rest holds.
/// On top of the channels T, R, S that the node has otherwise (written, else an animator's, else at rest), with the sums m, a, s of the moves in metres, turns in degrees and
/// scale factors along the axes: T + rest rotation · m, R · turn(X, a.X) · turn(Y, a.Y) · turn(Z, a.Z), S · (1 + s).
/// </summary>
/// <remarks>Moves go along the node's own axes as it rests. Of the turns X comes first, then Y as it lies then, then Z. Continuous.</remarks>
internal sealed class ChannelResponses(RigNode node)
{
    private readonly List<(ResponseTerm Term, ResponseWay Way, Axis Axis)> terms = [];

    public RigNode Node => node;

    public IReadOnlyList<(ResponseTerm Term, ResponseWay Way, Axis Axis)> Terms => terms;

    public void Add(ResponseTerm term, ResponseWay way, Axis axis) => terms.Add((term, way, axis));

    public Trs On(Trs own, PoseFrames frames)
    {
        var (move, turn, grow) = (Vector3d.Zero, Vector3d.Zero, Vector3d.Zero);
        foreach (var (term, way, axis) in terms)
        {
            var along = Vector3d.Unit(axis) * (term.At(frames) - term.AtRest);
            if (way == ResponseWay.Move)
                move += along;
            else if (way == ResponseWay.Turn)
                turn += along;
            else
                grow += along;
        }

        return new(
            own.Translation + RestPose.ChannelsOf(node).Rotation.Rotate(move),
            own.Rotation * About(Vector3d.UnitX, turn.X) * About(Vector3d.UnitY, turn.Y) * About(Vector3d.UnitZ, turn.Z),
            new(own.Scale.X * (1 + grow.X), own.Scale.Y * (1 + grow.Y), own.Scale.Z * (1 + grow.Z)));
    }

    private static Quaterniond About(Vector3d axis, double degrees) => Quaterniond.About(axis, degrees * (Math.PI / 180));
}
