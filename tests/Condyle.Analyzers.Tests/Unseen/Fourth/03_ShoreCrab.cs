using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R03;

public sealed class ShoreCrab : IRigDefinition
{
    private sealed record Leg(Side Side, int Row, Chain Chain);

    public void Define(RigDraft rig)
    {
        var shell = rig.Skeleton("shore_crab").Root("shell", at: new Vector3(0, 0.12f, 0));
        var world = rig.Control("world");
        var body = rig.Control("body").Under(world).PlacedAt(shell);
        rig.Drive(shell).ByChannels(body);
        var systems = rig.Group("systems_group").Under(body);

        var legs =
            (from side in Side.Both
             from row in Enumerable.Range(1, 4)
             let hip = shell.Child($"hip{row}_{side}", at: new Vector3(0.09f * side.Sign, 0, 0.05f - 0.035f * row))
             let knee = hip.Child($"knee{row}_{side}", at: new Vector3(0.09f * side.Sign, 0.06f, 0))
             let tip = knee.Child($"claw{row}_{side}", at: new Vector3(0.06f * side.Sign, -0.17f, 0))
             select new Leg(side, row, rig.Chain(hip, tip))).ToArray();

        var switches = legs
            .Select(leg => (leg, group: rig.Group($"leg{leg.Row}_{leg.Side}_group").Under(systems).PlacedAt(leg.Chain.Root)))
            .Select(x => (x.leg, ik: x.leg.Chain.Copy("ik").Under(x.group), fk: x.leg.Chain.Copy("fk").Under(x.group)))
            .Select(x => (x.leg, x.ik, x.fk, foot: rig.Control($"foot{x.leg.Row}_{x.leg.Side}").Under(world).PlacedAt(x.leg.Chain.Tip)))
            .Select(x =>
            {
                rig.TwoBone(x.ik).Reach(x.foot);
                _ = x.leg.Chain.Aggregate((Node)body, (above, joint) =>
                {
                    var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
                    rig.Drive(x.fk.Of(joint)).ByChannels(turn);
                    return turn;
                });
                var fk = x.foot.Switch("fk");
                rig.Blend(x.leg.Chain).From(x.ik, fk.Inverse).From(x.fk, fk);
                return (Key: $"{x.leg.Row}_{x.leg.Side}", Switch: fk);
            })
            .ToDictionary(x => x.Key, x => x.Switch);

        switches.OrderBy(p => p.Key).ToList()
            .ForEach(p => rig.Label($"fk_leg{p.Key}_label", "FK").ShownBy(p.Value).Under(body));

        // the eyes: two stalks, one control each
        var eyes = Side.Both.Select(s => shell.Child($"eye_{s}", at: new Vector3(0.03f * s.Sign, 0.03f, 0.07f))).ToList();
        foreach (var (eye, control) in eyes.Zip(eyes.Select(e => rig.Control($"turn_{e.Name}").Under(body).PlacedAt(e))))
            rig.Drive(eye).ByChannels(control.Lock(Channels.Move));
    }
}
