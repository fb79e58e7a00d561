using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R23;

/// <summary>The harbour master in his long coat: a tree of parts that is walked breadth first for joints and depth first for controls.</summary>
public sealed class HarbourMaster : IRigDefinition
{
    private sealed class Part(string name, Vector3 at)
    {
        public string Name => name;

        public Vector3 At => at;

        public List<Part> Parts { get; } = [];

        public Part Add(string child, float x, float y, float z)
        {
            var part = new Part(child, new Vector3(x, y, z));
            Parts.Add(part);
            return part;
        }
    }

    public void Define(RigDraft rig)
    {
        var body = Body();
        var joints = Breadth(rig, body);
        var controls = Depth(rig, body, joints);

        var limbs = new Queue<(string Root, string Tip, string Above)>();
        foreach (var side in Side.Both)
        {
            limbs.Enqueue(($"shoulder_{side}", $"wrist_{side}", $"collar_{side}"));
            limbs.Enqueue(($"hip_{side}", $"ankle_{side}", "pelvis"));
        }

        while (limbs.TryDequeue(out var limb))
            Reach(rig, rig.Chain(joints[limb.Root], joints[limb.Tip]), controls[limb.Above], controls["pelvis"]);

        rig.Label("coat_label", $"deepest part: {Deepest(body).Name}, depth {DepthOf(body)}").Under(controls["pelvis"]);
    }

    private static Part Body()
    {
        var pelvis = new Part("pelvis", new Vector3(0, 0.96f, 0));
        var chest = pelvis.Add("waist", 0, 0.14f, 0).Add("chest", 0, 0.18f, 0);
        chest.Add("neck", 0, 0.26f, 0.01f).Add("head", 0, 0.1f, 0.02f).Add("cap", 0, 0.18f, 0);
        foreach (var side in Side.Both)
        {
            chest.Add($"collar_{side}", side.Sign * 0.04f, 0.19f, 0.01f)
                .Add($"shoulder_{side}", side.Sign * 0.15f, 0, -0.01f)
                .Add($"elbow_{side}", side.Sign * 0.28f, 0, -0.03f)
                .Add($"wrist_{side}", side.Sign * 0.25f, 0, 0.04f);
            pelvis.Add($"hip_{side}", side.Sign * 0.1f, -0.05f, 0).Add($"knee_{side}", 0, -0.44f, 0.03f).Add($"ankle_{side}", 0, -0.42f, -0.04f);
            var hem = pelvis.Add($"coat_{side}", side.Sign * 0.12f, -0.05f, -0.1f);
            for (var i = 0; i < 3; i++)
                hem = hem.Add($"coat_{side}_{i}", 0, -0.2f, -0.03f);
        }

        return pelvis;
    }

    private static Dictionary<string, Joint> Breadth(RigDraft rig, Part body)
    {
        var joints = new Dictionary<string, Joint> { [body.Name] = rig.Skeleton("harbour_master").Root(body.Name, at: body.At) };
        var work = new Queue<Part>([body]);
        while (work.Count > 0)
        {
            var part = work.Dequeue();
            foreach (var child in part.Parts)
            {
                joints.Add(child.Name, joints[part.Name].Child(child.Name, at: child.At));
                work.Enqueue(child);
            }
        }

        return joints;
    }

    private static Dictionary<string, Control> Depth(RigDraft rig, Part body, Dictionary<string, Joint> joints)
    {
        string[] bent = ["shoulder", "elbow", "wrist", "hip", "knee", "ankle"];
        var inLimbs = new HashSet<string>(Side.Both.SelectMany(_ => bent, (side, part) => $"{part}_{side}"));
        var controls = new Dictionary<string, Control>();
        var work = new Stack<(Part Part, Node? Above)>();
        work.Push((body, null));
        while (work.TryPop(out var next))
        {
            var (part, above) = next;
            if (!inLimbs.Contains(part.Name))
            {
                var control = rig.Control($"pose_{part.Name}").PlacedAt(joints[part.Name]);
                if (above is { } parent)
                    control.Under(parent).Lock(Channels.Move);
                rig.Drive(joints[part.Name]).ByChannels(control);
                controls.Add(part.Name, control);
                above = control;
            }

            foreach (var child in Enumerable.Reverse(part.Parts))
                work.Push((child, above));
        }

        return controls;
    }

    private static void Reach(RigDraft rig, Chain limb, Control above, Control pelvis)
    {
        var group = rig.Group($"from_{limb.Root}_group").PlacedAt(above);
        rig.Drive(group).ByMatrix(above);
        var (ik, fk) = (limb.Copy("ik").Under(group), limb.Copy("fk").Under(group));
        var goal = rig.Control($"reach_{limb.Tip}").Under(pelvis).PlacedAt(limb.Tip);
        rig.TwoBone(ik).Reach(goal).Face(rig.Control($"pole_{limb[1]}").Under(pelvis).PlacedAt(ik.PolePoint(0.5f)));

        var last = new Stack<Control>([above]);
        for (var i = 0; i < limb.Count; i++)
        {
            last.Push(rig.Control($"fk_{limb[i]}").Under(last.Peek()).PlacedAt(limb[i]));
            rig.Drive(fk.Of(limb[i])).ByChannels(last.Peek());
        }

        var amount = goal.Switch("fk").AlsoOn(last.Pop());
        rig.Blend(limb).From(fk, amount).From(ik, amount.Inverse);
    }

    private static int DepthOf(Part part) => 1 + part.Parts.Select(DepthOf).DefaultIfEmpty().Max();

    private static Part Deepest(Part part) => part.Parts.Count == 0 ? part : Deepest(part.Parts.MaxBy(DepthOf)!);
}
