using System.Numerics;

namespace Condyle.Tests.Shared;

/// <summary>
/// A rig of random choices, the same for the same seed: joints with random frames, a bent rest and a root away from the origin, controls, groups,
/// copies, drives both ways and of some channels, blends of chains and of lone nodes, solvers with their options, dials, choices, responses, spaces, aims, twists, falloffs
/// and labels. What it says makes no loop.
/// </summary>
/// <param name="seed">Picks the rig.</param>
/// <param name="jitter">
/// How far, in metres and radians, the joints' rest strays from that of the same seed without jitter: it shows how much a result depends on the last digits of its input.
/// </param>
internal sealed partial class RandomRig(int seed, float jitter = 0) : IRigDefinition
{
    private readonly RandomChoices choices = new(seed);
    private readonly RandomChoices noise = new(~seed);
    private readonly Dictionary<Node, List<Node>> needs = [];
    private readonly List<Joint> joints = [];
    private readonly HashSet<Joint> twistJoints = [];
    private readonly List<int> parents = [];
    private readonly List<Node> hangers = [];
    private readonly List<Control> controls = [];
    private readonly List<Switch> switches = [];
    private int named;

    public void Define(RigDraft rig)
    {
        AddSkeleton(rig);
        Times(choices.Between(1, 10), () => AddControl(rig));
        Times(choices.Below(5), () => AddGroup(rig));
        Times(choices.Below(4), () => AddLimb(rig));
        Times(choices.Below(8), () => AddDrive(rig));
        Times(choices.Below(4), () => AddLoneBlend(rig));
        AddSettings(rig);
        AddTurns(rig);
        Times(choices.Below(3), () => rig.Label(Name("label"), "shown").Under(choices.Of(hangers)).ShownBy(RandomWeight()));
    }

    private void AddSkeleton(RigDraft rig)
    {
        var scales = choices.Below(4);
        var (at, turned, scaled) = RandomRest(scales);
        AddJoint(rig.Skeleton("skeleton").Root(Name("joint"), JointRole.Helper, at + choices.Vector(2), turned, scaled), -1);
        Times(choices.Between(2, 39), () =>
        {
            // Mostly the last joint is the parent, so that there are chains to solve.
            var parent = choices.Chance(0.7) ? joints.Count - 1 : choices.Below(joints.Count);
            var (at, turned, scaled) = RandomRest(scales);
            var (name, role) = (Name("joint"), choices.Chance(0.2) ? JointRole.Twist : JointRole.Deform);
            AddJoint(joints[parent].Child(name, role, at, turned, scaled), parent, role);
        });
    }

    private void AddJoint(Joint joint, int parent, JointRole role = JointRole.Deform)
    {
        joints.Add(joint);
        if (role == JointRole.Twist)
            twistJoints.Add(joint);
        parents.Add(parent);
        if (parent >= 0)
            Follow(joint, joints[parent]);
    }

    /// <summary>Without scale, with even scale on some joints, with uneven or with mirroring scale on a few.</summary>
    private (Vector3 At, Quaternion Turned, Vector3 Scaled) RandomRest(int scales)
    {
        var scaled = scales switch
        {
            1 when choices.Chance(0.2) => Vector3.One * choices.Between(0.7f, 1.5f),
            2 when choices.Chance(0.1) => new Vector3(choices.Between(0.8f, 1.3f), choices.Between(0.8f, 1.3f), choices.Between(0.8f, 1.3f)),
            3 when choices.Chance(0.15) => new Vector3(RandomSign(), RandomSign(), RandomSign()),
            _ => Vector3.One,
        };
        var at = choices.Direction() * choices.Between(0.05f, 0.3f);
        var turned = choices.Turn(choices.Chance(0.5) ? MathF.PI : 0.4f);
        return (at + noise.Vector(jitter), Quaternion.Normalize(noise.Turn(jitter) * turned), scaled);
    }

    private float RandomSign() => choices.Chance(0.5) ? -1 : 1;

    private void AddControl(RigDraft rig)
    {
        var control = rig.Control(Name("control"));
        if (RandomParent() is { } parent)
        {
            control.Under(parent);
            Follow(control, parent);
        }

        if (controls.Count > 0 && choices.Chance(0.1))
            control.Mirroring(choices.Of(controls));
        else if (choices.Chance(0.1))
            control.PlacedAt(rig.Spot(choices.Of(joints), choices.Vector(0.3f)));
        else if (choices.Chance(0.9))
            control.PlacedAt(choices.Chance(0.7) ? choices.Of(joints) : RandomNode());
        if (choices.Chance(0.3))
            control.Unlock(Channels.Scale);
        if (choices.Chance(0.5))
            switches.Add(control.Switch("amount", choices.Chance(0.5) ? 0 : choices.Between(0f, 1f)));
        controls.Add(control);
        hangers.Add(control);
    }

    private Group AddGroup(RigDraft rig)
    {
        var group = rig.Group(Name("group"));
        if (RandomParent() is { } parent)
        {
            group.Under(parent);
            Follow(group, parent);
        }

        if (choices.Chance(0.6))
            group.PlacedAt(RandomNode());
        if (choices.Chance(0.6))
            Drive(rig, group, RandomNode(), choices.Chance(0.7) ? DriveByMatrix : DriveByChannels);
        hangers.Add(group);
        return group;
    }

    /// <summary>A chain with one to three copies, each turned by controls or solved, and a blend of them.</summary>
    private void AddLimb(RigDraft rig)
    {
        if (RandomChain(rig) is not { } chain)
            return;
        if (choices.Chance(0.3))
            chain.Bending(choices.Direction());
        var copies = new List<Copy>();
        Times(choices.Between(1, 3), () =>
        {
            var copy = chain.Copy(Name("copy"));
            foreach (var (joint, before) in chain.Zip(chain.Skip(1), (before, joint) => (joint, before)))
                Follow(copy.Of(joint), copy.Of(before));
            var parent = choices.Chance(0.5) ? AddGroup(rig) : choices.Of(hangers);
            copy.Under(parent);
            Follow(copy.Root, parent);
            if (choices.Chance(0.5))
                Solve(rig, chain, copy);
            else
                TurnByControls(rig, chain, copy);
            hangers.Add(copy.Tip);
            copies.Add(copy);
        });

        var followed = chain.SelectMany(joint => copies.Select(copy => (Joint: joint, Source: copy.Of(joint)))).ToList();
        if (followed.Any(pair => NeedsToKnow(pair.Source, chain.Root)))
            return;
        foreach (var (joint, source) in followed)
            Follow(joint, source);
        var blend = rig.Blend(chain);
        foreach (var copy in copies)
            blend.From(copy, RandomWeight());
    }

    private void TurnByControls(RigDraft rig, Chain chain, Copy copy)
    {
        foreach (var joint in chain)
        {
            var control = rig.Control(Name("turn")).PlacedAt(joint);
            if (choices.Chance(0.7))
            {
                var parent = choices.Of(hangers);
                control.Under(parent);
                Follow(control, parent);
            }

            controls.Add(control);
            Drive(rig, copy.Of(joint), control, DriveByChannels);
        }
    }

    private void AddDrive(RigDraft rig) => Drive(
        rig,
        RandomTarget(),
        RandomNode(),
        choices.Chance(0.9) ? DriveByChannels : DriveByMatrix);

    private void AddLoneBlend(RigDraft rig)
    {
        var target = RandomTarget();
        var blend = rig.Blend(target);
        Times(choices.Between(0, 4), () =>
        {
            var source = RandomNode();
            if (NeedsToKnow(source, target))
                return;
            Follow(target, source);
            blend.From(source, RandomWeight());
        });
    }

    private void Drive(RigDraft rig, Node target, Node source, Func<Drive, Node, Drive> way)
    {
        if (NeedsToKnow(source, target))
            return;
        Follow(target, source);
        var drive = way(rig.Drive(target), source);
        if (choices.Chance(0.6))
            drive.KeepingOffset();
        if (choices.Chance(0.2))
            drive.WithScale();
        if (way == DriveByChannels && choices.Chance(0.3))
            drive.Writing(RandomChannels());
    }

    private static Drive DriveByMatrix(Drive drive, Node source) => drive.ByMatrix(source);

    private static Drive DriveByChannels(Drive drive, Node source) => drive.ByChannels(source);

    private Chain? RandomChain(RigDraft rig)
    {
        var tip = choices.Below(joints.Count);
        var root = tip;
        Times(choices.Chance(0.5) ? 2 : choices.Between(1, 5), () => root = parents[root] < 0 ? root : parents[root]);
        if (root == tip)
            return null;
        var chain = rig.Chain(joints[root], joints[tip]);
        var shorter = choices.Chance(0.3) && !chain.All(twistJoints.Contains) ? chain.Without(JointRole.Twist) : chain;
        return shorter.Count >= 2 ? shorter : chain;
    }

    /// <summary>A constant, a switch, its inverse, or sums and products of them.</summary>
    private Weight RandomWeight()
    {
        if (switches.Count == 0 || choices.Chance(0.15))
            return choices.Chance(0.3) ? 0f : choices.Between(0f, 1f);
        Weight weight = choices.Of(switches);
        if (choices.Chance(0.5))
            weight = weight.Inverse;
        return choices.Below(4) switch
        {
            0 => weight * RandomWeight(),
            1 when choices.Chance(0.5) => weight + RandomWeight(),
            _ => weight,
        };
    }

    private Node RandomTarget() => choices.Chance(0.7) ? choices.Of(joints) : choices.Of(controls);

    private Node? RandomParent() => choices.Chance(0.6) && hangers.Count > 0 ? choices.Of(hangers) : choices.Chance(0.3) ? choices.Of(joints) : null;

    private Node RandomNode() => choices.Chance(0.8) && hangers.Count > 0 ? choices.Of(hangers) : choices.Of(joints);

    private void Follow(Node who, Node whom)
    {
        if (!needs.TryGetValue(who, out var followed))
            needs[who] = followed = [];
        followed.Add(whom);
    }

    /// <summary>Whether one node must be evaluated after another: following that one to it would make a loop.</summary>
    private bool NeedsToKnow(Node who, Node whom)
    {
        var seen = new HashSet<Node> { who };
        var open = new Stack<Node>(seen);
        while (open.TryPop(out var node))
        {
            if (node == whom)
                return true;
            foreach (var next in needs.GetValueOrDefault(node) ?? [])
            {
                if (seen.Add(next))
                    open.Push(next);
            }
        }

        return false;
    }

    private string Name(string kind) => $"{kind}_{named++}";

    private static void Times(int count, Action action)
    {
        for (var i = 0; i < count; i++)
            action();
    }
}
