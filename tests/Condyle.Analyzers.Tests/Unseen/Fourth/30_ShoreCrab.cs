using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R30;

public sealed class ShoreCrab : IRigDefinition
{
    private sealed record Leg(Side Side, int Number, IReadOnlyList<Joint> Joints)
    {
        public string Suffix => $"{Number}_{Side}";
    }

    public void Define(RigDraft rig)
    {
        var shell = rig.Skeleton("shore_crab").Root("shell", at: new Vector3(0, 0.06f, 0));
        var world = rig.Control("world");
        var body = rig.Control("body").Under(world).PlacedAt(shell);
        rig.Drive(shell).ByChannels(body);

        var parts = new[] { ("hip", 0.04f, 0.0f), ("knee", 0.05f, 0.03f), ("ankle", 0.05f, -0.07f) };

        var legs = (
            from side in Side.Both
            from number in Enumerable.Range(1, 4)
            let z = 0.05f - 0.025f * number
            select new Leg(
                side,
                number,
                parts.Aggregate(
                    new List<Joint>(),
                    (made, part) =>
                    {
                        var above = made.Count == 0 ? shell : made[^1];
                        made.Add(above.Child(
                            $"{part.Item1}_{number}_{side}",
                            at: new Vector3(side.Sign * part.Item2, part.Item3, made.Count == 0 ? z : 0)));
                        return made;
                    }))).ToList();

        var switches = legs
            .Select(leg => (leg, chain: rig.Chain(leg.Joints[0], leg.Joints[^1])))
            .Select(pair => (pair.leg, pair.chain, ik: pair.chain.Copy("ik").Under(body), fk: pair.chain.Copy("fk").Under(body)))
            .Select(set =>
            {
                var foot = rig.Control($"foot_{set.leg.Suffix}").Under(world).PlacedAt(set.chain.Tip);
                var knee = rig.Control($"knee_pole_{set.leg.Suffix}").Under(body).PlacedAt(set.ik.PolePoint(0.12f));
                rig.TwoBone(set.ik).Reach(foot).Face(knee);
                set.chain
                    .Zip(set.chain.Select(joint => rig.Control($"turn_{joint.Name}").PlacedAt(joint)))
                    .Aggregate(body, (above, pair) =>
                    {
                        rig.Drive(set.fk.Of(pair.First)).ByChannels(pair.Second.Under(above));
                        return pair.Second;
                    });
                var fk = foot.Switch("fk");
                rig.Blend(set.chain).From(set.ik, fk.Inverse).From(set.fk, fk);
                return KeyValuePair.Create(set.leg.Suffix, fk);
            })
            .ToDictionary(pair => pair.Key, pair => pair.Value);

        switches
            .OrderBy(pair => pair.Key, StringComparer.Ordinal)
            .ToList()
            .ForEach(pair => rig.Label($"fk_label_{pair.Key}", "FK").ShownBy(pair.Value));

        var claws = Side.Both
            .Select(side => (side, claw: shell.Child($"claw_{side}", at: new Vector3(0.05f * side.Sign, 0.01f, 0.05f))))
            .SelectMany(pair => new[] { pair.claw, pair.claw.Child($"pincer_{pair.side}", at: new Vector3(0, 0.01f, 0.03f)) })
            .ToArray();
        foreach (var (claw, index) in claws.Select((claw, index) => (claw, index)))
        {
            var control = rig.Control($"turn_{claw}").PlacedAt(claw).Under(body);
            if (index % 2 == 1)
                control.LimitTurn(Axis.X, 0, 40);
            rig.Drive(claw).ByChannels(control);
        }
    }
}
