using System.Numerics;
using System.Runtime.InteropServices;

namespace Condyle.Runtime.Matching;

/// <summary>Whether what a control is set to can be seen: on the exported joints, or on morph targets.</summary>
internal sealed class ShownMotion(CompiledRig rig)
{
    /// <summary>Of metres and of matrices' elements: a source of no weight moves the last digits of a float.</summary>
    private const float Least = 1e-4f;

    private readonly Pose set = new(rig), reset = new(rig);

    /// <summary>Takes an instance as it is set. Evaluates.</summary>
    public void Take(RigInstance instance) => set.Take(instance);

    /// <summary>Whether anything would stand elsewhere with the control at zero than it was taken. Evaluates; the control is set as before afterwards.</summary>
    public bool Moves(RigInstance instance, int control)
    {
        var (move, turn) = (instance.ControlMove(control), instance.ControlTurn(control));
        instance.SetMove(control, Vector3.Zero);
        instance.SetTurn(control, Quaternion.Identity);
        reset.Take(instance);
        instance.SetMove(control, move);
        instance.SetTurn(control, turn);
        foreach (var (one, other) in set.Numbers.Zip(reset.Numbers))
        {
            if (Math.Abs(one - other) > Least)
                return true;
        }

        return false;
    }

    private sealed class Pose(CompiledRig rig)
    {
        private readonly Matrix4x4[] worlds = new Matrix4x4[rig.Joints.Count];
        private readonly float[] morphs = new float[rig.Morphs.Count];

        public IEnumerable<float> Numbers => [.. MemoryMarshal.Cast<Matrix4x4, float>(worlds), .. morphs];

        public void Take(RigInstance instance)
        {
            instance.Evaluate();
            instance.CopyJointWorlds(worlds);
            instance.CopyMorphWeights(morphs);
        }
    }
}
