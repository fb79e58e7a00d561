using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>In which plane a limb bends, and where the pole stands that says so.</summary>
/// <remarks>Not continuous where the limb turns almost straight or bends a quarter turn beside its plane.</remarks>
internal static class PlanePlace
{
    /// <summary>Joints nearer to the line than this share of the limb's length leave it almost straight.</summary>
    private const double AlmostStraight = 0.01;

    /// <summary>
    /// By how much a solved limb's plane must turn about its line, in radians: to the side where the joints should be. Where the limb is almost straight or bends backwards,
    /// so that this side says little or would turn the first bone over, to where that bone keeps its roll instead.
    /// </summary>
    /// <param name="found">The joints from the root on, as they are solved.</param>
    /// <param name="wanted">The same as they should be.</param>
    /// <param name="line">The line from root to tip.</param>
    /// <param name="length">The limb's length.</param>
    public static double TurnOf(IReadOnlyList<Affine3d> found, IReadOnlyList<Affine3d> wanted, Vector3d line, double length)
    {
        var off = wanted[0].Rotation * found[0].Rotation.Inverse;
        var byRoll = 2 * Math.Atan2(Vector3d.Dot(off.Vector, line), off.W);
        var (cosine, sine, has, should) = (0.0, 0.0, 0.0, 0.0);
        foreach (var (solved, frame) in found.Zip(wanted))
        {
            var (from, to) = ((solved.Origin - found[0].Origin).Across(line), (frame.Origin - found[0].Origin).Across(line));
            cosine += Vector3d.Dot(from, to);
            sine += Vector3d.Dot(line, Vector3d.Cross(from, to));
            (has, should) = (Math.Max(has, from.Length), Math.Max(should, to.Length));
        }

        var bySide = Math.Atan2(sine, cosine);
        return Math.Min(has, should) > AlmostStraight * length && Math.Cos(bySide - byRoll) > 0 ? bySide : byRoll;
    }

    /// <summary>A place for the pole: on the side of the bend, as far from it as at rest.</summary>
    /// <param name="copy">The solved copy.</param>
    /// <param name="pole">The pole.</param>
    /// <param name="plane">The plane to face.</param>
    /// <param name="root">Where the limb's root is.</param>
    /// <param name="middle">Where the joint that makes the bend should be.</param>
    /// <param name="length">The limb's length as it stands.</param>
    /// <param name="rest">The rest.</param>
    public static Vector3d PoleFor(RigCopy copy, RigNode pole, BendPlane plane, Vector3d root, Vector3d middle, double length, RestPose rest)
    {
        var size = ChainLength.AtRest(copy, rest) is > 0 and var atRest ? length / atRest : 1;
        var away = (rest.WorldOf(pole).Origin - rest.WorldOf(copy.Joints[Bend.MiddleOf(copy.Joints.Count)]).Origin).Length * size;
        var toMiddle = middle - root;
        return root
            + (plane.Line * Vector3d.Dot(toMiddle, plane.Line))
            + (plane.Side * (toMiddle.Across(plane.Line).Length + Math.Max(away, length / 10)));
    }
}
