using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R47;

public sealed class PigeonsOnAWire : IRigDefinition
{
    private static readonly string[] Flock = ["amber", "bosun", "cleat", "dory"];

    private static readonly ILookup<string, (string Part, string Above, float X, float Y, float Z)> Feathers = new[]
    {
        ("breast", "", 0f, 0.08f, 0f),
        ("neck", "breast", 0f, 0.06f, 0.05f),
        ("head", "neck", 0f, 0.05f, 0.01f),
        ("rump", "breast", 0f, -0.01f, -0.09f),
        ("fan", "rump", 0f, 0f, -0.05f),
    }
    .ToLookup(row => row.Item2, row => (Part: row.Item1, Above: row.Item2, X: row.Item3, Y: row.Item4, Z: row.Item5));

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("pigeons");
        var wire = Enumerable.Range(1, 10)
            .Aggregate(
                new[] { skeleton.Root("wire_0", at: new(-2.5f, 6f, 0f)) }.AsEnumerable(),
                (made, n) => made.Append(made.Last().Child($"wire_{n}", at: new(0.5f, Sag(n) - Sag(n - 1), 0f))).ToArray())
            .ToArray();

        var world = rig.Control("world");
        var sways = wire
            .Select((joint, index) => (joint, index))
            .Where(it => it.index % 2 == 0)
            .ToDictionary(it => it.index, it => rig.Control($"sway_{it.index}").Under(world).PlacedAt(it.joint));

        _ = wire.Select((joint, index) => sways.TryGetValue(index, out var sway)
            ? (object)rig.Drive(joint).ByChannels(sway)
            : rig.Blend(joint)
                .From(Perch(rig, sways[index - 1], joint, $"before_{index}"), 0.5f)
                .From(Perch(rig, sways[index + 1], joint, $"after_{index}"), 0.5f)).ToList();

        var birds =
            from bird in Flock.Zip(wire.Where((_, index) => index % 3 == 1))
            let perch = (Name: bird.First, Joint: bird.Second)
            from feather in Grown("", perch.Joint, perch.Name)
            group feather by perch.Name into pigeon
            orderby pigeon.Key
            select (pigeon.Key, Parts: pigeon.ToDictionary(part => part.Part, part => part.Joint));

        foreach (var (name, parts) in birds.ToList())
        {
            var strut = rig.Control($"{name}_strut").Under(world).PlacedAt(parts["breast"]);
            rig.Drive(parts["breast"]).ByChannels(strut);

            var controls = Ancestry("head").Concat(Ancestry("fan"))
                .Except(["breast"])
                .Distinct()
                .OrderBy(part => Ancestry(part).Count())
                .Aggregate(
                    new Dictionary<string, Control> { ["breast"] = strut },
                    (made, part) =>
                    {
                        var above = Feathers.SelectMany(rows => rows).Single(row => row.Part == part).Above;
                        made[part] = rig.Control($"{name}_{part}_turn").Under(made[above]).PlacedAt(parts[part]);
                        return made;
                    });

            controls.Skip(1).ToList().ForEach(pair => rig.Drive(parts[pair.Key]).ByChannels(pair.Value));
            Side.Both.ToList().ForEach(side => Wing(rig, name, parts["breast"], strut, side));
        }
    }

    private static float Sag(int n) => -0.25f * MathF.Sin(MathF.PI * n / 10f);

    private static Group Perch(RigDraft rig, Control under, Joint at, string name) => rig.Group($"{name}_group").Under(under).PlacedAt(at);

    private static IEnumerable<(string Part, Joint Joint)> Grown(string above, Joint joint, string bird) =>
        Feathers[above]
            .Select(row => (row.Part, Joint: joint.Child($"{bird}_{row.Part}", at: new(row.X, row.Y, row.Z))))
            .SelectMany(made => Grown(made.Part, made.Joint, bird).Prepend(made));

    private static IEnumerable<string> Ancestry(string part) =>
        part == "" ? [] : Ancestry(Feathers.SelectMany(rows => rows).First(row => row.Part == part).Above).Append(part);

    private static void Wing(RigDraft rig, string bird, Joint breast, Control strut, Side side)
    {
        var joints = new[] { ("shoulder", 0.04f), ("elbow", 0.09f), ("tip", 0.12f) }
            .Select((part, index) => (Name: $"{bird}_{part.Item1}_{side}", At: new Vector3(part.Item2 * side.Sign, 0f, index == 1 ? -0.03f : 0.01f)))
            .Aggregate(new List<Joint> { breast }, (made, part) => [.. made, made[^1].Child(part.Name, at: part.At)])
            .Skip(1)
            .ToList();

        var wing = rig.Chain(joints.First(), joints.Last());
        var fold = wing.Copy("fold").Under(strut);
        wing.Zip(wing.Select(joint => rig.Control($"{joint}_flap").PlacedAt(joint)))
            .Aggregate(strut, (above, pair) =>
            {
                rig.Drive(fold.Of(pair.First)).ByChannels(pair.Second.Under(above));
                return pair.Second;
            });
        rig.Blend(wing).From(fold, new[] { 0.25f, 0.25f, 0.5f }.Sum());
    }
}
