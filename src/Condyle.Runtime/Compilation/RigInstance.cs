using System.Numerics;
using Condyle.Runtime.Compilation;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime;

/// <summary>
/// One character that moves by a rig: set controls and switches, evaluate, read joints. Not to be used by two threads at once;
/// two instances of one rig can be.
/// </summary>
/// <remarks>
/// Nothing here allocates. Finite input gives finite output as long as nothing grows beyond a float's range, and the same input the same output;
/// limits and locks are not enforced, but for a scale that is locked whole. Where a rig can't be continuous (half turns in a blend, a pole on the line from root to goal) it picks one answer, always the same.
/// </remarks>
public sealed class RigInstance
{
    private readonly Buffers pose;
    private readonly int controls;

    internal RigInstance(CompiledRig rig, Buffers pose)
    {
        Rig = rig;
        controls = rig.Controls.Count;
        this.pose = pose;
    }

    /// <summary>The rig that it moves by.</summary>
    public CompiledRig Rig { get; }

    /// <summary>Puts every control at zero and every switch at its default, and the joints at rest, evaluated.</summary>
    public void Reset() => pose.CopyFrom(Rig.Layout.AtRest);

    /// <summary>Moves a control.</summary>
    /// <param name="control">Its index in <see cref="CompiledRig.Controls"/>.</param>
    /// <param name="metres">The move from where it rests, in metres along the axes of its placement.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such control.</exception>
    /// <exception cref="ArgumentException">The value is not a finite number.</exception>
    public void SetMove(int control, Vector3 metres)
    {
        CheckControl(control);
        CheckFinite(metres, "move", control);
        pose.Moves[control] = metres;
    }

    /// <summary>Turns a control.</summary>
    /// <param name="control">Its index in <see cref="CompiledRig.Controls"/>.</param>
    /// <param name="turn">The turn from where it rests; of any length above zero, it is made a unit quaternion.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such control.</exception>
    /// <exception cref="ArgumentException">The value is not a finite number, or has no direction.</exception>
    public void SetTurn(int control, Quaternion turn)
    {
        CheckControl(control);
        var length = turn.Length();
        if (!float.IsFinite(length) || length < 1e-6f)
            throw new ArgumentException($"The turn of control '{Rig.Controls[control].Name}' is no rotation: {turn}. Give a finite quaternion of a length above zero.", nameof(turn));
        pose.Turns[control] = turn * (1 / length);
    }

    /// <summary>Scales a control whose scale the rig unlocks.</summary>
    /// <param name="control">Its index in <see cref="CompiledRig.Controls"/>.</param>
    /// <param name="scale">Factors along its own axes; one leaves it as it rests.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such control.</exception>
    /// <exception cref="ArgumentException">The value is not a finite number, or the control's scale is locked.</exception>
    public void SetScale(int control, Vector3 scale)
    {
        CheckControl(control);
        CheckFinite(scale, "scale", control);
        if (scale != Vector3.One && (Rig.Controls[control].Locked & Channels.Scale) == Channels.Scale)
            throw new ArgumentException($"The scale of control '{Rig.Controls[control].Name}' is locked, so nothing that follows it is made to scale. Say .Unlock(Channels.Scale) in the rig.", nameof(scale));
        pose.Scales[control] = scale;
    }

    /// <summary>Sets a switch, on all the controls that it is shown on.</summary>
    /// <param name="sw">Its index in <see cref="CompiledRig.Switches"/>.</param>
    /// <param name="value">From 0 to 1; a value outside is taken as the nearest inside.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such switch.</exception>
    /// <exception cref="ArgumentException">The value is not a finite number.</exception>
    public void SetSwitch(int sw, float value)
    {
        if ((uint)sw >= (uint)pose.Switches.Count)
            throw new ArgumentOutOfRangeException(nameof(sw), sw, $"The rig '{Rig.Name}' has {pose.Switches.Count} switches, counted from 0.");
        if (!float.IsFinite(value))
            throw new ArgumentException($"The value of switch '{Rig.Switches[sw].Name}' is not a finite number: {value}.", nameof(value));
        pose.Switches[sw] = Math.Clamp(value, 0, 1);
    }

    /// <summary>Works out where everything is for the controls and switches as they are set. Allocates nothing.</summary>
    /// <exception cref="InvalidOperationException">It is a member of a crowd, which is evaluated as a whole.</exception>
    public void Evaluate()
    {
        if (pose.Width > 1)
            throw new InvalidOperationException($"This '{Rig.Name}' is a member of a crowd. Call the crowd's Evaluate, which evaluates all of them together.");
        Rig.Layout.Schedule.Run(pose);
    }

    /// <summary>An exported joint's translation channel after <see cref="Evaluate"/>.</summary>
    /// <param name="joint">Its index in <see cref="CompiledRig.Joints"/>.</param>
    /// <returns>Metres, in the parent's space.</returns>
    public Vector3 JointTranslation(int joint) => pose.Moves[Slot(joint)];

    /// <summary>An exported joint's rotation channel after <see cref="Evaluate"/>.</summary>
    /// <param name="joint">Its index in <see cref="CompiledRig.Joints"/>.</param>
    /// <returns>A unit quaternion, in the parent's space; either sign.</returns>
    public Quaternion JointRotation(int joint) => pose.Turns[Slot(joint)];

    /// <summary>An exported joint's scale channel after <see cref="Evaluate"/>.</summary>
    /// <param name="joint">Its index in <see cref="CompiledRig.Joints"/>.</param>
    /// <returns>Factors along the joint's own axes.</returns>
    public Vector3 JointScale(int joint) => pose.Scales[Slot(joint)];

    /// <summary>Where an exported joint is in the world after <see cref="Evaluate"/>.</summary>
    /// <param name="joint">Its index in <see cref="CompiledRig.Joints"/>.</param>
    /// <returns>
    /// The matrix as <see cref="System.Numerics"/> has it: a row vector multiplies from the left, and the translation is in the fourth row
    /// (<see cref="Vector3.Transform(Vector3, Matrix4x4)"/> takes a point of the joint to the world).
    /// </returns>
    public Matrix4x4 JointWorld(int joint) => World(Rig.Layout.JointWorlds[Joint(joint)]);

    /// <summary>Whether a label is shown, after <see cref="Evaluate"/>.</summary>
    /// <param name="label">Its index in <see cref="CompiledRig.Labels"/>.</param>
    /// <returns>True while its weight is above one half; always true for a label that nothing shows or hides.</returns>
    public bool LabelVisible(int label) => Rig.Layout.LabelWeights[label] is var weight && (weight == RigLayout.NoWeight || pose.Weights[weight] > 0.5f);

    /// <summary>Where a label stands after <see cref="Evaluate"/>: with the node that it is under, or in the world.</summary>
    /// <param name="label">Its index in <see cref="CompiledRig.Labels"/>.</param>
    /// <returns>The matrix as <see cref="JointWorld"/> gives it.</returns>
    public Matrix4x4 LabelWorld(int label) => World(Rig.Layout.LabelWorlds[label]);

    private Matrix4x4 World(WorldSlot at)
    {
        var world = at.IsRigid ? pose.Frames[at.Slot].ToAffine() : pose.Worlds[at.Slot];
        return new Matrix4x4(
            world.X.X, world.X.Y, world.X.Z, 0,
            world.Y.X, world.Y.Y, world.Y.Z, 0,
            world.Z.X, world.Z.Y, world.Z.Z, 0,
            world.Origin.X, world.Origin.Y, world.Origin.Z, 1);
    }

    private int Slot(int joint) => controls + Joint(joint);

    private int Joint(int joint) => (uint)joint < (uint)Rig.Joints.Count
        ? joint
        : throw new ArgumentOutOfRangeException(nameof(joint), joint, $"The rig '{Rig.Name}' has {Rig.Joints.Count} joints, counted from 0.");

    private void CheckControl(int control)
    {
        if ((uint)control >= (uint)controls)
            throw new ArgumentOutOfRangeException(nameof(control), control, $"The rig '{Rig.Name}' has {controls} controls, counted from 0.");
    }

    private void CheckFinite(Vector3 value, string what, int control)
    {
        if (!float.IsFinite(value.X) || !float.IsFinite(value.Y) || !float.IsFinite(value.Z))
            throw new ArgumentException($"The {what} of control '{Rig.Controls[control].Name}' is not a finite number: {value}.", nameof(value));
    }
}
