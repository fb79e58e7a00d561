using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Compilation;

/// <summary>Plans aims, twists and falloffs.</summary>
internal sealed class TurnPlan(RigPlan plan, RigModel model, RestPose rest)
{
    private readonly List<(RigTwist Twist, TwistWriter Writer)> belowTheirJoints = [];

    public void Add(RigAim aim)
    {
        if (AimRest.Of(aim, rest) is { } atRest)
            plan[atRest.Node].Write(new AimWriter(plan[atRest.Node], atRest, plan[atRest.Target], atRest.Up is { } up ? plan[up.Node] : null));
    }

    public void Add(RigTwist twist)
    {
        if (TwistRest.Of(twist, model, rest) is not { } atRest)
            return;
        foreach (var joint in atRest.Joints)
        {
            var writer = new TwistWriter(plan[joint.Node], atRest, joint, plan[atRest.Start], plan[atRest.End]);
            writer.Target.Write(writer);
            if (atRest.IsEndBelow)
                belowTheirJoints.Add((twist, writer));
        }
    }

    /// <summary>Plans what can't be planned before all writers are known.</summary>
    public void Finish()
    {
        foreach (var twist in belowTheirJoints.GroupBy(joint => joint.Twist, joint => joint.Writer))
        {
            var end = Untwisted(twist.Key, twist.First());
            foreach (var writer in twist)
                writer.End = end;
        }

        foreach (var share in RigFalloffs.Of(model, rest).All.SelectMany(shares => shares))
        {
            var (joint, source) = (plan[share.Joint], plan[share.Source]);
            source.IsMeasured = true;
            joint.Take(new(share, source));
        }
    }

    /// <summary>What stands as an end below its twist joints does, and doesn't hang below them. One that nothing moves stands as at rest, beside them.</summary>
    private PlannedNode Untwisted(RigTwist twist, TwistWriter writer)
    {
        var owner = writer.End.OwnerOf(Channels.Turn);
        if (owner is not (null or DriveWriter or BlendWriter))
            return writer.End; // it depends on the joints, and the loop is found
        var beside = plan.Add(twist.Untwisted, writer.Start, writer.Rest.EndInStart, writer: null);
        if (owner?.For(beside) is { } same)
            beside.Write(same);
        return beside;
    }
}
