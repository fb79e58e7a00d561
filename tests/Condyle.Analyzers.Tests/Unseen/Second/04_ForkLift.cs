using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R04;

/// <summary>Composition root of the fork lift: wires the modules and lets each of them contribute to the rig.</summary>
public sealed class ForkLift : IRigDefinition
{
    private readonly IReadOnlyCollection<IRigModule> _modules;

    public ForkLift()
        : this(new ForkLiftOptions())
    {
    }

    internal ForkLift(ForkLiftOptions options)
    {
        _modules = new List<IRigModule>
        {
            new ChassisModule(options),
            new WheelsModule(options),
            new MastModule(options),
            new DriverModule(),
        };
    }

    public void Define(RigDraft rig)
    {
        var context = new RigContext(rig);
        foreach (var module in _modules)
        {
            module.Contribute(context);
        }
    }
}

internal sealed record ForkLiftOptions
{
    public float WheelBase { get; init; } = 1.6f;

    public float TrackWidth { get; init; } = 1.1f;

    public int MastStages { get; init; } = 3;

    public float StageLift { get; init; } = 1.4f;
}

internal interface IRigModule
{
    void Contribute(RigContext context);
}

internal sealed class RigContext
{
    private readonly Dictionary<string, Control> _controls = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Joint> _joints = new(StringComparer.Ordinal);

    public RigContext(RigDraft rig)
    {
        Rig = rig;
        Skeleton = rig.Skeleton("fork_lift");
    }

    public RigDraft Rig { get; }

    public Skeleton Skeleton { get; }

    public Joint GetJoint(string name) =>
        _joints.TryGetValue(name, out var joint) ? joint : throw new KeyNotFoundException($"No module registered the joint '{name}'.");

    public Control GetControl(string name) =>
        _controls.TryGetValue(name, out var control) ? control : throw new KeyNotFoundException($"No module registered the control '{name}'.");

    public Joint Register(Joint joint)
    {
        _joints.Add(joint.Name, joint);
        return joint;
    }

    public Control Register(Control control)
    {
        _controls.Add(control.Name, control);
        return control;
    }

    public Control RegisterDriver(string name, Node parent, Joint joint)
    {
        var control = Register(Rig.Control(name).Under(parent).PlacedAt(joint));
        Rig.Drive(joint).ByChannels(control);
        return control;
    }
}

internal sealed class ChassisModule(ForkLiftOptions options) : IRigModule
{
    public void Contribute(RigContext context)
    {
        var chassis = context.Register(context.Skeleton.Root("chassis", at: new Vector3(0, 0.3f, -options.WheelBase / 2)));
        var world = context.Register(context.Rig.Control("world"));
        context.RegisterDriver("drive_chassis", world, chassis);
    }
}

internal sealed class WheelsModule(ForkLiftOptions options) : IRigModule
{
    private enum Axle
    {
        Front,
        Rear,
    }

    public void Contribute(RigContext context)
    {
        foreach (var axle in Enum.GetValues<Axle>())
        {
            foreach (var side in Side.Both)
            {
                var name = $"wheel_{axle.ToString().ToLowerInvariant()}_{side}";
                var z = axle == Axle.Front ? options.WheelBase / 2 : -options.WheelBase / 2;
                var wheel = context.Register(context.GetJoint("chassis").Child(name, at: new Vector3(side.Sign * options.TrackWidth / 2, 0, z)));

                // A fork lift steers with its rear wheels.
                var locked = axle == Axle.Rear ? Channels.Move | Channels.TurnZ : Channels.Move | Channels.TurnY | Channels.TurnZ;
                context.RegisterDriver($"roll_{name}", context.GetControl("drive_chassis"), wheel).Lock(locked);
            }
        }
    }
}

internal sealed class MastModule(ForkLiftOptions options) : IRigModule
{
    public void Contribute(RigContext context)
    {
        var joint = context.Register(context.GetJoint("chassis").Child("mast_tilt", at: new Vector3(0, 0.2f, options.WheelBase)));
        var control = context.RegisterDriver("tilt_mast", context.GetControl("drive_chassis"), joint)
            .Lock(Channels.Move | Channels.TurnY | Channels.TurnZ)
            .LimitTurn(Axis.X, -8, 12);

        for (var stage = 1; stage <= options.MastStages; stage++)
        {
            joint = context.Register(joint.Child($"mast_stage_{stage:D2}", at: new Vector3(0, 0.05f, 0.04f * stage)));
            control = context.RegisterDriver($"lift_stage_{stage:D2}", control, joint)
                .Lock(Channels.Turn | Channels.MoveX | Channels.MoveZ)
                .LimitMove(Axis.Y, 0, options.StageLift);
        }

        foreach (var side in Side.Both)
        {
            var fork = context.Register(joint.Child($"fork_{side}", at: new Vector3(0.25f * side.Sign, 0, 0.1f)));
            context.RegisterDriver($"spread_fork_{side}", control, fork).Lock(Channels.Turn | Channels.MoveY | Channels.MoveZ);
        }
    }
}

internal sealed class DriverModule : IRigModule
{
    public void Contribute(RigContext context)
    {
        var seat = context.Register(context.GetJoint("chassis").Child("seat", JointRole.Helper, new Vector3(0, 0.7f, 0.5f)));
        var group = context.Rig.Group("driver_group").PlacedAt(seat);
        context.Rig.Drive(group).ByMatrix(context.GetControl("drive_chassis"));
        context.RegisterDriver("sit", context.GetControl("drive_chassis"), seat);
    }
}
