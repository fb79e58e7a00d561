using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R26;

// The cat that sleeps on the crates. Lists in, lists out; side is just a suffix.
public sealed class QuayCat : IRigDefinition
{
    static readonly string[] Suffixes = Side.Both.Select(s => $"_{s}").ToArray();

    static readonly (string, float)[] SpineLengths = [("pelvis", 0f), ("loin", .11f), ("ribs", .12f), ("neck", .1f), ("head", .07f)];

    static readonly Dictionary<string, Vector3[]> Limbs = new()
    {
        // where the limb starts (from its spine joint), then bone by bone
        ["ribs"] = [new(.05f, -.03f, .05f), new(0, -.1f, -.03f), new(0, -.1f, .03f)],
        ["pelvis"] = [new(.05f, -.02f, -.02f), new(0, -.11f, .04f), new(0, -.1f, -.04f)],
    };

    public void Define(RigDraft rig)
    {
        var root = rig.Skeleton("quay_cat").Root("root", JointRole.Helper);
        var spine = MakeSpine(root).ToDictionary(j => j.Name);
        var tail = MakeTail(spine["pelvis"], 7);

        var world = rig.Control("world").PlacedAt(root);
        rig.Drive(root).ByChannels(world);

        var turns = SpineLengths
            .Select(p => p.Item1)
            .Zip(Fk(rig, [.. spine.Values], world))
            .ToDictionary(p => p.First, p => p.Second);

        // every second tail joint is keyed by hand, those between lag behind
        Tail(rig, tail, turns["pelvis"]);

        var legs =
            from limb in Limbs
            from suffix in Suffixes
            let end = limb.Key == "ribs" ? "fore" : "hind"
            select (Name: $"{end}leg{suffix}", Parent: limb.Key, Offsets: limb.Value.Select(o => suffix == "_left" ? o : o with { X = -o.X }));

        var paws = legs.Select(l => Leg(rig, l.Name, spine[l.Parent], turns[l.Parent], world, l.Offsets.ToList())).ToList();

        // sleeping: hind and fore paws tucked in pairs
        foreach (var pair in paws.GroupBy(p => p.Name[..7]).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var tuck = rig.Control($"tuck_{pair.Key}").Under(world).PlacedAt(spine[pair.Key == "forepaw" ? "ribs" : "pelvis"]);
            foreach (var paw in pair)
                paw.Under(tuck);
        }
    }

    static IEnumerable<Joint> MakeSpine(Joint root)
    {
        var joint = root;
        foreach (var ((name, length), i) in SpineLengths.Select((p, i) => (p, i)))
        {
            joint = joint.Child(name, at: i == 0 ? new(0, .25f, -.15f) : new(0, i < 3 ? 0 : .05f, length));
            yield return joint;
        }
    }

    static List<Joint> MakeTail(Joint pelvis, int n)
    {
        var tail = new List<Joint> { pelvis.Child("tail_0", at: new(0, .03f, -.05f)) };
        foreach (var i in Enumerable.Range(1, n - 1))
            tail.Add(tail[^1].Child($"tail_{i}", at: new(0, .005f * i, -.05f)));
        return tail;
    }

    static IEnumerable<Control> Fk(RigDraft rig, Joint[] joints, Control above)
    {
        var made = new List<Control>();
        foreach (var j in joints)
        {
            var c = rig.Control($"turn_{j}").Under(made.LastOrDefault(above)).PlacedAt(j);
            rig.Drive(j).ByChannels(c);
            made.Add(c);
        }

        foreach (var c in made[1..])
            c.Lock(Channels.Move);
        return made;
    }

    static void Tail(RigDraft rig, List<Joint> tail, Control pelvis)
    {
        var keyed = tail.Where((_, i) => i % 2 == 0).ToArray();
        var controls = keyed.Zip(Fk(rig, keyed, pelvis)).ToDictionary(p => p.First, p => p.Second);

        foreach (var window in tail.Select((j, i) => (j, i)).Where(p => p.i % 2 == 1))
        {
            var (joint, i) = window;
            Node[] sources = [.. new[] { tail[i - 1], tail[i + 1] }.Select(k => (Node)rig.Group($"{joint}_at_{k}_group").Under(controls[k]).PlacedAt(joint))];
            if (sources is [var before, var after])
                rig.Blend(joint).From(before, .5f).From(after, .5f);
        }
    }

    static Control Leg(RigDraft rig, string name, Joint parent, Control above, Control world, List<Vector3> offsets)
    {
        var joints = offsets.Aggregate(new List<Joint>(), (made, at) =>
        {
            made.Add(made.LastOrDefault(parent).Child($"{name}_{made.Count}", at: at));
            return made;
        });
        var chain = rig.Chain(joints[0], joints[^1]);
        var ik = chain.Copy("ik").Under(rig.Group($"{name}_group").Under(above).PlacedAt(chain.Root));
        var paw = rig.Control($"{name.Replace("leg", "paw")}").Under(world).PlacedAt(chain.Tip);
        var pole = rig.Control($"{name}_pole").Under(above).PlacedAt(ik.PolePoint(.2f));
        rig.TwoBone(ik).Reach(paw).Face(pole);
        rig.Blend(chain).From(ik, 1);
        return paw;
    }
}
