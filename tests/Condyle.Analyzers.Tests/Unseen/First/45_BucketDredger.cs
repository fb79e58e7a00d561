using System;
using System.Collections.Generic;
using System.Collections.ObjectModel;
using System.Globalization;
using System.Linq;
using System.Numerics;
using System.Text;
using Condyle;

namespace Unseen.First.R45;

/// <summary>Bucket dredger from a sectioned settings text: [defaults] first, then a section for each part, which may be based on another one.</summary>
public sealed class BucketDredger : IRigDefinition
{
    private static readonly string[] Lines =
    [
        "; exported for the dredger, sheet 3",
        "[defaults]",
        "scale = 0.001",
        "lock = Move",
        "prefix = dredge",
        "",
        "[part:hull]",
        "lock = None",
        "at = 0 1200 0",
        "[part:ladder]",
        "parent = hull",
        "at = 0 2400 6500",
        "turned = X 38",
        "limit.X = -12 30",
        "[part:tumbler]",
        "parent = ladder",
        "at = 0 0 0",
        "lock = Move, TurnY, TurnZ",
        "[part:bucket]",
        "parent = ladder",
        "at = 0 350 900",
        "step = 0 0 820",
        "count = 8",
        "group = buckets",
        "follow = tumbler",
        "[part:spud_left]",
        "parent = hull",
        "at = 3100 0 -9000",
        "lock = Turn, MoveX, MoveZ",
        "slide.Y = -6 0.5",
        "[part:spud_right : spud_left]",
        "at = -3100 0 -9000",
    ];

    public void Define(RigDraft rig)
    {
        var settings = Settings.Parse(Lines);
        var built = new Built(rig, rig.Skeleton("bucket_dredger"), settings["defaults"]["prefix"]);
        foreach (var section in settings.Where(section => section.Kind == "part"))
        {
            if (section.TryGet("count", out var count))
                built.Row(section, int.Parse(count, NumberStyles.Integer, CultureInfo.InvariantCulture));
            else
                built.Single(section);
        }
    }

    /// <summary>What is built so far, by the names of the sections.</summary>
    private sealed class Built(RigDraft rig, Skeleton skeleton, string prefix)
    {
        private readonly Dictionary<string, (Joint Joint, Control Control)> parts = [];
        private readonly Dictionary<string, Group> groups = [];

        public void Single(Section section)
        {
            var joint = Declare(section, section.Name, Vector3.Zero);
            var control = rig.Control($"{prefix}_{section.Name}").PlacedAt(joint).Lock(Enum.Parse<Channels>(section["lock"]));
            if (section.TryGet("parent", out var parent))
                control.Under(parts[parent].Control);
            foreach (var (key, (from, to)) in section.Ranges("limit."))
                control.LimitTurn(key, from, to);
            foreach (var (key, (from, to)) in section.Ranges("slide."))
                control.LimitMove(key, from, to);
            rig.Drive(joint).ByChannels(control);
            parts[section.Name] = (joint, control);
        }

        /// <summary>Parts in a row, which go with another part and have no handles.</summary>
        public void Row(Section section, int count)
        {
            var followed = parts[section["follow"]];
            var holder = GroupOf(section["group"], followed.Control);
            var step = section.Vector("step");
            for (var number = 0; number < count; number++)
            {
                var joint = Declare(section, $"{section.Name}_{number + 1:D2}", step * number);
                var seat = rig.Group($"{prefix}_{joint.Name}_seat").Under(holder).PlacedAt(joint);
                rig.Drive(joint).ByChannels(seat);
            }
        }

        private Group GroupOf(string name, Control followed)
        {
            if (!groups.TryGetValue(name, out var found))
            {
                found = groups[name] = rig.Group($"{prefix}_{name}_group").PlacedAt(followed);
                rig.Drive(found).ByMatrix(followed);
            }

            return found;
        }

        private Joint Declare(Section section, string name, Vector3 shift)
        {
            var at = section.Vector("at") + shift;
            Quaternion? turned = null;
            if (section.TryGet("turned", out var text) && text.Split(' ') is [var axis, var degrees])
            {
                var angle = float.Parse(degrees, CultureInfo.InvariantCulture) * (MathF.PI / 180);
                turned = axis switch
                {
                    "X" => Quaternion.CreateFromAxisAngle(Vector3.UnitX, angle),
                    "Y" => Quaternion.CreateFromAxisAngle(Vector3.UnitY, angle),
                    "Z" => Quaternion.CreateFromAxisAngle(Vector3.UnitZ, angle),
                    _ => throw new FormatException($"[{section.Name}] turns about '{axis}'"),
                };
            }

            return section.TryGet("parent", out var parent)
                ? parts[parent].Joint.Child(name, at: at, turned: turned)
                : skeleton.Root(name, at: at, turned: turned);
        }
    }

    private sealed class Settings : KeyedCollection<string, Section>
    {
        protected override string GetKeyForItem(Section item) => item.Name;

        public static Settings Parse(IEnumerable<string> lines)
        {
            var settings = new Settings();
            var errors = new StringBuilder();
            Section? current = null;
            foreach (var (line, number) in lines.Select((line, index) => (line.Trim(), index + 1)))
            {
                if (line.Length == 0 || line.StartsWith(';'))
                    continue;
                if (line is ['[', .. var title, ']'])
                {
                    var words = title.Split(':', StringSplitOptions.TrimEntries);
                    var above = words.Length > 2 ? settings[words[2]] : settings.FirstOrDefault(section => section.Kind == "defaults");
                    settings.Add(current = new Section(words[0], words[^1] == words[0] ? words[0] : words[1], above));
                }
                else if (current is not null && line.IndexOf('=') is > 0 and var at)
                    current[line[..at].TrimEnd()] = line[(at + 1)..].TrimStart();
                else
                    errors.AppendLine(CultureInfo.InvariantCulture, $"line {number}: {line}");
            }

            return errors.Length == 0 ? settings : throw new FormatException(errors.ToString());
        }
    }

    private sealed class Section(string kind, string name, Section? above)
    {
        private readonly Dictionary<string, string> values = new(StringComparer.OrdinalIgnoreCase);

        public string Kind => kind;

        public string Name => name;

        public string this[string key]
        {
            get => TryGet(key, out var value) ? value : throw new KeyNotFoundException($"[{name}] has no '{key}'");
            set => values[key] = value;
        }

        public bool TryGet(string key, out string value)
        {
            if (values.TryGetValue(key, out value!))
                return true;
            value = "";
            return above is not null && above.TryGet(key, out value);
        }

        public Vector3 Vector(string key)
        {
            var numbers = Array.ConvertAll(this[key].Split(' '), word => float.Parse(word, CultureInfo.InvariantCulture));
            return new Vector3(numbers) * float.Parse(this["scale"], CultureInfo.InvariantCulture);
        }

        public IEnumerable<KeyValuePair<Axis, (float From, float To)>> Ranges(string prefix) =>
            from pair in (above is { Kind: "part" } ? above.values.Concat(values) : values).GroupBy(pair => pair.Key, pair => pair.Value)
            where pair.Key.StartsWith(prefix, StringComparison.Ordinal)
            let numbers = pair.Last().Split(' ').Select(word => float.Parse(word, CultureInfo.InvariantCulture)).ToArray()
            select KeyValuePair.Create(Enum.Parse<Axis>(pair.Key[prefix.Length..]), (numbers[0], numbers[1]));
    }
}
