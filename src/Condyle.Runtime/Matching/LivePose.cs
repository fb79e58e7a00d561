using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Runtime.Matching.Fitting;

namespace Condyle.Runtime.Matching;

/// <summary>An instance as the reference evaluates it, in double precision, while a match sets its controls.</summary>
internal sealed class LivePose
{
    private readonly LimbTable limbs;
    private readonly RigInstance instance;

    /// <param name="limbs">The rig's limbs.</param>
    /// <param name="instance">The instance.</param>
    /// <param name="answers">Those of the frame before, in a motion.</param>
    public LivePose(LimbTable limbs, RigInstance instance, CurveAnswers? answers = null)
    {
        (this.limbs, this.instance, Answers) = (limbs, instance, answers);
        Refresh();
    }

    /// <summary>The control that a control is under, as a handle.</summary>
    public Handle? Above(Handle handle) =>
        instance.Rig.ControlTree.Above(handle.Index) is { } above ? limbs.HandleOf(limbs.Controls.ElementAt(above)) : null;

    public PoseFrames Frames { get; private set; } = null!;

    public List<MatchNote> Notes { get; } = [];

    public CurveAnswers? Answers { get; }

    /// <summary>Evaluates what is asked for anew, for the controls as they are set now.</summary>
    public void Refresh() => Frames = FramesOf(Copy());

    /// <summary>What the instance's controls are set to, to be changed without it.</summary>
    public Pose Copy()
    {
        var pose = new Pose();
        foreach (var (index, control) in limbs.Controls.Index())
            pose.Set(control.Id, SetOn(index));
        foreach (var given in limbs.Model.Switches)
            pose.SetSwitch(given.Id, ValueOf(given));
        foreach (var dial in limbs.Model.Dials)
            pose.SetDial(dial.Id, ValueOf(dial));
        foreach (var option in limbs.Model.Options)
            pose.SetOption(option.Id, ValueOf(option));
        return pose;
    }

    public PoseFrames FramesOf(Pose pose) => new(limbs.Sentences, pose);

    public CompiledControl ControlOf(Handle handle) => instance.Rig.Controls[handle.Index];

    /// <summary>The channels that a node's control is set to.</summary>
    public Trs SetOn(Handle handle) => SetOn(handle.Index);

    public double ValueOf(RigElement value) => instance.InputAt(value);

    /// <summary>The rotation that a node has where it keeps how it rests against another node of which the rotation is known.</summary>
    public Quaterniond CarriedFromRest(RigNode known, Quaterniond rotation, RigNode node) =>
        rotation * Frames.Rest.WorldOf(known).Rotation.Inverse * Frames.Rest.WorldOf(node).Rotation;

    /// <summary>Does something of which nobody is told: it is but a beginning.</summary>
    public void Unnoted(Action doing)
    {
        var before = Notes.Count;
        doing();
        Notes.RemoveRange(before, Notes.Count - before);
    }

    /// <summary>Sets the move and the turn of a node's control.</summary>
    public void Set(Handle handle, Trs channels)
    {
        instance.SetMove(handle.Index, channels.Translation.ToSingle());
        instance.SetTurn(handle.Index, NearTo(SetOn(handle).Rotation, channels.Rotation));
        Refresh();
    }

    /// <summary>Which limits a node's control passes.</summary>
    public IEnumerable<MatchNote> PassedLimits(Handle handle)
    {
        List<MatchNote> passed = [];
        new ControlLocks(ControlOf(handle), passed).Look(SetOn(handle).Translation, SetOn(handle).Rotation);
        return passed;
    }

    /// <summary>Sets a switch to the nearest value in its range.</summary>
    public void Set(RigSwitch given, double value)
    {
        instance.SetSwitch(limbs.Model.Switches.IndexOf(given), (float)value);
        Refresh();
    }

    /// <summary>Does something while switches have other values, and then gives them back their own.</summary>
    public T While<T>(IReadOnlyList<(int Switch, float Value)>? values, Func<T> doing)
    {
        if (values is null)
            return doing();
        var own = values.Select(given => (given.Switch, instance.InputAt(limbs.Model.Switches[given.Switch]))).ToList();
        Set(values);
        var result = doing();
        Set(own);
        return result;
    }

    /// <summary>Sets a dial to the nearest value in its range.</summary>
    public void Set(RigDial dial, double value)
    {
        instance.SetDial(limbs.Model.Dials.IndexOf(dial), (float)value);
        Refresh();
    }

    /// <summary>Sets the channels of a node's control so that the node has a frame in the world, as far as they are unlocked.</summary>
    public void Place(Handle handle, Affine3d wanted)
    {
        Turn(handle, wanted.Rotation);
        if (handle.Moves)
            Move(handle, wanted.Origin);
    }

    /// <summary>Sets the move of a node's control so that the node stands at a point of the world.</summary>
    public void Move(Handle handle, Vector3d wanted)
    {
        var (control, now, set) = Of(handle);
        var carried = Frames.WorldOf(handle.Node).Origin - Frames.WorldOf(control).Origin;
        var local = Frames.StandOf(control).Inverse().Apply(wanted - carried) - (now.Translation - set.Translation);
        var locks = new ControlLocks(ControlOf(handle), Notes);
        if (locks.Move(set.Translation, local) is var kept && IsFinite(kept.ToSingle()))
            instance.SetMove(handle.Index, kept.ToSingle());
        Refresh();
    }

    /// <summary>Sets the turn of a node's control so that the node has a rotation in the world.</summary>
    public void Turn(Handle handle, Quaterniond wanted)
    {
        var (control, now, set) = Of(handle);
        var carried = Frames.WorldOf(control).Rotation.Inverse * Frames.WorldOf(handle.Node).Rotation;
        var local = Frames.StandOf(control).Inverse() * Affine3d.Rigid(Vector3d.Zero, wanted * carried.Inverse);
        var turn = local.RotationFor(now.Scale) * (set.Rotation.Inverse * now.Rotation).Inverse;
        var locks = new ControlLocks(ControlOf(handle), Notes);
        var kept = locks.Turn(set.Rotation, turn);
        instance.SetTurn(handle.Index, NearTo(set.Rotation, kept));
        Refresh();
    }

    private void Set(IReadOnlyList<(int Switch, float Value)> values)
    {
        foreach (var (given, value) in values)
            instance.SetSwitch(given, value);
        Refresh();
    }

    private (RigNode Control, Trs Now, Trs Set) Of(Handle handle) => (handle.Control, Frames.ChannelsOf(handle.Control), SetOn(handle.Index));

    private Trs SetOn(int control) => new(instance.ControlMove(control), ((Quaterniond)instance.ControlTurn(control)).Normalized(), instance.ControlScale(control));

    // Keys stay on one side.
    private static System.Numerics.Quaternion NearTo(Quaterniond before, Quaterniond turn) => (Quaterniond.Dot(turn, before) < 0 ? -turn : turn).ToSingle();

    private static bool IsFinite(System.Numerics.Vector3 value) => float.IsFinite(value.X) && float.IsFinite(value.Y) && float.IsFinite(value.Z);
}
