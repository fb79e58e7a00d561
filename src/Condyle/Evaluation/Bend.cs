using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>The side to which a chain bends: from the line between its root and its tip towards its middle joint.</summary>
internal static class Bend
{
    /// <summary>A middle joint closer to the line than this share of the chain's length leaves the chain straight.</summary>
    public const double Straight = 1e-4;

    /// <summary>The joint that makes the bend.</summary>
    public static int MiddleOf(int joints) => joints / 2;

    /// <summary>The direction of the bend, across the line from root to tip; none where the chain is straight.</summary>
    public static Vector3d? Of(Vector3d root, Vector3d middle, Vector3d tip)
    {
        var across = (middle - root).Across(LineOf(root, middle, tip));
        return across.Length > Straight * ((middle - root).Length + (tip - middle).Length) ? across.Direction : null;
    }

    /// <summary>The direction from root to tip; some direction across the first bone where a chain is folded onto its root, so that its bend is towards its middle joint.</summary>
    public static Vector3d LineOf(Vector3d root, Vector3d middle, Vector3d tip) =>
        (tip - root).Length > BendPlane.Near * ((middle - root).Length + (tip - middle).Length) && (tip - root).Direction is { } line ? line
        : (middle - root).Length > Vector3d.Tiny ? (middle - root).AnyAcross()
        : Vector3d.UnitY;

    /// <summary>The part of a declared direction that is across the line; none where it runs along the line.</summary>
    public static Vector3d? Declared(Vector3d towards, Vector3d line) =>
        towards.Direction is { } direction && direction.Across(line) is var across && across.Length > Straight ? across.Direction : null;

    /// <summary>Where a chain's pole point is at rest: from its middle joint along its bend.</summary>
    /// <returns>The point, or what is wrong.</returns>
    public static (Vector3d? Point, GeometryFault? Fault) PolePoint(RigPolePoint spot, IReadOnlyList<Vector3d> joints)
    {
        var title = spot.Chain!.Title;
        if (joints.Count < 3)
            return Fault($"{Sentence(title)} has {joints.Count} joint{(joints.Count == 1 ? "" : "s")}, so it has no bend and no pole point. Ask a chain of three joints or more.", spot);
        if (!spot.Distance.TryKnown(out var distance))
            return Fault($"The distance of {spot.Title} isn't known.");
        if (!(distance > 0) || float.IsInfinity(distance))
            return Fault($"The distance of {spot.Title} is {Invariant.Print(distance)} m. Give a distance above zero.", spot);
        var (root, middle, tip) = (joints[0], joints[MiddleOf(joints.Count)], joints[joints.Count - 1]);
        if (Of(root, middle, tip) is { } bend)
            return (middle + (bend * distance), null);
        if (!spot.Chain.Bend.TryKnown(out var declared))
            return Fault($"To which side {title} bends isn't known.");
        if (declared is not { } towards)
            return Fault($"{Sentence(title)} is straight at rest, so nothing tells where its pole point is: say .Bending(...) with the direction to which it bends.", spot);
        return Declared(towards, LineOf(root, middle, tip)) is { } side
            ? (middle + (side * distance), null)
            : Fault($"{Sentence(title)} is straight at rest and .Bending({Invariant.Print(towards)}) runs along it. Give a direction across the chain.", spot);
    }

    private static (Vector3d? Point, GeometryFault? Fault) Fault(string message, RigElement? about = null) => (null, new GeometryFault(message, about));

    private static string Sentence(string title) => char.ToUpperInvariant(title[0]) + title.Substring(1);
}
