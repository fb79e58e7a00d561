using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY5006: a control moves something of the rig.</summary>
internal sealed class ControlMovesNothing : Rule
{
    public override string Id => "CDY5006";

    public override string Title => "Control that moves nothing";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var motion = rig.Motion;
        if (!motion.IsWhole || !IsFinished(rig.Model, rig.Sums) || Unused(rig) is not { Count: > 0 } unused)
            yield break;
        // What stands at a chain of which an IK copy is driven by nothing waits for that copy's solver.
        var idle = new HashSet<RigNode?>(rig.Model.Copies.Where(copy => IkCopyWithoutSolver.IsForIk(copy) && !copy.Joints.Exists(motion.IsWritten)).SelectMany(copy => copy.Chain.Joints ?? []));
        var passedOver = new HashSet<RigNode?>(rig.Model.Drives.Where(IsMissed).Select(drive => drive.Target!.Original ?? drive.Target));
        foreach (var control in unused)
        {
            // One that hangs under itself is told of as a loop.
            if (!idle.Contains(JointOf(control)) && !IsTakenFor(control, rig) && !control.Above.Contains(control) && !passedOver.Contains(JointOf(control)))
            {
                yield return new Finding(
                    this,
                    control,
                    $"Control {control.Title} moves nothing: it carries no node, drives none, and is no goal, pole or space of another. An animator keys it and sees nothing happen. {Advice(control, motion)}",
                    control.Place);
            }
        }
    }

    /// <summary>The controls that nothing goes by. One that isn't placed stands where something else does, and may mark that.</summary>
    private static List<RigNode> Unused(CheckedRig rig)
    {
        var unused = new HashSet<RigNode>(rig.Model.Nodes.FindAll(node => node.Kind == NodeKind.Control && node.Placement.TryKnown(out var placement) && placement is not null && !rig.Motion.IsUsed(node)));
        if (unused.Count == 0)
            return [];
        // Where something stands at a control, it is wanted for its place; and a control may only be there for its dials and switches.
        foreach (var node in rig.Model.Nodes)
        {
            if (PlaceOf(node) is { } at)
                unused.Remove(at);
        }

        unused.ExceptWith(ControlsWithSettings(rig.Model));
        return rig.Model.Nodes.FindAll(unused.Contains);
    }

    /// <summary>The controls that move nothing, by the joint at which each stands.</summary>
    public static ILookup<RigNode, RigNode> IdleByJoint(CheckedRig rig) => (
        from control in Unused(rig)
        where !control.IsUnknown
        let joint = JointOf(control)
        where joint is not null
        select (control, joint)).ToLookup(idle => idle.joint, idle => idle.control);

    // Where this side takes the other side's control in its place, that is the slip.
    private static bool IsTakenFor(RigNode control, CheckedRig rig) => rig.Pairs.CounterpartOf(control) is { } other
        && rig.Motion.MovedBy(other).Any(moved => rig.Pairs.SideOf(moved) == rig.Pairs.SideOf(control));

    // What is driven by a node that stands elsewhere leaves its rest, and the control that stands there is the one that was meant.
    private static bool IsMissed(RigDrive drive) => drive is { Target.IsUnknown: false, Sources: [{ Way: DriveWay.Channels, Source: { Kind: NodeKind.Control } source }] }
        && drive.KeepsOffset.TryKnown(out var keeps) && !keeps && JointOf(source) != (drive.Target.Original ?? drive.Target);

    private static string Advice(RigNode control, RigMotion motion) => PlaceOf(control) is { IsExported: true } joint && !motion.IsWritten(joint)
        ? $"Drive {joint.Title}, where it stands, by its channels, or take the control out."
        : "Drive what it is meant for, or take it out.";

    private static RigNode? PlaceOf(RigNode node) => !node.Placement.TryKnown(out var placement) ? null : placement switch
    {
        AtNode at => at.Target,
        AsImage image => image.Of,
        AtSpot { Spot: RigPointBeside beside } => beside.Node,
        _ => null,
    };

    private static RigNode? JointOf(RigNode node) =>
        PlaceOf(node) is { } at ? at.Original ?? at
        : node.Placement.TryKnown(out var placement) && placement is AtSpot { Spot: RigPolePoint { Chain.Joints: { Count: > 0 } joints } } ? joints[0]
        : null;

    // A sentence without its end may be the one that the control is for.
    private static bool IsFinished(RigModel model, BlendSums sums) =>
        model.Drives.TrueForAll(drive => drive.Sources.Count > 0)
        && model.Blends.TrueForAll(blend => blend.Sources.Count > 0 && (blend.SourcesAreOpen || sums.IsOne(blend) || blend.Sources.Exists(source => source.Weight.IsOpen)))
        && model.Curves.TrueForAll(curve => curve.Nodes.Count > 1)
        && model.Spaces.TrueForAll(space => space.Parents.Count > 0)
        && model.Aims.TrueForAll(aim => aim.Target.TryKnown(out var target) && target is not null)
        && model.Twists.TrueForAll(twist => twist.Ends.TryKnown(out var ends) && ends is not null)
        && model.Falloffs.TrueForAll(falloff => falloff.Source.TryKnown(out var source) && source is not null)
        && model.TwoBones.Cast<RigSolver>().Concat(model.ManyBones).All(solver => solver.Goal.TryKnown(out var goal) && goal is not null);

    private static IEnumerable<RigNode> ControlsWithSettings(RigModel model) =>
        model.Switches.Cast<RigSetting>().Concat(model.Dials).Concat(model.Choices).SelectMany(setting => setting.AlsoOn.Append(setting.Control)).OfType<RigNode>();
}
