using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R24;

/// <summary>Tells that a joint has been declared, and what it should hang from.</summary>
public sealed class JointDeclaredEventArgs(Joint joint, string kind, Node above) : EventArgs
{
    public Joint Joint { get; } = joint;

    public string Kind { get; } = kind;

    public Node Above { get; } = above;

    public Control? Handle { get; set; }
}

/// <summary>Declares the bridge's joints and lets whoever listens give them handles.</summary>
public sealed class BridgeBuilder
{
    public delegate void BridgeFinished(int joints);

    private readonly Skeleton _skeleton;
    private int _declared;

    public BridgeBuilder(Skeleton skeleton) => _skeleton = skeleton;

    public event EventHandler<JointDeclaredEventArgs>? JointDeclared;

    public event BridgeFinished? Finished;

    public Joint Abutment(string name, Node above)
    {
        var joint = _skeleton.Root(name, JointRole.Helper);
        Raise(joint, "abutment", above);
        return joint;
    }

    public Control Add(Joint parent, string name, string kind, Vector3 at, Node above) =>
        Raise(parent.Child(name, at: at), kind, above) ?? throw new InvalidOperationException($"Nobody gave '{name}' a handle.");

    public void Finish() => Finished?.Invoke(_declared);

    private Control? Raise(Joint joint, string kind, Node above)
    {
        _declared++;
        var args = new JointDeclaredEventArgs(joint, kind, above);
        JointDeclared?.Invoke(this, args);
        return args.Handle;
    }
}

/// <summary>A bascule bridge over the lock: two leaves, their counterweights, barriers and signal arms.</summary>
public sealed class BasculeBridge : IRigDefinition
{
    private readonly Dictionary<string, Action<Control>> _limits = new();
    private Action<string>? _note;
    private RigDraft? _rig;

    public BasculeBridge()
    {
        _limits["leaf"] = control => control.Lock(Channels.Move | Channels.TurnY | Channels.TurnX).LimitTurn(Axis.Z, -82, 82);
        _limits["barrier"] = control => control.Lock(Channels.Move);
        _limits["barrier"] += control => control.LimitTurn(Axis.X, 0, 88);
        _limits["signal"] = static control => control.Lock(Channels.Move | Channels.Turn).Unlock(Channels.TurnX);
    }

    public void Define(RigDraft rig)
    {
        _rig = rig;
        var notes = new List<string>();
        _note = notes.Add;
        _note += text => notes[^1] = notes[^1].Length > 12 ? text[..12] : text;

        var bridge = rig.Control("bridge");
        var total = 0;
        var builder = new BridgeBuilder(rig.Skeleton("bascule_bridge"));
        builder.JointDeclared += OnJointDeclared;
        builder.Finished += count => total = count;

        var abutment = builder.Abutment("abutment", bridge);
        foreach (var side in Side.Both)
        {
            var leaf = builder.Add(abutment, $"leaf_{side}", "leaf", new Vector3(9 * side.Sign, 2, 0), bridge);
            builder.Add(abutment, $"barrier_{side}", "barrier", new Vector3(14 * side.Sign, 3, 2), bridge);
            builder.JointDeclared += OnSignal;
            builder.Add(abutment, $"signal_{side}", "signal", new Vector3(13 * side.Sign, 4, -3), bridge);
            builder.JointDeclared -= OnSignal;
            Counterweight(abutment, side, leaf);
        }

        builder.JointDeclared -= OnJointDeclared;
        builder.Finish();
        rig.Label("bridge_label", $"{total} joints: {string.Join("/", notes)}").Under(bridge);
    }

    private void OnJointDeclared(object? sender, JointDeclaredEventArgs e)
    {
        if (_rig is not { } rig)
            return;
        e.Handle = rig.Control($"{e.Kind}_{e.Joint.Name}_handle").Under(e.Above).PlacedAt(e.Joint);
        if (_limits.TryGetValue(e.Kind, out var limit))
            limit(e.Handle.Value);
        rig.Drive(e.Joint).ByChannels(e.Handle.Value);
        _note?.Invoke(e.Joint.Name);
    }

    private void OnSignal(object? sender, JointDeclaredEventArgs e)
    {
        var lamp = e.Joint.Child($"lamp_{e.Joint.Name}", at: Vector3.UnitY * 0.6f);
        _rig?.Drive(lamp).ByMatrix(e.Handle ?? throw new InvalidOperationException("The signal has no handle yet."));
    }

    // The weight hangs upright from the leaf's heel unless it is locked to the leaf.
    private void Counterweight(Joint abutment, Side side, Control leaf)
    {
        if (_rig == null)
            return;
        var weight = abutment.Child($"counterweight_{side}", at: new Vector3(11.5f * side.Sign, 1, 0));
        Func<string, Node, Group> carrier = (name, on) => _rig.Group($"{name}_{side}_group").Under(on).PlacedAt(weight);
        Func<string, Group> upright = name => carrier(name, abutment);
        Func<string, Group> fixedOn = name => carrier(name, leaf);
        var locked = leaf.Switch("locked");
        rig(upright("upright"), locked.Inverse)(fixedOn("locked_on"), locked);

        Func<Group, Weight, NodeBlend> rig(Group first, Weight share)
        {
            var blend = _rig.Blend((Node)weight).From(first, share);
            return (second, rest) => blend.From(second, rest);
        }
    }
}
