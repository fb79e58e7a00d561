using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;
using static System.Linq.Enumerable;

namespace Unseen.Third.R18;

// conger eel + the creel it lives in
public class Eel : IRigDefinition
{
    static readonly string[] fins = { "dorsal", "anal" };

    static readonly Dictionary<string, object> settings = new()
    {
        ["body_joints"] = 28,
        ["step"] = 0.055f,
        ["handles"] = new[] { 0, 9, 18, 27 },
        ["bars"] = 10,
    };

    static T get<T>(string key, T fallback) => settings.TryGetValue(key, out var value) && value is T t ? t : fallback;

    static IEnumerable<(int i, T item)> enumerate<T>(IEnumerable<T> items, int start = 0)
    {
        foreach (var item in items)
            yield return (start++, item);
    }

    static IEnumerable<(T a, T b)> pairwise<T>(IEnumerable<T> items)
    {
        using var it = items.GetEnumerator();
        if (!it.MoveNext())
            yield break;
        var a = it.Current;
        while (it.MoveNext())
        {
            yield return (a, it.Current);
            a = it.Current;
        }
    }

    static IEnumerable<Joint> spine(Joint first, int n, float step)
    {
        var joint = first;
        yield return joint;
        foreach (var i in Range(1, n - 1))
        {
            var sway = MathF.Sin(i * 0.45f) * 0.01f;
            joint = joint.Child($"body_{i:00}", at: new(sway, 0, -step));
            yield return joint;
        }
    }

    static IEnumerable<(string name, Joint joint)> fin_joints(List<Joint> body)
    {
        foreach (var (i, joint) in enumerate(body))
        {
            if (i % 3 != 1) continue;
            foreach (var (fin, y) in fins.Zip(new[] { 0.03f, -0.025f }))
                yield return ($"{fin}_{i:00}", joint.Child($"{fin}_{i:00}", at: new(0, y, 0)));
        }
    }

    static IEnumerable<float> linspace(float a, float b, int n) => Range(0, n).Select(i => a + (b - a) * i / (n - 1));

    static Control make_control(RigDraft rig, string name, Node? parent = null, Node? at = null, bool drive = true, Joint? joint = null)
    {
        var c = rig.Control(name);
        if (parent is { } p) c.Under(p);
        if (at is { } a) c.PlacedAt(a);
        if (joint is { } j && drive) rig.Drive(j).ByChannels(c);
        return c;
    }

    static (List<Joint> body, Joint jaw) make_skeleton(RigDraft rig)
    {
        var head = rig.Skeleton("eel").Root("head", at: new(0, 0.2f, 0));
        var jaw = head.Child("jaw", at: new(0, -0.02f, 0.02f));
        var body = spine(head, get("body_joints", 20), get("step", 0.05f)).ToList();
        return (body, jaw);
    }

    static void make_body(RigDraft rig, Control world, List<Joint> body)
    {
        var knots = get("handles", new[] { 0, body.Count - 1 });
        var handles = knots.ToDictionary(k => k, k => make_control(rig, $"swim_{k:00}", world, body[k]));
        var chain = rig.Chain(body[0], body[^1]);
        var grp = rig.Group("body_grp").Under(world);
        var (swim, coil) = (chain.Copy("swim").Under(grp), chain.Copy("coil").Under(grp));

        // swim: between two handles, by how far along we are
        foreach (var (lo, hi) in pairwise(knots))
            foreach (var (i, t) in enumerate(linspace(0, 1, hi - lo + 1).SkipLast(1), lo))
            {
                var mid = rig.Group($"swim_{i:00}_group").Under(grp).PlacedAt(body[i]);
                rig.Blend(mid).From(handles[lo], 1 - t).From(handles[hi], t);
                rig.Drive(swim.Of(body[i])).ByChannels(mid);
            }
        rig.Drive(swim.Tip).ByChannels(handles[knots[^1]]);

        // coil: each joint by itself
        var up = (Node)handles[0];
        foreach (var joint in body)
        {
            var c = make_control(rig, name: $"coil_{joint}", parent: up, at: joint).Lock(Channels.Move);
            rig.Drive(coil.Of(joint)).ByChannels(c);
            up = c;
        }

        var is_coiled = handles[0].Switch("coil");
        foreach (var (k, h) in handles)
            if (k != 0)
                is_coiled.AlsoOn(h);
        rig.Blend(chain).From(swim, is_coiled.Inverse).From(coil, is_coiled);
        foreach (var (text, w) in new (string, Weight)[] { ("SWIM", is_coiled.Inverse), ("COIL", is_coiled) })
            rig.Label($"{text.ToLower()}_label", text).Under(handles[0]).ShownBy(w);
    }

    static void make_creel(RigDraft rig, Control world)
    {
        var creel = rig.Skeleton("creel").Root("creel", JointRole.Helper, new(0.6f, 0, 0));
        var c = make_control(rig, "creel_handle", world, creel, joint: creel);
        foreach (var (i, x) in enumerate(linspace(-0.3f, 0.3f, get("bars", 5))))
        {
            var bar = creel.Child($"bar_{i}", JointRole.Helper, new(x, 0.2f, 0));
            make_control(rig, $"bar_{i}_handle", c, bar, joint: bar).Lock(Channels.Turn);
        }

        var lid = creel.Child("lid", JointRole.Helper, new(0, 0.4f, -0.25f));
        make_control(rig, "lid_handle", parent: c, at: lid, joint: lid).Lock(Channels.Move).LimitTurn(Axis.X, -110, 0);
    }

    public void Define(RigDraft rig)
    {
        var (body, jaw) = make_skeleton(rig);
        var world = make_control(rig, "world");
        make_body(rig, world, body);
        make_control(rig, "bite", body[0], jaw, joint: jaw).LimitTurn(Axis.X, 0, 45);
        foreach (var (name, joint) in fin_joints(body))
            make_control(rig, $"{name}_flick", body[int.Parse(name.Split('_')[^1])], joint, joint: joint);
        foreach (var (i, side) in enumerate(Side.Both, start: 1))
        {
            var fin = body[3].Child($"pectoral_{side}", at: new(0.03f * side.Sign, 0, -0.01f * i));
            make_control(rig, $"paddle_{side}", body[3], fin, joint: fin);
        }
        make_creel(rig, world);
    }
}
