using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// The plane in which a copy bends at rest, in the frame of its root joint, so that it goes with the copy's parent.
/// A copy that is straight but for a bend below <see cref="Bend.Straight"/> bends to its pole, else as declared, else to any side.
/// </summary>
internal readonly record struct RestBend(Vector3d Line, Vector3d Side)
{
    public static RestBend Of(RigCopy copy, RigNode? pole, RestPose rest)
    {
        var toRoot = rest.WorldOf(copy.Joints[0]).Inverse();
        var middle = toRoot.Apply(rest.WorldOf(copy.Joints[Bend.MiddleOf(copy.Joints.Count)]).Origin);
        var tip = toRoot.Apply(rest.WorldOf(copy.Joints[copy.Joints.Count - 1]).Origin);
        var line = Bend.LineOf(Vector3d.Zero, middle, tip);
        var side = Bend.Of(Vector3d.Zero, middle, tip)
            ?? (pole is null ? null : Bend.Declared(toRoot.Apply(rest.WorldOf(pole).Origin), line))
            ?? (copy.Chain.Bend.TryKnown(out var declared) && declared is { } towards ? Bend.Declared(toRoot.Turn(towards), line) : null)
            ?? line.AnyAcross();
        return new(line, side);
    }

    /// <summary>The plane where the copy's root is, unsolved.</summary>
    public BendPlane In(Affine3d root) => BendPlane.Spanned(root.Turn(Line), root.Turn(Side));
}
