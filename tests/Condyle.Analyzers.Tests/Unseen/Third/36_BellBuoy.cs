using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R36;

public sealed class BellBuoy : IRigDefinition
{
    private static readonly Dictionary<string, object> Config = new()
    {
        ["name"] = "bell_buoy",
        ["joints"] = new Dictionary<string, object>
        {
            ["sinker"] = new Dictionary<string, object> { ["role"] = "helper" },
            ["hull"] = new Dictionary<string, object> { ["parent"] = "sinker", ["at"] = new[] { 0f, 8f, 0f } },
            ["cage"] = new Dictionary<string, object> { ["parent"] = "hull", ["at"] = new[] { 0f, 1.2f, 0f } },
            ["bell"] = new Dictionary<string, object> { ["parent"] = "cage", ["at"] = new[] { 0f, 0.9f, 0f } },
            ["lamp"] = new Dictionary<string, object> { ["parent"] = "cage", ["at"] = new[] { 0f, 1.6f, 0f } },
            ["topmark"] = new Dictionary<string, object> { ["parent"] = "lamp", ["at"] = new[] { 0f, 0.5f, 0f } },
        },
        ["clappers"] = 4,
        ["clapper_radius"] = 0.35f,
        ["chain_links"] = 12,
        ["chain_link_length"] = 0.6f,
        ["controls"] = new Dictionary<string, object>
        {
            ["drift"] = new Dictionary<string, object> { ["joint"] = "sinker", ["lock"] = new[] { Channels.Turn } },
            ["bob"] = new Dictionary<string, object>
            {
                ["joint"] = "hull",
                ["under"] = "drift",
                ["move"] = new Dictionary<Axis, (float, float)> { [Axis.Y] = (-1.5f, 1.5f) },
                ["turn"] = new Dictionary<Axis, (float, float)> { [Axis.X] = (-25f, 25f), [Axis.Z] = (-25f, 25f) },
            },
            ["cage_sway"] = new Dictionary<string, object> { ["joint"] = "cage", ["under"] = "bob", ["lock"] = new[] { Channels.Move } },
            ["bell_swing"] = new Dictionary<string, object>
            {
                ["joint"] = "bell",
                ["under"] = "cage_sway",
                ["lock"] = new[] { Channels.Move, Channels.TurnY },
            },
            ["lamp_turn"] = new Dictionary<string, object> { ["joint"] = "lamp", ["under"] = "cage_sway" },
            ["topmark_wobble"] = new Dictionary<string, object> { ["joint"] = "topmark", ["under"] = "lamp_turn" },
        },
        ["drive_way"] = "channels",
    };

    public void Define(RigDraft rig)
    {
        var joints = MakeJoints(rig);
        var controls = MakeControls(rig, joints);

        for (var i = 0; i < Get<int>(Config, "clappers"); i++)
        {
            var angle = i * 2f * MathF.PI / Get<int>(Config, "clappers");
            var radius = Get(Config, "clapper_radius", 0.3f);
            var clapper = joints["bell"].Child($"clapper_{i}", at: new Vector3(radius * MathF.Cos(angle), -0.1f, radius * MathF.Sin(angle)));
            var control = rig.Control($"clapper_swing_{i}").Under(controls["cage_sway"]).PlacedAt(clapper).Lock(Channels.Move);
            Follow(rig, clapper, control);
        }

        var previous = joints["sinker"];
        Control above = controls["drift"];
        for (var link = 1; link <= Get(Config, "chain_links", 8); link++)
        {
            previous = previous.Child($"link_{link}", at: new Vector3(0f, Get(Config, "chain_link_length", 0.5f), 0f));
            above = rig.Control($"slack_{link}").Under(above).PlacedAt(previous);
            Follow(rig, previous, above);
        }
    }

    private static Dictionary<string, Joint> MakeJoints(RigDraft rig)
    {
        var skeleton = rig.Skeleton(Get<string>(Config, "name"));
        var made = new Dictionary<string, Joint>();
        foreach (var (name, value) in Get<Dictionary<string, object>>(Config, "joints"))
        {
            var settings = (Dictionary<string, object>)value;
            var role = Get(settings, "role", "deform") == "helper" ? JointRole.Helper : JointRole.Deform;
            Vector3? at = settings.TryGetValue("at", out var given) && given is float[] xyz ? new Vector3(xyz[0], xyz[1], xyz[2]) : null;
            made[name] = settings.TryGetValue("parent", out var parent)
                ? made[(string)parent].Child(name, role, at)
                : skeleton.Root(name, role, at);
        }

        return made;
    }

    private static Dictionary<string, Control> MakeControls(RigDraft rig, Dictionary<string, Joint> joints)
    {
        var made = new Dictionary<string, Control>();
        foreach (var entry in Get<Dictionary<string, object>>(Config, "controls"))
        {
            var settings = (Dictionary<string, object>)entry.Value;
            var joint = joints[Get<string>(settings, "joint")];
            var control = rig.Control(entry.Key).PlacedAt(joint);
            if (settings.ContainsKey("under"))
                control = control.Under(made[Get<string>(settings, "under")]);
            foreach (var locked in Get(settings, "lock", Array.Empty<Channels>()))
                control = control.Lock(locked);
            foreach (var (axis, (from, to)) in Get(settings, "move", new Dictionary<Axis, (float, float)>()))
                control = control.LimitMove(axis, from, to);
            foreach (var (axis, (from, to)) in Get(settings, "turn", new Dictionary<Axis, (float, float)>()))
                control = control.LimitTurn(axis, from, to);
            Follow(rig, joint, control);
            made[entry.Key] = control;
        }

        return made;
    }

    private static void Follow(RigDraft rig, Joint joint, Control control)
    {
        switch (Get(Config, "drive_way", "channels"))
        {
            case "matrix":
                rig.Drive(joint).ByMatrix(control);
                break;
            case "channels":
                rig.Drive(joint).ByChannels(control);
                break;
            case var other:
                throw new NotSupportedException($"drive_way '{other}'");
        }
    }

    private static T Get<T>(IReadOnlyDictionary<string, object> from, string key) => (T)from[key];

    private static T Get<T>(IReadOnlyDictionary<string, object> from, string key, T fallback) => from.TryGetValue(key, out var value) ? (T)value : fallback;
}
