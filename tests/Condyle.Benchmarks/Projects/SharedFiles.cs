namespace Condyle.Benchmarks.Projects;

/// <summary>The files beside the rigs of a generated project: helpers that every rig runs, and code that has nothing to do with rigs.</summary>
internal static class SharedFiles
{
    /// <summary>Helpers that every rig of the project runs.</summary>
    public static (string Path, string Source) Helpers { get; } = ("/harbour/Shared/Gear.cs",
        """
        using System.Collections.Generic;
        using System.Linq;
        using System.Numerics;
        using Condyle;

        namespace Harbour.Shared;

        /// <summary>What a dock worker wears.</summary>
        public static class Gear
        {
            private static readonly string[] Straps = ["front", "back", "heel"];

            /// <summary>A belt with pouches that swing.</summary>
            public static void Belt(RigDraft rig, Joint hips, Control above, int pouches)
            {
                var belt = rig.Control("belt").Under(above).PlacedAt(hips);
                var holder = rig.Group("belt_group").Under(belt).PlacedAt(hips);
                for (var pouch = 0; pouch < pouches; pouch++)
                    Pouch(rig, hips, holder, $"pouch_{pouch}", Around(pouch, pouches, 0.2f));
                Buckle(rig, hips, belt);
            }

            /// <summary>A boot with straps, one of them on top of each other one.</summary>
            public static void Boot(RigDraft rig, Joint ankle, Control above, Side side)
            {
                var sole = ankle.Child($"sole_{side}", at: new Vector3(0, -0.08f, 0.02f));
                var boot = rig.Control($"boot_{side}").Under(above).PlacedAt(sole);
                boot.LimitTurn(Axis.X, -40f, 60f).LimitTurn(Axis.Z, -15f, 15f);
                rig.Drive(sole).ByChannels(boot);
                var before = boot;
                foreach (var strap in Straps.Where(name => name.Length > 3))
                {
                    var joint = sole.Child($"{strap}_strap_{side}", JointRole.Helper, at: new Vector3(0, 0.05f, 0.01f * strap.Length));
                    var pull = rig.Control($"{strap}_strap_pull_{side}").Under(before).PlacedAt(joint);
                    rig.Drive(joint).ByChannels(pull);
                    before = pull;
                }
            }

            private static void Pouch(RigDraft rig, Joint hips, Group holder, string name, Vector3 at)
            {
                var joint = hips.Child(name, JointRole.Helper, at: at);
                var swing = rig.Control(SwingOf(name)).Under(holder).PlacedAt(joint);
                var lid = rig.Control($"{name}_lid").Under(swing).PlacedAt(joint);
                swing.Lock(Channels.Move).LimitTurn(Axis.Z, -30f, 30f);
                lid.Lock(Channels.Move).LimitTurn(Axis.X, 0f, 120f);
                var calm = swing.Switch("calm", 0.5f);
                rig.Blend(joint).From(swing, calm.Inverse).From(lid, calm);
            }

            private static void Buckle(RigDraft rig, Joint hips, Control belt)
            {
                var joint = hips.Child("buckle", JointRole.Helper, at: new Vector3(0, 0, 0.12f));
                var buckle = rig.Control("buckle_pull").Under(belt).PlacedAt(joint);
                rig.Drive(joint).ByChannels(buckle);
                buckle.Lock(Channels.Turn).LimitMove(Axis.Z, -0.02f, 0.02f);
            }

            private static string SwingOf(string name) => name switch
            {
                "pouch_0" => "swing_first",
                var other when other.EndsWith("1", System.StringComparison.Ordinal) => "swing_second",
                _ => "swing_" + name,
            };

            private static Vector3 Around(int index, int count, float radius)
            {
                var share = (index + 0.5f) / count;
                var x = share < 0.5f ? share * 4 - 1 : 3 - share * 4;
                return new Vector3(x * radius, 0.05f, share < 0.5f ? radius / 2 : -radius / 2);
            }
        }

        """);

    /// <summary>What stands in a body of the helpers once, a digit last: behind it another one is typed.</summary>
    public const string EditedHelper = "0.12";

    /// <summary>A file that no rig uses.</summary>
    public static (string Path, string Source) Unrelated { get; } = ("/harbour/Quay/Tide.cs",
        """
        using System;
        using System.Collections.Generic;
        using System.Linq;

        namespace Harbour.Quay;

        /// <summary>When the water is high enough for a ship.</summary>
        public sealed class Tide(double mean, double range)
        {
            private readonly List<(double Hour, double Depth)> soundings = [];

            public double HighestSounding => soundings.Count == 0 ? mean : soundings.Max(sounding => sounding.Depth);

            public double At(double hour) => mean + range * Math.Sin(hour / 12.4 * 2 * Math.PI);

            public void Sound(double hour, double depth)
            {
                if (depth < 0)
                    throw new ArgumentOutOfRangeException(nameof(depth));
                soundings.Add((hour, depth));
                soundings.Sort((a, b) => a.Hour.CompareTo(b.Hour));
            }

            public IEnumerable<(double From, double To)> Windows(double draught, double step = 0.25)
            {
                double? from = null;
                for (var hour = 0.0; hour < 24; hour += step)
                {
                    var floats = At(hour) > draught + 0.5;
                    if (floats && from is null)
                        from = hour;
                    if (!floats && from is { } began)
                    {
                        yield return (began, hour);
                        from = null;
                    }
                }

                if (from is { } last)
                    yield return (last, 24);
            }

            public string Board(double draught)
            {
                var lines = new List<string>();
                foreach (var (begins, ends) in Windows(draught))
                {
                    var length = ends - begins;
                    var word = length switch { < 1 => "short", < 3 => "fair", _ => "long" };
                    lines.Add($"{begins:00.0} to {ends:00.0}: {word}");
                }

                return string.Join(Environment.NewLine, lines);
            }

            public bool Agrees(Tide other, double tolerance)
            {
                for (var hour = 0; hour < 24; hour++)
                {
                    if (Math.Abs(At(hour) - other.At(hour)) > tolerance)
                        return false;
                }

                return true;
            }
        }

        """);

    /// <summary>What stands in a body of the unrelated file once, a digit last: behind it another one is typed.</summary>
    public const string EditedUnrelated = "draught + 0.5";
}
