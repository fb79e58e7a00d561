using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Compilation;

/// <summary>
/// What a two-bone copy's rest gives its solver, in double precision and in the frame of its root joint, so that a bend too slight for a float is still known.
/// </summary>
/// <param name="Line">From root to tip; along the first bone where the copy is folded onto its root.</param>
/// <param name="Side">The bend across the line; where the copy is straight: towards its pole, else as declared, else any.</param>
/// <param name="TipInGoal">How the tip is turned in the goal's frame at rest.</param>
internal sealed record TwoBoneRest(Vector3d Line, Vector3d Side, Quaterniond TipInGoal)
{
    public static TwoBoneRest Of(RigCopy copy, RigNode goal, RigNode? pole, RestPose rest)
    {
        var toRoot = rest.WorldOf(copy.Joints[0]).Inverse();
        var middle = toRoot.Apply(rest.WorldOf(copy.Joints[1]).Origin);
        var tip = toRoot.Apply(rest.WorldOf(copy.Joints[2]).Origin);
        var line = Bend.LineOf(Vector3d.Zero, middle, tip);
        var side = Bend.Of(Vector3d.Zero, middle, tip)
            ?? (pole is null ? null : Bend.Declared(toRoot.Apply(rest.WorldOf(pole).Origin), line))
            ?? (copy.Chain.Bend.TryKnown(out var declared) && declared is { } towards ? Bend.Declared(toRoot.Turn(towards), line) : null)
            ?? line.AnyAcross();
        return new(line, side, rest.WorldOf(goal).Rotation.Inverse * rest.WorldOf(copy.Joints[2]).Rotation);
    }
}
