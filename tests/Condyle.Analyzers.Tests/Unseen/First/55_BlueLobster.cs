using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R55;

/// <summary>
/// The blue lobster from the aquarium wall. The Python original was one module with free functions, a settings dictionary that callers override,
/// and a registry of builders by kind; here they are static methods, <see cref="Options"/> and <see cref="Builders"/>.
/// </summary>
public sealed class BlueLobster : IRigDefinition
{
    private delegate IEnumerable<(string Role, Node Node)> Builder(RigDraft rig, Names names, Joint parent, Control above, Options options);

    private static readonly IDictionary<string, Builder> Builders = new SortedDictionary<string, Builder>(StringComparer.Ordinal)
    {
        { "tail", BuildTail },
        { "claw", BuildClaw },
        { "walker", BuildWalker },
        { "antenna", BuildWhip },
    };

    private static readonly Options Defaults = new()
    {
        { "count", 1 }, { "length", 0.1 }, { "spread", 0.02 }, { "curl", 30 }, { "forward", 0.0 }, { "tag", "ik" },
    };

    public void Define(RigDraft rig)
    {
        var carapace = rig.Skeleton("blue_lobster").Root("carapace", at: new Vector3(0, 0.05f, 0));
        var names = new Names();
        var main = rig.Control(names.Unique("lobster")).PlacedAt(carapace);
        rig.Drive(carapace).ByChannels(main);

        var parts = new List<(string Kind, string? Side, Options Options)>();
        parts.Add(("tail", null, new() { { "count", 6 }, { "length", 0.24 }, { "forward", -0.06 } }));
        foreach (var side in new[] { "left", "right" })
        {
            parts.Add(("claw", side, new() { { "length", side == "left" ? 0.2 : 0.17 }, { "spread", 0.05 }, { "forward", 0.08 } }));
            parts.Add(("antenna", side, new() { { "count", 5 }, { "length", 0.3 }, { "curl", 12.5 }, { "forward", 0.1 } }));
            parts.AddRange(Enumerable.Range(1, 4)
                .Select(i => ("walker", (string?)side, new Options { { "spread", 0.035 }, { "forward", 0.06 - (0.025 * i) } })));
        }

        var registry = new Dictionary<string, List<Node>>();
        foreach (var (kind, side, options) in parts)
        {
            foreach (var (role, node) in Builders[kind](rig, names.On(kind, side), carapace, main, Defaults | options))
            {
                // setdefault(role, []).append(node)
                if (!registry.TryGetValue(role, out var list))
                    registry[role] = list = new List<Node>();
                list.Add(node);
            }
        }

        foreach (var node in registry.TryGetValue("goal", out var goals) ? goals : Enumerable.Empty<Node>())
            rig.Label("label_" + node.Name[(node.Name.IndexOf('_') + 1)..], node.Name.Split('_')[0]).Under(node).ShownBy(1f);
        var counts = registry.Select(pair => $"{pair.Key}={pair.Value.Count}");
        if (registry.Sum(pair => pair.Value.Count) is var total and not 28)
            throw new InvalidOperationException($"expected 28 nodes, got {total}: {string.Join("; ", counts)}");
    }

    private static IEnumerable<(string, Node)> BuildTail(RigDraft rig, Names names, Joint parent, Control above, Options options)
    {
        var (count, step) = (options.Int("count"), options.Float("length") / options.Int("count"));
        for (var i = 0; i < count; i++)
        {
            parent = parent.Child(names.Of("ring", i), at: new Vector3(0, 0, i == 0 ? options.Float("forward") : -step));
            above = Turn(rig, names.Of("turn", i), parent, above, options.Float("curl"));
            yield return ("turn", above);
        }
    }

    private static IEnumerable<(string, Node)> BuildWhip(RigDraft rig, Names names, Joint parent, Control above, Options options)
    {
        var step = options.Float("length") / options.Int("count");
        var lengths = Enumerable.Range(0, options.Int("count")).Select(i => step * (1.4f - (0.2f * i))).Reverse().ToArray();
        var reversed = lengths[..^1].Append(step / 2).ToList();
        foreach (var (length, i) in reversed.Select((length, i) => (length, i)))
        {
            parent = parent.Child(names.Of("joint", i), at: new Vector3(names.Sign * 0.01f, i == 0 ? 0.02f : 0, i == 0 ? options.Float("forward") : length));
            above = Turn(rig, names.Of("turn", i), parent, above, options.Float("curl") / (i + 1));
        }

        yield return ("whip", above);
    }

    private static IEnumerable<(string, Node)> BuildClaw(RigDraft rig, Names names, Joint parent, Control above, Options options)
    {
        var (goal, tip) = Limb(rig, names, parent, above, options, new Vector3(0.3f, 0.1f, 0.5f), new Vector3(-0.2f, 0, 0.5f));
        yield return ("goal", goal);
        var pincer = tip.Child(names.Of("pincer"), at: new Vector3(0, 0.01f, 0.03f));
        yield return ("turn", Turn(rig, names.Of("pinch"), pincer, goal, 45));
    }

    private static IEnumerable<(string, Node)> BuildWalker(RigDraft rig, Names names, Joint parent, Control above, Options options)
    {
        var (goal, tip) = Limb(rig, names, parent, above, options, new Vector3(0.5f, 0.25f, 0), new Vector3(0.3f, -0.7f, 0));
        yield return ("goal", goal);
        yield return ("foot", tip);
    }

    private static (Control Goal, Joint Tip) Limb(RigDraft rig, Names names, Joint parent, Control above, Options options, Vector3 upper, Vector3 lower)
    {
        var (length, mirror) = (options.Float("length"), new Vector3(names.Sign, 1, 1));
        var a = parent.Child(names.Of("a"), at: new Vector3(names.Sign * options.Float("spread"), 0, options.Float("forward")));
        var b = a.Child(names.Of("b"), at: upper * mirror * length);
        var c = b.Child(names.Of("c"), at: lower * mirror * length);
        var chain = rig.Chain(a, c);
        var holder = rig.Group(names.Of("parts", "group")).PlacedAt(above);
        rig.Drive(holder).ByMatrix(above);
        var copy = chain.Copy((string)options["tag"]).Under(holder);
        var goal = rig.Control(names.Of("goal")).Under(above).PlacedAt(c);
        rig.TwoBone(copy).Reach(goal);
        foreach (var joint in new[] { a, b, c })
            rig.Drive(joint).ByChannels(copy.Of(joint));
        return (goal, c);
    }

    private static Control Turn(RigDraft rig, string name, Joint joint, Control above, float limit)
    {
        var control = rig.Control(name).Under(above).PlacedAt(joint).Lock(Channels.Move).LimitTurn(Axis.X, -limit, limit);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    /// <summary>dict with defaults: <c>a | b</c> takes b's values where both have one.</summary>
    internal sealed class Options : Dictionary<string, object>
    {
        public static Options operator |(Options defaults, Options given)
        {
            var merged = new Options();
            foreach (var (key, value) in defaults.Concat(given))
                merged[key] = value;
            return merged;
        }

        public int Int(string key) => Convert.ToInt32(this[key]);

        public float Float(string key) => this[key] switch { double d => (float)d, int i => i, var other => throw new InvalidCastException($"{key}: {other}") };
    }

    /// <summary>Gives names out, each once: a second "claw_left_goal" would be "claw_left_goal_2".</summary>
    internal sealed class Names
    {
        private readonly Dictionary<string, int> used;
        private string prefix = "", suffix = "";

        public Names() => used = new Dictionary<string, int>();

        private Names(Dictionary<string, int> used) => this.used = used;

        public float Sign => suffix.EndsWith("right", StringComparison.Ordinal) ? -1f : 1f;

        public Names On(string kind, string? side)
        {
            var number = used[kind + side] = used.GetValueOrDefault(kind + side) + 1;
            return new Names(used) { prefix = kind == "walker" ? $"{kind}{number}" : kind, suffix = side ?? "" };
        }

        public string Of(params object[] words) => Unique(string.Join('_', words.Prepend(prefix).Append(suffix).Where(word => word is not "")));

        public string Unique(string name) => used.TryAdd(name, 1) ? name : $"{name}_{++used[name]}";
    }
}
