using System.Collections.Immutable;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R47;

public sealed class Pelican : IRigDefinition
{
    private sealed record World(
        RigDraft Rig,
        ImmutableDictionary<string, Joint> Joints,
        ImmutableSortedDictionary<string, Control> Controls,
        ImmutableStack<Node> Above)
    {
        public World With(Joint joint) => this with { Joints = Joints.SetItem(joint.Name, joint) };

        public World With(Control control) => this with { Controls = Controls.Add(control.Name, control) };

        public World Into(Node node) => this with { Above = Above.Push(node) };

        public World Out() => this with { Above = Above.Pop() };
    }

    private static readonly ImmutableArray<(string Name, string? Above, Vector3 At)> Bones =
    [
        ("pelvis", null, new(0, 0.4f, 0)),
        ("chest", "pelvis", new(0, 0.05f, 0.15f)),
        ("neck", "chest", new(0, 0.15f, 0.08f)),
        ("head", "neck", new(0, 0.2f, 0.03f)),
        ("bill", "head", new(0, -0.02f, 0.06f)),
        ("pouch", "bill", new(0, -0.05f, 0.1f)),
        .. Side.Both.SelectMany(side => new (string, string?, Vector3)[]
        {
            ($"shoulder_{side}", "chest", new(0.08f * side.Sign, 0.03f, 0)),
            ($"elbow_{side}", $"shoulder_{side}", new(0.35f * side.Sign, 0, -0.06f)),
            ($"wrist_{side}", $"elbow_{side}", new(0.4f * side.Sign, 0, 0.06f)),
        }),
    ];

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("pelican");
        var start = new World(rig, ImmutableDictionary<string, Joint>.Empty, ImmutableSortedDictionary<string, Control>.Empty, []);

        var declared = Bones.Aggregate(start, (world, bone) => world.With(bone.Above is null
            ? skeleton.Root(bone.Name, at: bone.At)
            : world.Joints[bone.Above].Child(bone.Name, at: bone.At)));

        var ground = rig.Control("world");
        var trunk = ImmutableList.Create("pelvis", "chest", "neck", "head", "bill", "pouch")
            .Aggregate(declared.With(ground).Into(ground), Handle);

        _ = Side.Both.Aggregate(trunk, Wing);
    }

    private static World Handle(World world, string name)
    {
        var control = world.Rig.Control($"turn_{name}").Under(world.Above.Peek()).PlacedAt(world.Joints[name]);
        world.Rig.Drive(world.Joints[name]).ByChannels(control);
        return world.With(control).Into(control);
    }

    private static World Wing(World world, Side side)
    {
        var (rig, joints, controls, _) = world;
        var wing = rig.Chain(joints[$"shoulder_{side}"], joints[$"wrist_{side}"]);
        var breast = controls["turn_chest"];
        var group = rig.Group($"wing_{side}_group").PlacedAt(breast);
        rig.Drive(group).ByMatrix(breast);
        var copies = ImmutableDictionary.CreateRange(new[] { "ik", "fk", "rest" }.Select(tag => new System.Collections.Generic.KeyValuePair<string, Copy>(tag, wing.Copy(tag).Under(group))));

        var goal = rig.Control($"wing_{side}").Under(controls["world"]).PlacedAt(wing.Tip);
        rig.TwoBone(copies["ik"]).Reach(goal).Face(rig.Control($"wing_pole_{side}").Under(breast).PlacedAt(wing.PolePoint(0.3f)));

        var turned = wing.Aggregate(world.Into(breast), (w, joint) =>
        {
            var control = rig.Control($"turn_{joint.Name}").Under(w.Above.Peek()).PlacedAt(joint);
            rig.Drive(copies["fk"].Of(joint)).ByChannels(control);
            return w.With(control).Into(control);
        });

        // folded wins over both; what's left is shared between IK and FK
        var folded = goal.Switch("folded");
        var fk = goal.Switch("fk");
        rig.Blend(wing)
            .From(copies["rest"], folded)
            .From(copies["ik"], folded.Inverse * fk.Inverse)
            .From(copies["fk"], folded.Inverse * fk);
        return turned.With(goal) with { Above = world.Above };
    }
}
