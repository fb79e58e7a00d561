using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R46;

/// <summary>A forklift truck of the warehouse: each kind of part is a type, and the assembly is generic over them.</summary>
public sealed class Forklift : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var truck = Assembly.Begin<Chassis>(rig, "forklift");
        var mast = truck.Add<Mast>();
        var carriage = mast.Add<Carriage>();
        foreach (var side in Side.Both)
        {
            carriage.Add(new Fork(side));
            truck.Add(new Wheel(side, front: true)).Freed(Channels.TurnX);
            truck.Add(new Wheel(side, front: false)).Freed(Channels.TurnX | Channels.TurnY);
        }

        truck.Add<Column>().Add<SteeringWheel>();
        var seat = truck.AddOptional(default(Seat)) ?? truck.Add<Seat>();
        seat.Freed(Channels.MoveY);

        var beacon = First(truck.Find<Beacon>(), () => mast.Add<Beacon>());
        beacon.Freed(Channels.TurnY);
        rig.Label("beacon_label", Title<Beacon>()).Under(beacon.Control).ShownBy(beacon.Control.Switch("warning", 1));
    }

    private static string Title<T>() where T : IPart => $"{T.Kind.ToUpperInvariant()} ({typeof(T).Name})";

    private static T First<T>(T? found, Func<T> otherwise) where T : class => found ?? otherwise();
}

internal interface IPart
{
    static abstract string Kind { get; }

    static virtual JointRole Role => JointRole.Deform;

    string Suffix => "";

    Vector3 At { get; }

    Control Prepare(Control control) => control;
}

internal interface ISided : IPart
{
    Side Side { get; }

    string IPart.Suffix => $"_{Side}";
}

internal static class Assembly
{
    public static Assembly<T> Begin<T>(RigDraft rig, string skeleton)
        where T : IPart, new()
    {
        var part = new T();
        var joint = rig.Skeleton(skeleton).Root(T.Kind, T.Role, part.At);
        return new Assembly<T>(rig, part, joint, null);
    }
}

internal interface IAssembly
{
    Control Control { get; }
}

internal sealed class Assembly<T> : IAssembly
    where T : IPart
{
    private readonly RigDraft rig;
    private readonly Joint joint;
    private readonly List<IAssembly> inner = [];

    public Assembly(RigDraft rig, T part, Joint joint, Node? above)
    {
        (this.rig, this.joint) = (rig, joint);
        Control = part.Prepare(rig.Control($"move_{joint}").PlacedAt(joint));
        if (above is { } node)
            Control = Control.Under(node);
        rig.Drive(joint).ByChannels(Control);
    }

    public Control Control { get; }

    public Assembly<TPart> Add<TPart>()
        where TPart : IPart, new() => Add(new TPart());

    public Assembly<TPart> Add<TPart>(TPart part)
        where TPart : IPart
    {
        var below = joint.Child(TPart.Kind + part.Suffix, TPart.Role, at: part.At);
        var assembly = new Assembly<TPart>(rig, part, below, Control);
        inner.Add(assembly);
        return assembly;
    }

    public Assembly<TPart>? AddOptional<TPart>(TPart? part)
        where TPart : class, IPart => part is null ? null : Add(part);

    public Assembly<T> Freed(Channels channels)
    {
        Control.Lock(Channels.All & ~channels);
        return this;
    }

    public Assembly<TPart>? Find<TPart>()
        where TPart : IPart
    {
        foreach (var assembly in inner)
        {
            if (assembly is Assembly<TPart> found)
                return found;
        }

        return null;
    }
}

internal sealed class Chassis : IPart
{
    public static string Kind => "chassis";

    public Vector3 At => new(0, 0.35f, 0);
}

internal sealed class Mast : IPart
{
    public static string Kind => "mast";

    public Vector3 At => new(0, 0.1f, 0.9f);

    public Control Prepare(Control control) => control.Lock(Channels.Move | Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -6, 12);
}

internal sealed class Carriage : IPart
{
    public static string Kind => "carriage";

    public Vector3 At => new(0, 0.1f, 0.15f);

    public Control Prepare(Control control) => control.Lock(Channels.Turn).LimitMove(Axis.Y, 0, 3.2f);
}

internal sealed class Fork(Side side) : ISided
{
    public static string Kind => "fork";

    public Side Side => side;

    public Vector3 At => new(0.3f * side.Sign, 0, 0.1f);

    Control IPart.Prepare(Control control) => control.LimitMove(Axis.X, -0.2f, 0.2f);
}

internal sealed class Wheel(Side side, bool front) : ISided
{
    public static string Kind => "wheel";

    public Side Side => side;

    string IPart.Suffix => $"_{(front ? "front" : "rear")}_{side}";

    public Vector3 At => new((front ? 0.55f : 0.45f) * side.Sign, -0.1f, front ? 0.7f : -0.8f);
}

internal sealed record Column : IPart
{
    public static string Kind => "steering_column";

    public static JointRole Role => JointRole.Helper;

    public Vector3 At { get; init; } = new(0, 0.6f, 0.3f);
}

internal readonly struct SteeringWheel : IPart
{
    public static string Kind => "steering_wheel";

    public Vector3 At => new(0, 0.3f, -0.15f);
}

internal sealed class Seat : IPart
{
    public static string Kind => "seat";

    public Vector3 At => new(0, 0.5f, -0.3f);
}

internal sealed class Beacon : IPart
{
    public static string Kind => "beacon";

    public Vector3 At => new(0, 2.1f, 0);
}
