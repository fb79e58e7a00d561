using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R26;

/// <summary>A steam capstan: barrel, bars in their pigeonholes, pawls round the rim, and two cylinders with crank, rod and piston.</summary>
public sealed partial class SteamCapstan : IRigDefinition
{
    private static readonly Vector3[] Rim;
    private static readonly Lazy<IReadOnlyDictionary<string, Channels>> Free;
    private static readonly int revision;

    private readonly Lazy<Names> names;
    private Parts? parts;

    static SteamCapstan()
    {
        revision = Settings.Bars > 6 ? 3 : 2;
        Rim = new Vector3[Settings.Bars];
        for (var i = 0; i < Rim.Length; i++)
        {
            var angle = 2 * Math.PI * i / Rim.Length;
            Rim[i] = new Vector3((float)Math.Sin(angle), 0, (float)Math.Cos(angle));
        }

        Free = new Lazy<IReadOnlyDictionary<string, Channels>>(() => new Dictionary<string, Channels>
        {
            [nameof(Parts.Barrel)] = Channels.TurnY,
            ["Bar"] = Channels.MoveZ | Channels.TurnX,
            ["Pawl"] = Channels.TurnX,
            ["Valve"] = Channels.MoveY,
        });
    }

    public SteamCapstan() => names = new(() => new Names($"r{revision}"));

    public void Define(RigDraft rig)
    {
        parts = new Parts(rig);
        BuildBarrel(rig, parts);
        BuildPawls(rig, parts);
        foreach (var side in Side.Both)
            BuildCylinder(rig, parts, side);
        rig.Label("capstan_label", names.Value["capstan"]).Under(parts.Deck);
    }

    private static Control Handle(RigDraft rig, Joint joint, Node above, string kind)
    {
        var free = Free.Value.TryGetValue(kind, out var channels) ? channels : Channels.Turn;
        var control = rig.Control($"{kind.ToLowerInvariant()}_{joint.Name}").Under(above).PlacedAt(joint).Lock(~free & Channels.All);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private static class Settings
    {
        public const int Bars = 8;
        public const int Pawls = Bars / 2;
        public static readonly float Radius = 0.35f;
        public static readonly float Throw = Radius * 0.4f;
    }

    private sealed class Names(string revision)
    {
        private readonly Dictionary<string, string> cache = [];

        public string this[string word] => cache.TryGetValue(word, out var known) ? known : cache[word] = $"{word} {revision} #{cache.Count}";
    }

    private sealed class Parts(RigDraft rig)
    {
        private Joint? barrel;

        public Joint Base { get; } = rig.Skeleton("steam_capstan").Root("bedplate");

        public Control Deck { get; } = rig.Control("deck");

        public Joint Barrel => barrel ??= Base.Child("barrel", at: new Vector3(0, 0.5f, 0));

        public Control? Turning { get; set; }
    }
}

public sealed partial class SteamCapstan
{
    private static void BuildBarrel(RigDraft rig, Parts parts)
    {
        rig.Drive(parts.Base).ByChannels(parts.Deck);
        parts.Turning ??= Handle(rig, parts.Barrel, parts.Deck, nameof(Parts.Barrel));
        var drumhead = rig.Group("drumhead_group").Under(parts.Turning.Value);
        for (var i = 0; i < Rim.Length; i++)
        {
            var facing = Quaternion.CreateFromYawPitchRoll((float)(2 * Math.PI * i / Rim.Length), 0, 0);
            var bar = parts.Barrel.Child($"bar_{i}", at: Rim[i] * Settings.Radius + Vector3.UnitY * 0.4f, turned: facing);
            Handle(rig, bar, drumhead, "Bar").LimitMove(Axis.Z, 0, 0.6f);
        }
    }

    private static void BuildPawls(RigDraft rig, Parts parts)
    {
        for (var i = 0; i < Settings.Pawls; i++)
        {
            var pawl = parts.Base.Child($"pawl_{i}", at: (Rim[2 * i] + Rim[2 * i + 1]) / 2 * (Settings.Radius + 0.1f));
            Handle(rig, pawl, parts.Deck, "Pawl").LimitTurn(Axis.X, -5, 60);
        }
    }

    private static void BuildCylinder(RigDraft rig, Parts parts, Side side)
    {
        var crank = parts.Base.Child($"crank_{side}", at: new Vector3(0.9f * side.Sign, 0.2f, 0));
        var pin = crank.Child($"crank_pin_{side}", at: new Vector3(0, Settings.Throw, 0));
        var rod = crank.Child($"rod_{side}", at: new Vector3(0, Settings.Throw, 0.02f));
        var knee = rod.Child($"crosshead_{side}", at: new Vector3(0, 0.05f, 0.5f));
        var piston = knee.Child($"piston_{side}", at: new Vector3(0, -0.1f, 0.3f));

        var turn = Handle(rig, crank, parts.Deck, "Crank");
        Handle(rig, pin, turn, "Pin");
        Handle(rig, parts.Base.Child($"valve_{side}", at: new Vector3(0.9f * side.Sign, 0.6f, 0.8f)), parts.Deck, "Valve");

        var linkage = rig.Chain(rod, piston);
        var group = rig.Group($"linkage_{side}_group").Under(parts.Deck).PlacedAt(turn);
        rig.Drive(group).ByMatrix(turn);
        var solved = linkage.Copy("solved").Under(group);
        var stroke = rig.Control($"stroke_{side}").Under(parts.Deck).PlacedAt(piston).Lock(Channels.All ^ Channels.MoveZ);
        rig.TwoBone(solved).Reach(stroke);
        rig.Blend(linkage).From(solved, 1);
    }
}
