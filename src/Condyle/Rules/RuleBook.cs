using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>All rules, and the one way to run them: the editor, the build and the program go through here.</summary>
internal static class RuleBook
{
    /// <summary>Every rule, in the order of the ids.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        new GroupNameWithoutSuffix(),
        new NameTwice(),
        new NameOnTheOtherSide(),
        new NotPortable(),
        new ControlNamedAsGroup(),
        new NameOfAnotherNode(),
        new NameOutsidePattern(),
        new TagInAnotherPlace(),
        new SideSaidTwice(),
        new BlendWithoutInverse(),
        new BlendOfOneSource(),
        new SourceOfAnotherJoint(),
        new PartOfChainFollows(),
        new SwitchOfTheOtherSide(),
        new SwitchWithoutUse(),
        new LabelContradictsBlend(),
        new SwitchDefaultOutOfRange(),
        new CopyOfAnotherChain(),
        new MatrixDriveOntoExportedJoint(),
        new NodeDrivenTwice(),
        new DrivesInALoop(),
        new SourceOnTheOtherSide(),
        new OffsetWithoutUse(),
        new MatrixUnderChannels(),
        new CopyLeftBehind(),
        new JointLeftStill(),
        new ScaleOntoJoint(),
        new CopyUnderExportedJoint(),
        new CopyUnderControl(),
        new CopyWithTwistJoints(),
        new SeveralRoots(),
        new UnevenScale(),
        new MoreJointsThanTaken(),
        new DialSetsNothing(),
        new CurveOutOfReach(),
        new GroupUnlockedWithoutUse(),
        new CopyDrivenInPart(),
        new ControlFollowsNothing(),
        new ControlMovesNothing(),
        new LimitsWithoutRest(),
        new DialDefaultOutside(),
        new KeysAtOneValue(),
        new LimitsOfLockedChannel(),
        new ChannelSetTwice(),
        new SideWithoutCounterpart(),
        new SidesDiffer(),
        new FramesThatDoNotMirror(),
        new TwoBoneOnOtherChain(),
        new IkCopyWithoutSolver(),
        new StraightChainWithoutBend(),
        new PoleOnLine(),
        new BoneWithoutLength(),
        new GoalBelowItsChain(),
        new TwistJointLeftAlone(),
        new JointLeavesRest(),
        new LimbBreaksOverSwitch(),
        new GoalOutOfReach(),
        new NumbersThatCannotBe(),
        new RigCodeFails(),
        new RigNotReadWhole(),
        new SentenceLeftUnfinished(),
        new AcceptanceWithoutFinding(),
    ];

    public static Rule? Find(string id) => All.FirstOrDefault(rule => rule.Id.Equals(id, StringComparison.OrdinalIgnoreCase));

    /// <summary>What the rules find, less what the code accepts.</summary>
    public static IReadOnlyList<Finding> Check(RigModel model, Conventions conventions, CancellationToken cancellation = default)
    {
        var findings = new List<Finding>();
        var rig = new CheckedRig(model, conventions, cancellation);
        var wrong = new HashSet<RigElement>();
        foreach (var rule in All)
        {
            cancellation.ThrowIfCancellationRequested();
            foreach (var finding in Checked(rule, rig))
            {
                // What a pose shows is explained by what is wrong with the sentence itself.
                var isTold = rule is EvaluatedRule && finding.Subject is { } shown && wrong.Contains(shown);
                if (!rig.Accepted.Cover(finding) && !isTold)
                    findings.Add(finding);
                if (rule.ExplainsPoses && finding.Subject is { } subject)
                    wrong.Add(subject);
            }
        }

        return findings;
    }

    // Most rules find nothing in most rigs.
    private static IReadOnlyList<Finding> Checked(Rule rule, CheckedRig rig)
    {
        List<Finding>? found = null;
        try
        {
            foreach (var finding in rule.Check(rig))
                (found ??= []).Add(finding);
            return found ?? (IReadOnlyList<Finding>)[];
        }
#pragma warning disable CA1031 // A rule must never take the compiler or the rig down: that it couldn't be asked is a finding of its own.
        catch (Exception unexpected) when (unexpected is not OperationCanceledException)
#pragma warning restore CA1031
        {
            return [RigNotReadWhole.For(rule, unexpected, rig.Model)];
        }
    }
}
