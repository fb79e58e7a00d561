using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R15;

/// <summary>A mooring rope that sags from the bollard to the fairlead: joints sampled along a curve, held by a handful of handles.</summary>
public sealed class MooringRope : IRigDefinition
{
    private static readonly Curve Sag = new(new(0, 0.5f, 0), new(0.1f, 0.1f, 1.2f), new(-0.1f, -0.1f, 2.6f), new(0, 0.4f, 3.9f), new(0, 1.4f, 5f));

    public void Define(RigDraft rig)
    {
        var rope = rig.Control("rope");
        var joints = Lay(rig.Skeleton("mooring_rope"), Sag.Sample(perSpan: 4)).ToList();
        var handles = Handles(rig, joints, every: 4, rope).ToArray();

        foreach (var (joint, near, far, share) in Between(joints, handles, every: 4))
        {
            if (share == 0)
            {
                rig.Drive(joint).ByChannels(near);
                continue;
            }

            var (before, after) = (Carrier(rig, joint, near, "before"), Carrier(rig, joint, far, "after"));
            rig.Blend(joint).From(before, 1 - share).From(after, share);
        }

        var end = joints[^1].Child("splice", at: new Vector3(0, 0.05f, 0.1f));
        rig.Drive(end).ByChannels(rig.Control("splice_turn").Under(handles[^1]).PlacedAt(end).LimitTurn(Axis.Z, -180, 180));
        rig.Label("rope_label", $"{joints.Count} joints, {handles.Length} handles, {Sag.Count()} knots").Under(rope);
    }

    private static IEnumerable<Joint> Lay(Skeleton skeleton, IEnumerable<Vector3> points)
    {
        Joint? last = null;
        var from = Vector3.Zero;
        var index = 0;
        foreach (var point in points)
        {
            var at = point - from;
            var joint = last?.Child($"strand_{index:00}", at: at) ?? skeleton.Root($"strand_{index:00}", at: at);
            yield return joint;
            (last, from, index) = (joint, point, index + 1);
        }
    }

    private static IEnumerable<Control> Handles(RigDraft rig, IReadOnlyList<Joint> joints, int every, Control rope)
    {
        for (var i = 0; i < joints.Count; i += every)
        {
            var name = i == 0 ? "bollard" : i + every >= joints.Count ? "fairlead" : $"sag_{i / every}";
            yield return rig.Control(name).Under(rope).PlacedAt(joints[i]);
        }
    }

    private static IEnumerable<(Joint Joint, Control Near, Control Far, float Share)> Between(IReadOnlyList<Joint> joints, Control[] handles, int every)
    {
        var near = 0;
        while (true)
        {
            for (var step = 0; step < every; step++)
            {
                var index = near * every + step;
                if (index >= joints.Count)
                    yield break;
                yield return (joints[index], handles[near], handles[Math.Min(near + 1, handles.Length - 1)], step / (float)every);
            }

            near++;
        }
    }

    private static Group Carrier(RigDraft rig, Joint joint, Control handle, string word) =>
        rig.Group($"{joint.Name}_{word}_group").Under(handle).PlacedAt(joint);

    private sealed class Curve(params Vector3[] knots) : IEnumerable<Vector3>
    {
        public IEnumerable<Vector3> Sample(int perSpan)
        {
            for (var span = 0; span < knots.Length - 1; span++)
            {
                var (a, b, c, d) = (Knot(span - 1), Knot(span), Knot(span + 1), Knot(span + 2));
                for (var step = 0; step < perSpan; step++)
                    yield return At(a, b, c, d, step / (float)perSpan);
            }

            yield return knots[^1];
        }

        public IEnumerator<Vector3> GetEnumerator() => ((IEnumerable<Vector3>)knots).GetEnumerator();

        IEnumerator IEnumerable.GetEnumerator()
        {
            foreach (var knot in knots)
                yield return knot;
        }

        private Vector3 Knot(int index) => knots[Math.Clamp(index, 0, knots.Length - 1)];

        private static Vector3 At(Vector3 a, Vector3 b, Vector3 c, Vector3 d, float t)
        {
            var square = t * t;
            var cube = square * t;
            return 0.5f * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * square + (3 * b - a - 3 * c + d) * cube);
        }
    }
}
