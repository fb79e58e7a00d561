using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R11;

public sealed class MooringRope : IRigDefinition
{
    private const int Links = 9;

    public void Define(RigDraft rig)
    {
        var bollard = rig.Control("bollard");
        var cleat = rig.Control("cleat");
        var joints = Grow(rig.Skeleton("mooring_rope")).ToList();
        cleat.PlacedAt(joints[^1]);
        bollard.PlacedAt(joints[0]);

        var slack = cleat.Switch("slack", 0.5f).AlsoOn(bollard);
        foreach (var (joint, share) in joints.Zip(Shares(Links)))
        {
            var near = rig.Control($"{joint.Name}_near").Under(bollard).PlacedAt(joint);
            var far = rig.Control($"{joint.Name}_far").Under(cleat).PlacedAt(joint);
            var weight = share * slack;
            rig.Blend(joint).From(near, weight.Inverse).From(far, weight);
        }

        foreach (var (first, second) in Pairs(joints))
        {
            var knot = rig.Group($"between_{first.Name}_{second.Name}_group").Under(first).PlacedAt(second);
            if (second == joints[^1])
                knot.Unlock(Channels.TurnY);
        }

        foreach (Label label in new Labels(rig, slack))
            label.Under(cleat);
    }

    private static IEnumerable<Joint> Grow(Skeleton skeleton)
    {
        var joint = skeleton.Root("rope0", at: new Vector3(0, 0.5f, 0));
        yield return joint;
        for (var i = 1; i < Links; i++)
        {
            var sag = MathF.Cos(MathF.PI * i / Links) * -0.2f;
            joint = joint.Child($"rope{i}", at: new Vector3(0, sag, 0.6f));
            yield return joint;
        }
    }

    private static IEnumerable<float> Shares(int count)
    {
        var at = 0;
        while (true)
        {
            if (at == count)
                yield break;
            yield return at++ / (count - 1f);
        }
    }

    private static IEnumerable<(T First, T Second)> Pairs<T>(IEnumerable<T> items)
    {
        using var walk = items.GetEnumerator();
        if (!walk.MoveNext())
            yield break;
        var last = walk.Current;
        while (walk.MoveNext())
        {
            yield return (last, walk.Current);
            last = walk.Current;
        }
    }

    private sealed class Labels(RigDraft rig, Switch slack) : IEnumerable
    {
        public IEnumerator GetEnumerator()
        {
            yield return rig.Label("taut_label", "TAUT").ShownBy(slack.Inverse);
            yield return rig.Label("slack_label", "SLACK").ShownBy(slack);
        }
    }
}
