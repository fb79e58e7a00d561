using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Text;
using Condyle;

namespace Unseen.Third.R44;

public enum LogLevel
{
    Trace,
    Info,
    Warn,
}

public sealed class RigLog(TextWriter writer, LogLevel least)
{
    private int depth;
    private int lines;

    public int Lines => lines;

    public void Trace(string message, [CallerMemberName] string member = "") => Write(LogLevel.Trace, message, member);

    public void Info(string message, [CallerMemberName] string member = "") => Write(LogLevel.Info, message, member);

    public void Warn(string message, [CallerMemberName] string member = "") => Write(LogLevel.Warn, message, member);

    public Scope Begin(string what, [CallerMemberName] string member = "")
    {
        Write(LogLevel.Info, $"begin {what}", member);
        depth++;
        return new Scope(this, what);
    }

    private void Write(LogLevel level, string message, string member)
    {
        lines++;
        if (level >= least)
            writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{lines:0000} [{level}] {new string(' ', depth * 2)}{member}: {message}"));
    }

    public readonly struct Scope(RigLog log, string what) : IDisposable
    {
        public void Dispose()
        {
            log.depth--;
            log.Info($"end {what}");
        }
    }
}

public sealed class BasculeBridge : IRigDefinition
{
    private readonly StringBuilder text = new();
    private readonly RigLog log;
    private readonly Dictionary<string, int> counts = [];

    public BasculeBridge()
    {
        log = new RigLog(new StringWriter(text, CultureInfo.InvariantCulture), LogLevel.Info);
    }

    /// <summary>What the last build wrote down.</summary>
    public string Report => text.ToString();

    public void Define(RigDraft rig)
    {
        text.Clear();
        counts.Clear();
        using (log.Begin("bascule bridge"))
        {
            var root = rig.Skeleton("bascule_bridge").Root("abutments", JointRole.Helper);
            log.Trace("root declared");
            var world = AddControl(rig, "world", null, root);

            foreach (var side in Side.Both)
            {
                using (log.Begin($"leaf {side}"))
                {
                    Leaf(rig, root, world, side);
                }
            }

            using (log.Begin("signals"))
            {
                Signals(rig, root, world);
            }

            foreach (var (what, count) in counts)
                log.Info($"{count} x {what}");
        }

        Debug.WriteLine(Report);
    }

    private void Leaf(RigDraft rig, Joint root, Control world, Side side)
    {
        var trunnion = AddJoint(root, $"trunnion_{side}", new Vector3(12f * side.Sign, 6f, 0f));
        var lift = AddControl(rig, $"lift_{side}", world, trunnion);
        var (from, to) = side == Side.Left ? (-75f, 0f) : (0f, 75f);
        lift.Lock(Channels.Move | Channels.TurnX | Channels.TurnY).LimitTurn(Axis.Z, from, to);
        log.Info($"{lift} turns from {from} to {to} degrees");

        var deck = trunnion;
        for (var i = 0; i < 5; i++)
        {
            deck = AddJoint(deck, $"deck_{i}_{side}", new Vector3(-2f * side.Sign, 0f, 0f));
            var flex = AddControl(rig, $"flex_{i}_{side}", i == 0 ? lift : null, deck);
            if (i > 0)
            {
                log.Warn($"{flex} stands under the joint above it");
                flex.Under(rig.Chain(trunnion, deck)[i]);
            }
        }

        var weight = AddJoint(trunnion, $"counterweight_{side}", new Vector3(2.5f * side.Sign, -1f, 0f));
        AddControl(rig, $"swing_{side}", lift, weight);

        Ram(rig, root, lift, side);
    }

    private void Ram(RigDraft rig, Joint root, Control lift, Side side)
    {
        var foot = AddJoint(root, $"ram_foot_{side}", new Vector3(14f * side.Sign, 2f, 1.5f));
        var elbow = AddJoint(foot, $"ram_elbow_{side}", new Vector3(0.3f * side.Sign, 1.6f, 0f));
        var head = AddJoint(elbow, $"ram_head_{side}", new Vector3(-0.8f * side.Sign, 1.6f, 0f));
        var chain = rig.Chain(foot, head);
        log.Trace($"chain of {chain.Count}");
        var copy = chain.Copy("ram").Under(Count("group", rig.Group($"ram_{side}_group")));
        var pin = rig.Group($"ram_pin_{side}").Under(lift).PlacedAt(head);
        log.Trace($"pin {pin.Name}");
        rig.TwoBone(copy).Reach(pin);
        rig.Blend(chain).From(copy, 1f);
    }

    private void Signals(RigDraft rig, Joint root, Control world)
    {
        foreach (var bank in (ReadOnlySpan<string>)["east", "west"])
        {
            var gate = AddJoint(root, $"gate_{bank}", new Vector3(bank == "east" ? 18f : -18f, 7f, 3f));
            var arm = AddControl(rig, $"lower_gate_{bank}", world, gate);
            arm.LimitTurn(Axis.X, -90f, 0f);
            var lamp = AddJoint(gate, $"gate_lamp_{bank}", new Vector3(0f, 0.2f, 2f));
            log.Trace($"{lamp.Name} rides on {gate.Name}");
            rig.Drive(lamp).ByChannels(arm).KeepingOffset();
        }
    }

    private Joint AddJoint(Joint above, string name, Vector3 at)
    {
        log.Trace($"{name} below {above.Name} at {at}");
        return Count("joint", above.Child(name, at: at));
    }

    private Control AddControl(RigDraft rig, string name, Control? above, Joint joint)
    {
        log.Trace($"{name} moves {joint.Name}");
        var control = Count("control", rig.Control(name)).PlacedAt(joint);
        if (above is { } parent)
            control.Under(parent);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private T Count<T>(string what, T made)
    {
        counts[what] = counts.GetValueOrDefault(what) + 1;
        return made;
    }
}
