using System.Collections.Generic;
using System.Numerics;
using System.Threading.Tasks;
using Condyle;

namespace Unseen.Fourth.R44;

public sealed class PilotBoat : IRigDefinition
{
    public void Define(RigDraft rig) => DefineAsync(rig).GetAwaiter().GetResult();

    private static async Task DefineAsync(RigDraft rig)
    {
        var hull = await LoadHullAsync(rig).ConfigureAwait(false);
        var world = rig.Control("world");
        var sail = rig.Control("sail").Under(world).PlacedAt(hull);
        rig.Drive(hull).ByChannels(sail);

        await Task.WhenAll(EngineAsync(rig, hull, sail), LadderAsync(rig, hull, sail, world));

        await foreach (var fender in FendersAsync(hull))
        {
            var control = rig.Control($"press_{fender}").Under(sail).PlacedAt(fender);
            control.LimitMove(Axis.X, -0.1f, 0.1f);
            rig.Drive(fender).ByChannels(control);
        }
    }

    private static ValueTask<Joint> LoadHullAsync(RigDraft rig) =>
        ValueTask.FromResult(rig.Skeleton("pilot_boat").Root("hull", at: new Vector3(0, 0.3f, 0)));

    private static async Task EngineAsync(RigDraft rig, Joint hull, Control sail)
    {
        var throttle = hull.Child("throttle", at: new Vector3(0.3f, 1.2f, 0.5f));
        await Task.CompletedTask;
        rig.Drive(throttle).ByChannels(rig.Control("throttle_handle").Under(sail).PlacedAt(throttle).LimitTurn(Axis.X, -30, 60));
    }

    private static async Task LadderAsync(RigDraft rig, Joint hull, Control sail, Control world)
    {
        var top = hull.Child("ladder_top", at: new Vector3(1.4f, 1, 0));
        var fold = top.Child("ladder_fold", at: new Vector3(0.2f, -0.6f, 0));
        var foot = fold.Child("ladder_foot", at: new Vector3(-0.1f, -0.7f, 0));
        var ladder = rig.Chain(top, foot).Bending(Vector3.UnitX);

        var copies = await CopiesAsync(ladder, "ik", "fk");
        foreach (var copy in copies)
            copy.Under(sail);

        var goal = rig.Control("ladder_goal").Under(world).PlacedAt(foot);
        rig.TwoBone(copies[0]).Reach(goal).Face(rig.Control("ladder_pole").Under(sail).PlacedAt(ladder.PolePoint(0.6f)));
        rig.Drive(copies[1].Root).ByChannels(rig.Control("turn_ladder_top").Under(sail).PlacedAt(top));
        rig.Drive(copies[1].Of(fold)).ByChannels(rig.Control("turn_ladder_fold").Under(copies[1].Root).PlacedAt(fold));

        var out1 = goal.Switch("out");
        rig.Blend(ladder).From(copies[0], out1).From(copies[1], out1.Inverse);
    }

    private static async Task<Copy[]> CopiesAsync(Chain chain, params string[] tags)
    {
        var copies = new List<Copy>();
        foreach (var tag in tags)
            copies.Add(await Task.FromResult(chain.Copy(tag)));
        return copies.ToArray();
    }

    private static async IAsyncEnumerable<Joint> FendersAsync(Joint hull)
    {
        foreach (var side in Side.Both)
        {
            for (var i = 0; i < 3; i++)
            {
                await Task.CompletedTask;
                yield return hull.Child($"fender_{i}_{side}", at: new Vector3(1.5f * side.Sign, 0.5f, i - 1f));
            }
        }
    }
}
