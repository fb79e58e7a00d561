using System;
using System.Numerics;
using Condyle;

namespace Unseen.First.R22;

/// <summary>A moray under the pier: twenty-four vertebrae, cut into stretches by ranges, and a jaw within a jaw.</summary>
public sealed class MorayEel : IRigDefinition
{
    private const int Vertebrae = 24;

    public void Define(RigDraft rig)
    {
        var spine = new Joint[Vertebrae];
        Span<float> lengths = stackalloc float[Vertebrae];
        Taper(lengths, from: 0.06f, to: 0.025f);
        Lay(rig.Skeleton("moray_eel"), spine, lengths);

        var eel = rig.Control("eel").PlacedAt(spine[0]);
        var stretches = Cut(spine, "head 4, gill 3, belly 9, tail 8");
        var above = eel;
        foreach (var (word, range) in stretches)
            above = Stretch(rig, word, spine.AsSpan(range), above);

        var skull = spine[..1][0];
        var jaw = skull.Child("jaw", at: new Vector3(0, -0.02f, 0.05f));
        var throat = jaw.Child("throat_jaw", at: new Vector3(0, 0.005f, -0.04f));
        Jaws(rig, [jaw, throat], eel);
        Fins(rig, spine.AsSpan()[3..^2], eel, step: 6);

        ReadOnlySpan<char> name = "moray_eel_label";
        rig.Label(name[(name.IndexOf('_') + 1)..].ToString(), $"{spine[^1]} is {Total(lengths[1..]):0.00} m away").Under(eel);
    }

    private static void Taper(Span<float> lengths, float from, float to)
    {
        for (var i = 0; i < lengths.Length; i++)
            lengths[i] = from + (to - from) * i / (lengths.Length - 1);
        lengths[0] = 0;
        lengths[^3..].Fill(to / 2);
    }

    private static void Lay(Skeleton skeleton, Span<Joint> spine, ReadOnlySpan<float> lengths)
    {
        spine[0] = skeleton.Root("skull", at: new Vector3(0, 0.1f, 0));
        for (var i = 1; i < spine.Length; i++)
            spine[i] = spine[i - 1].Child($"vertebra_{i,2:00}", at: new Vector3(i % 2 == 0 ? 0.004f : -0.004f, 0, -lengths[i]));
    }

    // "head 4, gill 3": a word and how many joints it takes, from the head backwards.
    private static (string Word, Range Range)[] Cut(ReadOnlySpan<Joint> spine, ReadOnlySpan<char> plan)
    {
        var cuts = new (string, Range)[plan.Count(',') + 1];
        var start = 0;
        for (var i = 0; i < cuts.Length; i++)
        {
            var comma = plan.IndexOf(',');
            var entry = (comma < 0 ? plan : plan[..comma]).Trim();
            plan = comma < 0 ? [] : plan[(comma + 1)..];
            var space = entry.LastIndexOf(' ');
            var count = int.Parse(entry[(space + 1)..]);
            cuts[i] = (entry[..space].ToString(), new Range(start, start + count));
            start += count;
        }

        return start == spine.Length ? cuts : throw new ArgumentException($"The plan takes {start} joints of {spine.Length}.", nameof(plan));
    }

    private static Control Stretch(RigDraft rig, string word, ReadOnlySpan<Joint> joints, Control above)
    {
        var handle = rig.Control($"{word}_bend").Under(above).PlacedAt(joints[0]);
        var last = handle;
        ref readonly var first = ref joints[0];
        rig.Drive(first).ByChannels(handle);
        foreach (ref readonly var joint in joints[1..])
        {
            last = rig.Control($"{word}_{joint.Name[^2..]}").Under(last).PlacedAt(joint).Lock(Channels.Move | Channels.TurnX);
            rig.Drive(joint).ByChannels(last);
        }

        return last;
    }

    private static void Jaws(RigDraft rig, ReadOnlySpan<Joint> jaws, Control above)
    {
        while (jaws is [var jaw, .. var rest])
        {
            var gape = rig.Control($"gape_{jaw}").Under(above).PlacedAt(jaw).LimitTurn(Axis.X, 0, 30 + 10 * rest.Length);
            rig.Drive(jaw).ByChannels(gape);
            above = gape;
            jaws = rest;
        }
    }

    private static void Fins(RigDraft rig, Span<Joint> along, Control eel, int step)
    {
        var fins = rig.Group("fin_rays").Under(eel).Accept("CDY1001", because: "the fin baker of the cloth team asks for 'fin_rays'");
        for (Index at = 0; at.Value < along.Length; at = at.Value + step)
        {
            var ray = along[at].Child($"ray_{at.Value}", at: new Vector3(0, 0.05f, -0.01f));
            var ripple = rig.Control($"ripple_{at.Value}").Under(fins).PlacedAt(ray);
            rig.Blend(ray).From(ripple, 1);
        }
    }

    private static float Total(params ReadOnlySpan<float> lengths)
    {
        var total = 0f;
        foreach (var length in lengths)
            total += length;
        return total;
    }
}
