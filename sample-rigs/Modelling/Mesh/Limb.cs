using Modelling.Anatomy;
using Modelling.Geometry;

namespace Modelling.Mesh;

/// <summary>
/// Joints in line, measured along their bones from the first one. Around each joint, over its softness to both sides,
/// skin passes from the joint above to this one; the first joint takes over from its parent.
/// </summary>
internal sealed class Limb
{
    private readonly (ModelJoint Joint, Frame Frame, double Softness, double Start)[] _bones;

    public Limb(JointTree joints, params (string Name, double Softness)[] bones)
    {
        _bones = new (ModelJoint, Frame, double, double)[bones.Length];
        var start = 0.0;
        for (var i = 0; i < bones.Length; i++)
        {
            var joint = joints[bones[i].Name];
            if (i > 0)
                start += (joint.World.Origin - _bones[i - 1].Joint.World.Origin).Length;
            // Where joints bend to opposite sides, sections go on as they lay: a tube doesn't twist there.
            var frame = joint.World;
            if (i > 0 && frame.X.Dot(_bones[i - 1].Frame.X) < 0)
                frame = frame with { X = -frame.X, Z = -frame.Z };
            _bones[i] = (joint, frame, bones[i].Softness, start);
        }
    }

    /// <summary>A section at a distance beyond a joint (before it, when negative).</summary>
    public Ring Ring(string joint, double beyond, double halfAcross, double halfFront, double squareness = 2, Vec shift = default)
    {
        var at = Start(joint) + beyond;
        var index = Math.Max(0, Array.FindLastIndex(_bones, candidate => candidate.Start <= at + 1e-9));
        var bone = _bones[index];
        var frame = bone.Frame;
        var (x, z) = (frame.X, frame.Z);
        // A section right at a joint halves the bend.
        if (index > 0 && at - bone.Start < 1e-3)
            (x, z) = ((x + _bones[index - 1].Frame.X).Unit, (z + _bones[index - 1].Frame.Z).Unit);
        return new Ring(frame.Out(Vec.Up * (at - bone.Start) + shift), x * halfAcross, z * halfFront, at, squareness);
    }

    public double Start(string joint) => _bones.Single(bone => bone.Joint.Name == joint).Start;

    public Influences Weights(double at)
    {
        var influences = Influences.Of(_bones[0].Joint.Parent!);
        foreach (var (joint, _, softness, start) in _bones)
            influences = influences.With(joint, Influences.Smooth(at, start - softness, start + softness));
        return influences;
    }
}
