using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R34;

public sealed class Forklift : IRigDefinition
{
    private enum Stage
    {
        Chassis,
        Wheels,
        Mast,
        Carriage,
        Forks,
        Driver,
        Done,
    }

    private readonly Dictionary<string, Joint> joints = new();
    private readonly Dictionary<string, Control> controls = new();

    public void Define(RigDraft rig)
    {
        joints.Clear();
        controls.Clear();
        var stage = Stage.Chassis;
        while (stage != Stage.Done)
            stage = Step(rig, stage);
    }

    private Stage Step(RigDraft rig, Stage stage)
    {
        switch (stage)
        {
            case Stage.Chassis:
                joints["chassis"] = rig.Skeleton("forklift").Root("chassis", at: new Vector3(0, 0.4f, 0));
                controls["world"] = rig.Control("world");
                Add(rig, "chassis", "world");
                return Stage.Wheels;

            case Stage.Wheels:
                foreach (var side in Side.Both)
                {
                    foreach (var (end, z) in new[] { ("front", 0.7f), ("rear", -0.6f) })
                    {
                        var name = $"wheel_{end}_{side}";
                        joints[name] = joints["chassis"].Child(name, at: new Vector3(0.5f * side.Sign, -0.2f, z));
                        var control = Add(rig, name, "chassis").Lock(Channels.Move);
                        if (end == "rear")
                            control.LimitTurn(Axis.Y, -75, 75);
                    }
                }

                return Stage.Mast;

            case Stage.Mast:
                joints["mast"] = joints["chassis"].Child("mast", at: new Vector3(0, 0.1f, 0.9f));
                Add(rig, "mast", "chassis").Lock(Channels.Move | Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -6, 12);
                return Stage.Carriage;

            case Stage.Carriage:
                joints["carriage"] = joints["mast"].Child("carriage", at: new Vector3(0, 0.2f, 0.1f));
                Add(rig, "carriage", "mast").LimitMove(Axis.Y, 0, 3.2f).Lock(Channels.Turn);
                return Stage.Forks;

            case Stage.Forks:
                foreach (var side in Side.Both)
                {
                    var name = "fork_" + side;
                    joints[name] = joints["carriage"].Child(name, at: new Vector3(0.25f * side.Sign, 0, 0.1f));
                    Add(rig, name, "carriage").LimitMove(Axis.X, side == Side.Left ? -0.1f : -0.3f, side == Side.Left ? 0.3f : 0.1f);
                }

                return Stage.Driver;

            case Stage.Driver:
                var seat = joints["seat"] = joints["chassis"].Child("seat", JointRole.Helper, new Vector3(0, 0.6f, -0.2f));
                var ride = controls["chassis"].Switch("ride", 1);
                rig.Blend(seat).From(controls["chassis"], ride).From(controls["world"], ride.Inverse);
                rig.Label("seat_label", "RIDES").Under(controls["chassis"]).ShownBy(ride);
                return Stage.Done;

            default:
                throw new InvalidOperationException($"no such stage: {stage}");
        }
    }

    private Control Add(RigDraft rig, string name, string above)
    {
        var control = rig.Control("move_" + name).Under(controls[above]).PlacedAt(joints[name]);
        rig.Drive(joints[name]).ByChannels(control);
        controls[name] = control;
        return control;
    }
}
