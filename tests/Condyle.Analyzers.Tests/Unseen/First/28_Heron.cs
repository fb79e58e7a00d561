using System;
using System.Collections.Generic;
using System.Numerics;
using System.Threading;
using System.Threading.Tasks;
using Condyle;

namespace Unseen.First.R28;

/// <summary>Where plans for limbs come from; in the studio a server, here a table that is ready at once.</summary>
public interface IPlanSource
{
    Task<LegPlan> LegAsync(string name, CancellationToken cancel = default);

    ValueTask<float> LengthAsync(string bone);

    IAsyncEnumerable<(string Name, Vector3 At)> NeckAsync(int joints);
}

public sealed record LegPlan(Vector3 Hip, Vector3 Knee, Vector3 Foot);

/// <summary>A grey heron, standing on one leg as likely as not. It is built by tasks that are finished before they are awaited.</summary>
public sealed class Heron : IRigDefinition
{
    private readonly IPlanSource plans = new TablePlans();

    public void Define(RigDraft rig) => BuildAsync(rig).GetAwaiter().GetResult();

    private async Task BuildAsync(RigDraft rig)
    {
        var body = rig.Skeleton("grey_heron").Root("body", at: new Vector3(0, await plans.LengthAsync("stand"), 0));
        var heron = await PoseAsync(rig, body, rig.Control("heron"));

        var neck = await NeckAsync(rig, body, heron);
        var legs = await Task.WhenAll(LegAsync(rig, Side.Left, body, heron), LegAsync(rig, Side.Right, body, heron));
        foreach (var leg in legs)
            rig.Label($"{leg.Name}_label", $"{await plans.LengthAsync("shank"):0.0}").Under(leg);

        var stab = await Task.FromResult(neck[^1].Switch("stab")).ConfigureAwait(false);
        await BillAsync(rig, body, neck, stab);
    }

    private async Task<List<Control>> NeckAsync(RigDraft rig, Joint body, Control heron)
    {
        var controls = new List<Control>();
        var last = body;
        await foreach (var (name, at) in plans.NeckAsync(joints: 6))
        {
            last = last.Child(name, at: at);
            controls.Add(await PoseAsync(rig, last, controls.Count == 0 ? heron : controls[^1]));
        }

        return controls;
    }

    private async Task<Control> LegAsync(RigDraft rig, Side side, Joint body, Control heron)
    {
        var plan = await plans.LegAsync("heron");
        var hip = body.Child($"hip_{side}", at: plan.Hip with { X = plan.Hip.X * side.Sign });
        var hock = hip.Child($"hock_{side}", at: plan.Knee);
        var foot = hock.Child($"foot_{side}", at: plan.Foot);
        var leg = rig.Chain(hip, foot);

        var parts = rig.Group($"leg_{side}_group").PlacedAt(heron);
        rig.Drive(parts).ByMatrix(heron);
        var (ik, fk) = (leg.Copy("ik").Under(parts), leg.Copy("fk").Under(parts));
        var goal = rig.Control($"foot_goal_{side}").PlacedAt(foot);
        rig.TwoBone(ik).Reach(goal).Face(rig.Control($"hock_pole_{side}").Under(heron).PlacedAt(ik.PolePoint(await plans.LengthAsync("shank"))));

        var above = heron;
        foreach (var joint in leg)
        {
            above = rig.Control($"wade_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(above);
            await Task.CompletedTask;
        }

        var wade = goal.Switch($"fk_{side}", side == Side.Left ? 0f : 1f).AlsoOn(heron);
        rig.Blend(leg).From(ik, wade.Inverse).From(fk, wade);
        return goal;
    }

    private static async ValueTask BillAsync(RigDraft rig, Joint body, List<Control> neck, Switch stab)
    {
        var bill = body.Child("bill_reach", JointRole.Helper, new Vector3(0, 0.5f, 0.6f));
        var sources = new (Control Control, Weight Weight)[] { (neck[0], stab.Inverse), (neck[^1], stab) };
        var blend = rig.Blend(bill);
        foreach (var (control, weight) in sources)
        {
            var holder = rig.Group($"bill_on_{control.Name}_group").Under(control).PlacedAt(bill);
            blend = blend.From(holder, weight);
        }

        try
        {
            await Task.FromException<int>(new TimeoutException("The plan of the crest isn't in the table."));
        }
        catch (TimeoutException late)
        {
            rig.Label("crest_label", late.Message.Split(' ')[^1].Trim('.')).Under(neck[^1]);
        }
    }

    private static Task<Control> PoseAsync(RigDraft rig, Joint joint, Node above)
    {
        var control = rig.Control($"pose_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return Task.FromResult(control);
    }

    private sealed class TablePlans : IPlanSource
    {
        private readonly Dictionary<string, float> lengths = new() { ["stand"] = 0.6f, ["shank"] = 0.3f };

        public async Task<LegPlan> LegAsync(string name, CancellationToken cancel = default)
        {
            cancel.ThrowIfCancellationRequested();
            var shank = await LengthAsync("shank");
            return new LegPlan(new Vector3(0.06f, -0.05f, -0.02f), new Vector3(0, -shank, -0.08f), new Vector3(0, -0.8f * shank, 0.07f));
        }

        public ValueTask<float> LengthAsync(string bone) => new(lengths[bone]);

        public async IAsyncEnumerable<(string Name, Vector3 At)> NeckAsync(int joints)
        {
            for (var i = 0; i < joints; i++)
            {
                var bend = await LengthAsync(i < joints / 2 ? "stand" : "shank");
                yield return ($"neck_{(char)('a' + i)}", new Vector3(0, 0.08f, (bend - 0.4f) * 0.3f));
            }
        }
    }
}
