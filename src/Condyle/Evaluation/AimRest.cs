using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>What an aim's rest gives it: directions in the node's own frame as it rests.</summary>
/// <param name="Node">The node that it turns.</param>
/// <param name="Target">What it points at.</param>
/// <param name="Along">What points at the target.</param>
/// <param name="Up">What sets the roll.</param>
/// <param name="Side">What faces up, across <paramref name="Along"/>; none where nothing does, or up lies on the line, so that the roll goes with the node's parent.</param>
internal sealed record AimRest(RigNode Node, RigNode Target, Vector3d Along, (RigNode Node, Axis? Axis)? Up, Vector3d? Side)
{
    /// <summary>Nearer than this, in metres, nodes stand on each other; and a direction whose part across the line is less lies on it.</summary>
    public const double Near = 1e-5;

    /// <summary>The rest of an aim; none where the sentence is unfinished.</summary>
    /// <exception cref="RigGeometryException">Something isn't known, or nothing says what points at the target.</exception>
    public static AimRest? Of(RigAim aim, RestPose rest)
    {
        if (Facts.Known(aim.Target, $"The target of {aim.Title}") is not { } target)
            return null;
        var node = aim.Node ?? throw new RigGeometryException($"The node of {aim.Title} isn't known.");
        var (world, along) = (rest.WorldOf(node), Facts.Known(aim.Along, $"What {aim.Title} points with"));
        var pointing = along is { } axis ? world.Turn(Vector3d.Unit(axis)) : rest.WorldOf(target).Origin - world.Origin;
        if (along is null && pointing.Length < Near)
            throw new RigGeometryException($"{target.Title} rests on {node.Title}, so that nothing says what points at it. Say which axis does with .Along(...).", aim);
        var direction = world.Rotation.Inverse.Rotate(pointing).Direction ?? Vector3d.Unit(along ?? Axis.X);
        if (Facts.Known(aim.Up, $"The up of {aim.Title}") is not { } said)
            return new(node, target, direction, null, null);
        var up = (said.Node, Facts.Known(said.Axis, $"The axis of the up of {aim.Title}"));
        var side = DirectionOf(up, rest.WorldOf(said.Node), world.Origin) is { } facing ? Across(world.Rotation.Inverse.Rotate(facing), direction) : null;
        return new(node, target, direction, up, side);
    }

    /// <summary>The direction that is up from a point; none where there is none.</summary>
    public static Vector3d? DirectionOf((RigNode Node, Axis? Axis) up, Affine3d world, Vector3d from) =>
        up.Axis is { } axis ? world.Turn(Vector3d.Unit(axis)).Direction
        : world.Origin - from is var towards && towards.Length >= Near ? towards.Direction
        : null;

    /// <summary>The part of a direction across a line; none where it lies on the line.</summary>
    public static Vector3d? Across(Vector3d direction, Vector3d line) => direction.Across(line) is var across && across.Length >= Near ? across.Direction : null;
}
