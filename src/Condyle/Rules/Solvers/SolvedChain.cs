using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>A copy that something solves, with the places of its joints at rest.</summary>
/// <param name="By">The solver or the curve.</param>
/// <param name="Copy">The copy.</param>
/// <param name="Joints">Where its joints rest in the world.</param>
internal sealed record SolvedChain(RigElement By, RigCopy Copy, IReadOnlyList<Vector3d> Joints)
{
    /// <summary>The bones' lengths together.</summary>
    public double Length { get; } = Joints.Skip(1).Select((next, i) => (next - Joints[i]).Length).Sum();

    public Vector3d Root => Joints[0];

    public Vector3d Middle => Joints[Bend.MiddleOf(Joints.Count)];

    public Vector3d Tip => Joints[^1];

    /// <summary>The copies that a two-bone IK, a many-bone IK or a curve certainly solves, of which the rest is known. A two-bone IK on another chain is another rule's.</summary>
    public static IEnumerable<SolvedChain> In(CheckedRig rig)
    {
        var (model, rest) = (rig.Model, rig.Rest);
        foreach (var solver in model.TwoBones)
        {
            if (solver.Copy is { Joints.Count: 3 } copy && Of(solver, copy, rest) is { } chain)
                yield return chain;
        }

        foreach (var solver in model.ManyBones)
        {
            if (solver.Copy is { Joints.Count: > 1 } copy && Of(solver, copy, rest) is { } chain)
                yield return chain;
        }

        foreach (var curve in model.Curves)
        {
            if (curve.Copy is { Joints.Count: > 1 } copy && Of(curve, copy, rest) is { } chain)
                yield return chain;
        }
    }

    private static SolvedChain? Of(RigElement by, RigCopy copy, RestPose rest)
    {
        var joints = new List<Vector3d>();
        foreach (var joint in copy.Joints)
        {
            if (joint.Original is not { } original || !rest.TryWorldOf(original, out var world))
                return null;
            joints.Add(world.Origin);
        }

        return new SolvedChain(by, copy, joints);
    }
}
