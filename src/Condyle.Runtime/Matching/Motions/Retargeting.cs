using Condyle.Evaluation;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>Where each joint of a rig should be, frame by frame, for a motion of another skeleton.</summary>
internal sealed class Retargeting
{
    /// <summary>A joint that rests lower than this, in metres or in the motion's unit, says nothing of the character's size.</summary>
    private const double LeastHeight = 0.01;

    private readonly CompiledRig rig;
    private readonly JointMotion motion;
    private readonly int[] from;
    private readonly RestPolicy policy;
    private readonly double scale;
    private readonly double lift;
    private readonly Affine3d[] restThere;
    private readonly Affine3d[] restHere;
    private readonly Quaterniond[] aligned;

    public Retargeting(CompiledRig rig, JointMotion motion, int[] from, MotionMatchSettings settings)
    {
        (this.rig, this.motion, this.from, policy) = (rig, motion, from, settings.Rest);
        restThere = motion.Worlds(null);
        restHere = Worlds(joint => joint.Rest.Translation, (joint, _) => joint.Rest.Rotation);
        lift = -motion.Lowest ?? 0;
        scale = settings.Scale ?? RatioOfHeights();
        aligned = [.. rig.Joints.Select(joint => Quaterniond.Identity)];
        foreach (var joint in rig.Joints)
            aligned[joint.Index] = Align(joint);
    }

    public Affine3d[] At(float time)
    {
        var there = motion.Worlds(time);
        return Worlds(joint => MoveOf(joint, time), (joint, above) => TurnOf(joint, there) is { } turn ? above.Inverse * turn : joint.Rest.Rotation);
    }

    private Quaterniond? TurnOf(Rested joint, Affine3d[] there)
    {
        if (from[joint.Index] is not (>= 0 and var source))
            return null;
        var now = there[source].Rotation;
        return policy == RestPolicy.KeepFrames
            ? now
            : now * restThere[source].Rotation.Inverse * aligned[joint.Index] * restHere[joint.Index].Rotation;
    }

    /// <summary>The rest here, and by how much the other joint has moved from its own, scaled and seen from the joint above.</summary>
    private Vector3d MoveOf(Rested joint, float time)
    {
        if (from[joint.Index] is not (>= 0 and var source) || motion.Joints[source] is not { Moves: { } moves } moved)
            return joint.Rest.Translation;
        var rests = moved.Rest.Translation;
        if (motion.Lowest is not null && IsRoot(moved))
            rests = moved.Parent < 0 ? rests with { X = 0, Y = rests.Y + lift, Z = 0 } : rests with { X = 0, Y = 0, Z = rests.Z + lift };
        var off = (Vector3d)moves.At(time) - rests;
        var above = moved.Parent < 0 ? Quaterniond.Identity : restThere[moved.Parent].Rotation;
        var here = rig.Joints[joint.Index].Parent is >= 0 and var parent ? restHere[parent].Inverse().Turn(above.Rotate(off)) : above.Rotate(off);
        return joint.Rest.Translation + (here * scale);
    }

    private bool IsRoot(SourceJoint joint) => joint.Parent < 0 || motion.Joints[joint.Parent].Name.Length == 0;

    /// <summary>The short turn that brings a joint's one bone from how it rests here to how it rests there; a joint without one goes with the joint above.</summary>
    private Quaterniond Align(CompiledJoint joint)
    {
        if (policy != RestPolicy.KeepDirections || from[joint.Index] < 0)
            return joint.Parent < 0 ? Quaterniond.Identity : aligned[joint.Parent];
        var below = Below(joint.Index).ToList();
        if (below.Count == 0)
            return joint.Parent < 0 ? Quaterniond.Identity : aligned[joint.Parent];
        if (below is not [var next])
            return Quaterniond.Identity;
        var (here, there) = ((restHere[next].Origin - restHere[joint.Index].Origin).Direction, (restThere[from[next]].Origin - restThere[from[joint.Index]].Origin).Direction);
        return here is { } a && there is { } b ? Quaterniond.Between(a, b, a.AnyAcross()) : Quaterniond.Identity;
    }

    /// <summary>The nearest joints below one that the motion has.</summary>
    private IEnumerable<int> Below(int above)
    {
        foreach (var child in rig.Joints.Where(joint => joint.Parent == above))
        {
            if (from[child.Index] >= 0)
                yield return child.Index;
            else
            {
                foreach (var further in Below(child.Index))
                    yield return further;
            }
        }
    }

    private double RatioOfHeights()
    {
        foreach (var joint in rig.Joints.Where(joint => from[joint.Index] >= 0))
        {
            var (here, there) = (restHere[joint.Index].Origin.Y, restThere[from[joint.Index]].Origin.Y + lift);
            if (here > LeastHeight && there > LeastHeight)
                return here / there;
        }

        return 1;
    }

    private Affine3d[] Worlds(Func<Rested, Vector3d> move, Func<Rested, Quaterniond, Quaterniond> turn)
    {
        var worlds = new Affine3d[rig.Joints.Count];
        foreach (var joint in rig.Joints)
        {
            var rested = new Rested(joint.Index, new Trs(joint.RestTranslation, ((Quaterniond)joint.RestRotation).Normalized(), joint.RestScale));
            var above = joint.Parent < 0 ? Affine3d.Identity : worlds[joint.Parent];
            worlds[joint.Index] = above * new Trs(move(rested), turn(rested, above.Rotation), rested.Rest.Scale).ToAffine();
        }

        return worlds;
    }

    private readonly record struct Rested(int Index, Trs Rest);
}
