using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using System.Text;
using System.Threading;
using System.Threading.Tasks;
using Condyle;

namespace Unseen.Fourth.R23;

public sealed class PilotLaunch : IRigDefinition
{
    private readonly record struct Station(string Name, Vector3 At, float LimitDegrees);

    public void Define(RigDraft rig)
    {
        DefineAsync(rig, CancellationToken.None).GetAwaiter().GetResult();
    }

    private static async Task DefineAsync(RigDraft rig, CancellationToken stop)
    {
        var hull = await HullAsync(rig.Skeleton("pilot_launch"));
        var main = rig.Control("hull_main").PlacedAt(hull);
        rig.Drive(hull).ByChannels(main);

        await foreach (var station in StationsAsync().ConfigureAwait(false))
        {
            stop.ThrowIfCancellationRequested();
            var joint = hull.Child(station.Name, at: station.At);
            var name = await NameAsync("turn", station.Name);
            var control = rig.Control(name).Under(main).PlacedAt(joint).LimitTurn(Axis.Y, -station.LimitDegrees, station.LimitDegrees);
            await Task.CompletedTask;
            rig.Drive(joint).ByChannels(control);
        }

        var ladders = await Task.WhenAll(Side.Both.Select(side => LadderAsync(rig, hull, main, side)));
        foreach (var (label, fk) in ladders)
            rig.Label(label, "LADDER").ShownBy(fk).Under(main);
    }

    private static Task<Joint> HullAsync(Skeleton skeleton) => Task.FromResult(skeleton.Root("hull", at: Vector3.UnitY));

    private static async IAsyncEnumerable<Station> StationsAsync()
    {
        yield return new("lamp", new(0, 2.5f, 0), 180);
        await Task.CompletedTask;
        yield return new("wheel", new(0, 1.4f, 0.5f), 120);
        yield return new("rudder", new(0, -0.8f, -3), 35);
    }

    private static ValueTask<string> NameAsync(params string[] words)
    {
        var text = new StringBuilder();
        foreach (var word in words)
        {
            if (text.Length > 0)
                text.Append('_');
            text.Append(word);
        }

        return new ValueTask<string>(text.ToString());
    }

    private static async Task<(string Label, Switch Fk)> LadderAsync(RigDraft rig, Joint hull, Control main, Side side)
    {
        var s = side.ToString();
        var top = hull.Child(await NameAsync("ladder", "top", s), at: new(1.2f * side.Sign, 0.8f, 0));
        var mid = top.Child(await NameAsync("ladder", "fold", s), at: new(0.5f * side.Sign, -0.7f, 0));
        var end = mid.Child(await NameAsync("ladder", "end", s), at: new(-0.1f * side.Sign, -0.8f, 0));
        var ladder = rig.Chain(top, end);
        var group = rig.Group(await NameAsync("ladder", s, "group")).Under(main).PlacedAt(top);
        var ik = ladder.Copy("ik").Under(group);
        var fk = ladder.Copy("fk").Under(group);
        var foot = rig.Control(await NameAsync("ladder", "foot", s)).PlacedAt(end);
        rig.TwoBone(ik).Reach(foot).Face(rig.Control(await NameAsync("ladder", "pole", s)).Under(main).PlacedAt(ik.PolePoint(0.6f)));
        Node above = group;
        foreach (var joint in ladder)
        {
            var turn = rig.Control(await NameAsync("turn", joint.Name)).Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(turn);
            above = turn;
        }

        var amount = foot.Switch("fk", 1f);
        rig.Blend(ladder).From(ik, amount.Inverse).From(fk, amount);
        return (await NameAsync("ladder", "label", s), amount);
    }
}
