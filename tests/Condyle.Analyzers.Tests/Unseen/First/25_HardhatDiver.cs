using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R25;

/// <summary>A hard-hat diver with an air hose. Names and groups nest by scopes: what is opened in a using is closed with it.</summary>
public sealed class HardhatDiver : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        using var bench = new Bench(rig, "diver");
        var pelvis = rig.Skeleton("hardhat_diver").Root("pelvis", at: new Vector3(0, 0.9f, 0));
        var body = bench.Pose(pelvis);
        var chest = pelvis.Child("chest", at: new Vector3(0, 0.4f, 0));
        var torso = bench.Pose(chest, body);
        using (bench.Into("helmet"))
        {
            var helmet = chest.Child("helmet", at: new Vector3(0, 0.3f, 0.02f));
            var turn = bench.Pose(helmet, torso).LimitTurn(Axis.Y, -20, 20);
            var at = helmet;
            using (bench.Into("hose"))
            {
                for (var i = 0; i < 6; i++)
                {
                    at = at.Child(bench.Name($"{i}"), at: new Vector3(0, 0.25f, -0.05f - 0.02f * i));
                    turn = bench.Pose(at, turn);
                }
            }
        }

        foreach (var side in Side.Both)
        {
            using (bench.Into($"{side}"))
            {
                var reach = side.Sign * 0.26f;
                Limb(rig, bench, "arm", chest, torso, new(side.Sign * 0.2f, 0.15f, 0), new(reach, -0.02f, -0.03f), new(reach, 0, 0.05f));
                try
                {
                    Limb(rig, bench, "leg", pelvis, body, new(side.Sign * 0.11f, -0.05f, 0), new(0, -0.4f, 0.03f), new(0, -0.4f, -0.05f));
                    bench.Count("legs");
                }
                finally
                {
                    bench.Count("sides");
                }
            }
        }

        Weights(bench, pelvis, body);
        rig.Label("diver_label", bench.Summary).Under(body);
    }

    private static void Limb(RigDraft rig, Bench bench, string word, Joint root, Control above, Vector3 first, Vector3 second, Vector3 third)
    {
        using var scope = bench.Into(word);
        var upper = root.Child(bench.Name("upper"), at: first);
        var middle = upper.Child(bench.Name("middle"), at: second);
        var end = middle.Child(bench.Name("end"), at: third);
        var chain = rig.Chain(upper, end);

        using var parts = bench.Held(above);
        var ik = chain.Copy("ik").Under(parts.Group);
        var fk = chain.Copy("fk").Under(parts.Group);
        var goal = rig.Control(bench.Name("goal")).Under(above).PlacedAt(end);
        rig.TwoBone(ik).Reach(goal).Face(rig.Control(bench.Name("pole")).Under(above).PlacedAt(ik.PolePoint(0.5f)));
        foreach (var joint in chain)
            above = bench.Pose(fk.Of(joint), joint, above);
        var heavy = goal.Switch("fk");
        rig.Blend(chain).From(ik, heavy.Inverse * 1f).From(fk, heavy);
    }

    // The belt may be left off: a belt that doesn't fit is put back as it was and tried with fewer weights.
    private static void Weights(Bench bench, Joint pelvis, Control body)
    {
        var wanted = 12;
        while (true)
        {
            try
            {
                var belt = Belt(wanted).ToList();
                foreach (var (index, at) in belt.Index())
                    bench.Pose(pelvis.Child($"lead_{index}", JointRole.Helper, at), body).Lock(Channels.Turn);
                return;
            }
            catch (ArgumentOutOfRangeException) when (wanted > 1)
            {
                wanted /= 2;
            }
            finally
            {
                bench.Count("belts");
            }
        }
    }

    private static IEnumerable<Vector3> Belt(int weights)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(weights, 8);
        for (var i = 0; i < weights; i++)
        {
            var (sin, cos) = MathF.SinCos(i * MathF.Tau / weights);
            yield return new Vector3(0.18f * sin, 0.08f, 0.14f * cos);
        }
    }

    private sealed class Bench(RigDraft rig, string name) : IDisposable
    {
        private readonly Stack<string> words = new([name]);
        private readonly SortedList<string, int> counts = new(StringComparer.Ordinal);
        private bool closed;

        public string Summary => string.Join(' ', counts.Select(pair => pair.Key + "=" + pair.Value));

        public IDisposable Into(string word)
        {
            words.Push(word);
            return new Leave(() => words.Pop());
        }

        public HeldGroup Held(Control above)
        {
            var group = rig.Group(Name("group")).PlacedAt(above);
            rig.Drive(group).ByMatrix(above);
            return new HeldGroup(group, this);
        }

        public string Name(string last) => closed ? throw new ObjectDisposedException(nameof(Bench)) : string.Join('_', words.Reverse().Append(last));

        public void Count(string what) => counts[what] = counts.TryGetValue(what, out var so) ? so + 1 : 1;

        public Control Pose(Joint joint, Node? above = null) => Pose(joint, joint, above);

        public Control Pose(Node node, Joint at, Node? above)
        {
            var control = rig.Control($"pose_{node.Name}").PlacedAt(at);
            if (above.HasValue)
                control = control.Under(above.Value);
            rig.Drive(node).ByChannels(control);
            Count("poses");
            return control;
        }

        public void Dispose() => closed = true;
    }

    private readonly ref struct HeldGroup(Group group, Bench bench)
    {
        public Group Group => group;

        public void Dispose() => bench.Count("groups");
    }

    private sealed class Leave(Action how) : IDisposable
    {
        public void Dispose() => how();
    }
}
