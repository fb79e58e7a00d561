using Modelling.Anatomy;
using Modelling.Geometry;

namespace Modelling.Mesh;

/// <summary>
/// Joints in line, measured along their bones from the first one. Around each joint, over its softness to both sides,
/// skin passes from the joint above to this one; the first joint takes over from its parent.
/// </summary>
internal sealed class Limb
{
    private readonly (ModelJoint Joint, double Softness, double Start)[] _bones;

    public Limb(JointTree joints, params (string Name, double Softness)[] bones)
    {
        _bones = new (ModelJoint, double, double)[bones.Length];
        var start = 0.0;
        for (var i = 0; i < bones.Length; i++)
        {
            var joint = joints[bones[i].Name];
            if (i > 0)
                start += (joint.World.Origin - _bones[i - 1].Joint.World.Origin).Length;
            _bones[i] = (joint, bones[i].Softness, start);
        }
    }

    /// <summary>A section at a distance beyond a joint (before it, when negative).</summary>
    public Ring Ring(string joint, double beyond, double halfAcross, double halfFront, double squareness = 2, Vec shift = default)
    {
        var at = Start(joint) + beyond;
        var index = Math.Max(0, Array.FindLastIndex(_bones, candidate => candidate.Start <= at + 1e-9));
        var bone = _bones[index];
        var frame = bone.Joint.World;
        var (x, z) = (frame.X, frame.Z);
        // A section right at a joint halves the bend.
        if (index > 0 && at - bone.Start < 1e-3)
            (x, z) = ((x + _bones[index - 1].Joint.World.X).Unit, (z + _bones[index - 1].Joint.World.Z).Unit);
        return new Ring(frame.Out(Vec.Up * (at - bone.Start) + shift), x * halfAcross, z * halfFront, at, squareness);
    }

    public double Start(string joint) => _bones.Single(bone => bone.Joint.Name == joint).Start;

    public Influences Weights(double at)
    {
        var influences = Influences.Of(_bones[0].Joint.Parent!);
        foreach (var (joint, softness, start) in _bones)
            influences = influences.With(joint, Influences.Smooth(at, start - softness, start + softness));
        return influences;
    }
}
