using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY7002: a copy that is tagged for IK is solved, or something else moves it.</summary>
internal sealed class IkCopyWithoutSolver : Rule
{
    private const string Tag = "ik";

    public override string Id => "CDY7002";

    public override string Title => "IK copy without a solver";

    public override Severity Severity => Severity.Warning;

    /// <summary>Whether a copy is made to be solved.</summary>
    public static bool IsForIk(RigCopy copy) =>
        !copy.IsUnknown && copy.Joints.Count > 0 && copy.Tag.TryKnown(out var tag) && tag.Split('_').Contains(Tag, StringComparer.OrdinalIgnoreCase);

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var copies = rig.Model.Copies.FindAll(IsForIk);
        if (copies.Count == 0 || rig.Moves is not { AreOpen: false } moves)
            yield break;
        foreach (var copy in copies)
        {
            if (copy.Joints.Exists(joint => moves.Of(joint).Count > 0) || IsMistaken(copy, rig.Model, moves))
                continue;
            yield return new Finding(
                this,
                copy,
                $"Nothing solves {copy.Title} and nothing else moves it: whatever takes the limb from it gets the rest pose, wherever the animator moves the goal. Solve it with rig.TwoBone or rig.ManyBone, and give it a goal to reach.",
                copy.Place)
            {
                ActsOn = copy.Joints[0].Original,
                Related = [copy.Chain.Place],
            };
        }
    }

    // Where another copy of the chain is solved that something drives as well, the solver was meant for this one, and that is told.
    private static bool IsMistaken(RigCopy copy, RigModel model, Moves moves) => model.TwoBones.Concat<RigSolver>(model.ManyBones)
        .Any(solver => solver.Copy is { } other && other != copy && other.Chain == copy.Chain && other.Joints.Exists(joint => moves.Of(joint).Count > 1));
}
