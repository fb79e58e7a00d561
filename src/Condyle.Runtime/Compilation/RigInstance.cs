using System.Numerics;
using Condyle.Model;
using Condyle.Runtime.Compilation;
using Condyle.Runtime.Kernels;
using Condyle.Runtime.Matching;

namespace Condyle.Runtime;

/// <summary>
/// One character that moves by a rig: set controls, switches, dials and choices, evaluate, read joints. Not to be used by two threads at once;
/// two instances of one rig can be.
/// </summary>
/// <remarks>
/// Nothing here allocates. Finite input gives finite output as long as nothing grows beyond a float's range, and the same input the same output;
/// limits and locks are not enforced, but for a scale that is locked whole. Where a rig can't be continuous (half turns in a blend, a pole on the line from root to goal) it picks one answer, always the same.
/// </remarks>
public sealed class RigInstance
{
    private readonly Buffers pose;
    private readonly Affine[] places;
    private readonly int controls;
    private RigInstance? alone;

    internal RigInstance(CompiledRig rig, Buffers pose)
    {
        Rig = rig;
        controls = rig.Controls.Count;
        this.pose = pose;
        places = new Affine[rig.Layout.Riders.Count];
    }

    /// <summary>The rig that it moves by.</summary>
    public CompiledRig Rig { get; }

    /// <summary>Puts every control at zero and every switch, dial and choice at its default, and the joints at rest, evaluated.</summary>
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
        CheckIndex(sw, Rig.Switches.Count, "switches", nameof(sw));
        CheckFinite(value, "switch", Rig.Switches[sw].Name);
        pose.Inputs[sw] = Math.Clamp(value, 0, 1);
    }

    /// <summary>Sets a dial, on all the controls that it is shown on.</summary>
    /// <param name="dial">Its index in <see cref="CompiledRig.Dials"/>.</param>
    /// <param name="value">Within its range; a value outside is taken as the nearest inside.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such dial.</exception>
    /// <exception cref="ArgumentException">The value is not a finite number.</exception>
    public void SetDial(int dial, float value)
    {
        CheckIndex(dial, Rig.Dials.Count, "dials", nameof(dial));
        var found = Rig.Dials[dial];
        CheckFinite(value, "dial", found.Name);
        pose.Inputs[Rig.Layout.Inputs.FirstDial + dial] = Math.Clamp(value, found.From, found.To);
    }

    /// <summary>Picks an option of a choice, on all the controls that it is shown on. What rides by it jumps; see <see cref="SetChoiceInPlace"/>.</summary>
    /// <param name="choice">Its index in <see cref="CompiledRig.Choices"/>.</param>
    /// <param name="option">The index of the option.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such choice or option.</exception>
    public void SetChoice(int choice, int option) => SetChoice(choice, option, option, 1);

    /// <summary>Stands between two options of a choice, for a shot that eases from one to the other.</summary>
    /// <param name="choice">Its index in <see cref="CompiledRig.Choices"/>.</param>
    /// <param name="from">The index of the one option.</param>
    /// <param name="to">The index of the other.</param>
    /// <param name="amount">How far from the one to the other, from 0 to 1; a value outside is taken as the nearest inside.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such choice or option.</exception>
    /// <exception cref="ArgumentException">The amount is not a finite number.</exception>
    public void SetChoice(int choice, int from, int to, float amount)
    {
        CheckIndex(choice, Rig.Choices.Count, "choices", nameof(choice));
        var options = Rig.Choices[choice].Options.Count;
        CheckIndex(from, options, "options of the choice", nameof(from));
        CheckIndex(to, options, "options of the choice", nameof(to));
        CheckFinite(amount, "choice", Rig.Choices[choice].Name);
        var (first, passed) = (Rig.Layout.Inputs.FirstOptions[choice], Math.Clamp(amount, 0, 1));
        for (var option = 0; option < options; option++)
            pose.Inputs[first + option] = (option == from ? 1 - passed : 0) + (option == to ? passed : 0);
    }

    /// <summary>
    /// Picks an option of a choice and sets the channels of the controls that ride by it so that they stay where they are in the world. It evaluates before and after.
    /// </summary>
    /// <remarks>
    /// Locked channels stay as they are, so a control keeps its place as far as its unlocked ones reach: its turn if all three turn channels are unlocked, its scale likewise.
    /// Shear that another node's scale gives it can't be kept. Allocates nothing, but for a member of a crowd, which is evaluated alone for it, the first time.
    /// </remarks>
    /// <param name="choice">Its index in <see cref="CompiledRig.Choices"/>.</param>
    /// <param name="option">The index of the option.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such choice or option.</exception>
    public void SetChoiceInPlace(int choice, int option)
    {
        if (pose.Width > 1)
        {
            alone ??= Rig.NewInstance();
            pose.CopyTo(alone.pose);
            alone.SetChoiceInPlace(choice, option);
            pose.CopyFrom(alone.pose);
            return;
        }

        var riders = Rig.Layout.Riders;
        Evaluate();
        for (var i = 0; i < riders.Count; i++)
            places[i] = riders[i].World.In(pose);
        SetChoice(choice, option);
        for (var i = 0; i < riders.Count; i++)
        {
            if (riders[i].Choice != choice)
                continue;
            Evaluate(); // a rider may ride another one, which has its place by now
            riders[i].Place(places[i], pose);
        }

        Evaluate();
    }

    /// <summary>
    /// Sets what solves a limb so that its solved copy stands as its turned one: the goal and the pole of IK, or the controls that a curve goes through. After it the switch can flip from FK without a jump.
    /// </summary>
    /// <remarks>
    /// What carries the limb by its goal or by the switch, as a collar that follows does, is set too, so that it stays where it is once the switch has flipped. A stretch that a switch of its own turns on, and the dial that turns the plane of a limb without a pole, are set where that is needed. Locked channels stay as they are; limits are passed, and noted.
    /// It is worked out in double precision for the controls, switches, dials and choices as they are set, and doesn't evaluate the instance. It allocates, and takes as long as evaluating some hundred times.
    /// Of many bones a goal and a pole only give the ends and the plane, and a curve has the shapes that its few controls give it: of a pose of another shape IK meets the ends, a curve comes near the whole, and the last note says by how much the joints are off, and which most.
    /// A curve's controls are found by the least sum of squares, which takes some thousand evaluations of the chain; a pose that the curve made itself is nearly always found again.
    /// Where the limb is almost straight, the last digit of a float of the goal's place moves the middle joint by more than it is worth itself.
    /// </remarks>
    /// <param name="limb">Its index in <see cref="CompiledRig.Limbs"/>.</param>
    /// <returns>How far each joint is off, and why.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such limb.</exception>
    public LimbMatch MatchGoal(int limb) => GoalMatch.Make(Limb(limb), new LivePose(Rig.LimbTable, this), switches: true);

    /// <summary>
    /// Sets the controls that turn a limb's joints so that its turned copy stands as its solved one: after it the switch can flip to FK without a jump.
    /// </summary>
    /// <remarks>What carries the limb by its goal or by the switch is set too. Locked channels stay as they are; limits are passed, and noted. It is worked out as <see cref="MatchGoal"/> is.</remarks>
    /// <param name="limb">Its index in <see cref="CompiledRig.Limbs"/>.</param>
    /// <returns>How far each joint is off, and why.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such limb.</exception>
    public LimbMatch MatchTurns(int limb) => TurnMatch.Make(Limb(limb), new LivePose(Rig.LimbTable, this));

    /// <summary>A control's translation as it is set, or as <see cref="SetChoiceInPlace"/> set it.</summary>
    /// <param name="control">Its index in <see cref="CompiledRig.Controls"/>.</param>
    /// <returns>The move from where it rests, in metres along the axes of its placement.</returns>
    public Vector3 ControlMove(int control) => pose.Moves[Control(control)];

    /// <summary>A control's rotation as it is set, or as <see cref="SetChoiceInPlace"/> set it.</summary>
    /// <param name="control">Its index in <see cref="CompiledRig.Controls"/>.</param>
    /// <returns>The turn from where it rests, a unit quaternion.</returns>
    public Quaternion ControlTurn(int control) => pose.Turns[Control(control)];

    /// <summary>A control's scale as it is set, or as <see cref="SetChoiceInPlace"/> set it.</summary>
    /// <param name="control">Its index in <see cref="CompiledRig.Controls"/>.</param>
    /// <returns>Factors along its own axes.</returns>
    public Vector3 ControlScale(int control) => pose.Scales[Control(control)];

    /// <summary>Works out where everything is for the controls, switches, dials and choices as they are set. Allocates nothing.</summary>
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

    /// <summary>Where all exported joints are in the world after <see cref="Evaluate"/>, in the order of <see cref="CompiledRig.Joints"/>.</summary>
    /// <param name="worlds">Takes the matrices as <see cref="JointWorld"/> gives them; as long as there are joints, or longer.</param>
    /// <exception cref="ArgumentException">There is no room for all of them.</exception>
    public void CopyJointWorlds(Span<Matrix4x4> worlds)
    {
        CheckRoom(worlds.Length, Rig.Joints.Count, "joints", nameof(worlds));
        for (var joint = 0; joint < Rig.Joints.Count; joint++)
            worlds[joint] = World(Rig.Layout.JointWorlds[joint]);
    }

    /// <summary>The weights of all morph targets after <see cref="Evaluate"/>, in the order of <see cref="CompiledRig.Morphs"/>.</summary>
    /// <param name="weights">Takes the weights; as long as there are morph targets, or longer.</param>
    /// <exception cref="ArgumentException">There is no room for all of them.</exception>
    public void CopyMorphWeights(Span<float> weights)
    {
        CheckRoom(weights.Length, Rig.Morphs.Count, "morph targets", nameof(weights));
        for (var morph = 0; morph < Rig.Morphs.Count; morph++)
            weights[morph] = pose.Morphs[morph];
    }

    /// <summary>The weight of a morph target after <see cref="Evaluate"/>.</summary>
    /// <param name="morph">Its index in <see cref="CompiledRig.Morphs"/>.</param>
    /// <returns>The sum of the responses on it; not limited to a range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such morph target.</exception>
    public float MorphWeight(int morph)
    {
        CheckIndex(morph, Rig.Morphs.Count, "morph targets", nameof(morph));
        return pose.Morphs[morph];
    }

    /// <summary>Whether a label is shown, after <see cref="Evaluate"/>.</summary>
    /// <param name="label">Its index in <see cref="CompiledRig.Labels"/>.</param>
    /// <returns>True while its weight is above one half; always true for a label that nothing shows or hides.</returns>
    public bool LabelVisible(int label) => Rig.Layout.LabelWeights[label] is var weight && (weight == RigLayout.NoWeight || pose.Weights[weight] > 0.5f);

    /// <summary>Where a label stands after <see cref="Evaluate"/>: with the node that it is under, or in the world.</summary>
    /// <param name="label">Its index in <see cref="CompiledRig.Labels"/>.</param>
    /// <returns>The matrix as <see cref="JointWorld"/> gives it.</returns>
    public Matrix4x4 LabelWorld(int label) => World(Rig.Layout.LabelWorlds[label]);

    /// <summary>An exported joint's world frame where no scale reaches it; null where one can.</summary>
    internal (Vector3 Origin, Quaternion Turn)? JointFrame(int joint) =>
        Rig.Layout.JointWorlds[joint] is { IsRigid: true, Slot: var slot } && pose.Frames[slot] is var frame ? (frame.Origin, frame.Turn) : null;

    /// <summary>The value of a switch, a dial or an option as it is set.</summary>
    internal float InputAt(RigElement value) => pose.Inputs[Rig.Layout.Inputs.SlotOf(value.Id)];

    private LimbPlan Limb(int limb)
    {
        CheckIndex(limb, Rig.Limbs.Count, "limbs", nameof(limb));
        return Rig.LimbTable.Plans[limb];
    }

    private Matrix4x4 World(WorldSlot at)
    {
        var world = at.In(pose);
        return new Matrix4x4(
            world.X.X, world.X.Y, world.X.Z, 0,
            world.Y.X, world.Y.Y, world.Y.Z, 0,
            world.Z.X, world.Z.Y, world.Z.Z, 0,
            world.Origin.X, world.Origin.Y, world.Origin.Z, 1);
    }

    private int Slot(int joint) => controls + Joint(joint);

    private int Joint(int joint)
    {
        CheckIndex(joint, Rig.Joints.Count, "joints", nameof(joint));
        return joint;
    }

    private int Control(int control)
    {
        CheckControl(control);
        return control;
    }

    private void CheckControl(int control) => CheckIndex(control, controls, "controls", nameof(control));

    private void CheckIndex(int index, int count, string what, string parameter)
    {
        if ((uint)index >= (uint)count)
            throw new ArgumentOutOfRangeException(parameter, index, $"The rig '{Rig.Name}' has {count} {what}, counted from 0.");
    }

    private void CheckRoom(int room, int count, string what, string parameter)
    {
        if (room < count)
            throw new ArgumentException($"The rig '{Rig.Name}' has {count} {what}, and there is room for {room}.", parameter);
    }

    private static void CheckFinite(float value, string what, string name)
    {
        if (!float.IsFinite(value))
            throw new ArgumentException($"The value of {what} '{name}' is not a finite number: {value}.", nameof(value));
    }

    private void CheckFinite(Vector3 value, string what, int control)
    {
        if (!float.IsFinite(value.X) || !float.IsFinite(value.Y) || !float.IsFinite(value.Z))
            throw new ArgumentException($"The {what} of control '{Rig.Controls[control].Name}' is not a finite number: {value}.", nameof(value));
    }
}
