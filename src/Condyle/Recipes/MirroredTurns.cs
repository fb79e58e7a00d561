using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Recipes;

/// <summary>By which sign a turn that is counted on the left makes its mirror image on the right.</summary>
internal static class MirroredTurns
{
    /// <param name="rig">The rig.</param>
    /// <param name="joint">The joint that is turned.</param>
    /// <param name="side">Its side.</param>
    /// <param name="axis">The axis of its own frame.</param>
    /// <param name="allAxesMirror">What is said of it; where nothing is, the frames of both sides tell at rest.</param>
    /// <param name="conventions">How the other side's joint is found by its name.</param>
    public static Fact<int> SignOf(RigDraft rig, Joint joint, Side side, Fact<Axis> axis, Fact<bool>? allAxesMirror, Conventions conventions)
    {
        if (side == Side.Left)
            return 1;
        if (!axis.TryKnown(out var about))
            return Fact<int>.Open;

        // Customarily the axes mirror but for X, which is turned round.
        var customary = about == Axis.X ? 1 : -1;
        if (allAxesMirror is { } said)
            return said.TryKnown(out var alike) ? alike ? 1 : customary : Fact<int>.Open;
        if (rig.NameOf(joint.IdIn(rig)).IsOpen)
            return Fact<int>.Open;
        if (rig.OtherSideOf(joint, conventions) is not { } left)
            return customary;
        return rig.RestOf(left).TryKnown(out var other) && rig.RestOf(joint).TryKnown(out var own)
            ? MirrorBehaviour.Between(other, own)?.TurnSign(about) ?? customary
            : Fact<int>.Open;
    }

    private static Joint? OtherSideOf(this RigDraft rig, Joint joint, Conventions conventions)
    {
        if (SidedName.Of(rig.NameOf(joint.IdIn(rig)), conventions) is not { } sided)
            return null;
        for (var id = 0; id < rig.Log.Count; id++)
        {
            if (rig.Log[id] is JointDeclared declared && declared.Skeleton == rig.SkeletonOf(joint.IdIn(rig)) && declared.Name.TryKnown(out var name) && name == sided.Counterpart)
                return new Joint(rig, id);
        }

        return null;
    }
}
