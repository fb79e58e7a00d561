using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R35;

/// <summary>A gull on the pier rail. Limbs know how they are built; the bird only says which it has.</summary>
public sealed class PierGull : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var bird = new Bird(rig);
        var limbs = new List<Appendage>();
        foreach (var side in Side.Both)
        {
            limbs.Add(new Wing(bird, side));
            limbs.Add(new WebbedLeg(bird, side));
        }

        limbs.Add(new Tail(bird, feathers: 3));
        limbs.Add(new Beak(bird));
        limbs.ForEach(limb => limb.Build());
    }
}

internal sealed class Bird
{
    public Bird(RigDraft rig)
    {
        Rig = rig;
        Body = rig.Skeleton("pier_gull").Root("body", at: new Vector3(0, 0.35f, 0));
        Neck = Body.Child("neck", at: new Vector3(0, 0.08f, 0.14f));
        Head = Neck.Child("head", at: new Vector3(0, 0.07f, 0.04f));
        Ground = rig.Control("ground");
        Systems = rig.Group("systems_group").Under(Ground);
        BodyControl = Attach(Body, Ground);
        HeadControl = Attach(Head, Attach(Neck, BodyControl));
    }

    public RigDraft Rig { get; }

    public Joint Body { get; }

    public Joint Neck { get; }

    public Joint Head { get; }

    public Control Ground { get; }

    public Group Systems { get; }

    public Control BodyControl { get; }

    public Control HeadControl { get; }

    public Control Attach(Joint joint, Node above)
    {
        var control = Rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
        Rig.Drive(joint).ByChannels(control);
        return control;
    }
}

internal abstract class Appendage(Bird bird)
{
    protected Bird Bird { get; } = bird;

    protected RigDraft Rig => Bird.Rig;

    protected virtual Node Above => Bird.BodyControl;

    protected abstract string Name { get; }

    public void Build()
    {
        var joints = Declare();
        Pose(joints);
        Finish();
    }

    protected abstract IReadOnlyList<Joint> Declare();

    protected virtual void Pose(IReadOnlyList<Joint> joints)
    {
        var above = Above;
        foreach (var joint in joints)
            above = Bird.Attach(joint, above);
    }

    protected virtual void Finish()
    {
    }

    public override string ToString() => Name;
}

internal abstract class SidedLimb(Bird bird, Side side) : Appendage(bird)
{
    protected Side Side { get; } = side;

    protected sealed override string Name => $"{Word}_{Side}";

    protected abstract string Word { get; }

    protected abstract (Vector3 Root, Vector3 Middle, Vector3 Tip) Bones { get; }

    protected virtual float PoleDistance => 0.2f;

    protected Switch? Solved { get; private set; }

    protected override IReadOnlyList<Joint> Declare()
    {
        var (root, middle, tip) = Bones;
        var first = Bird.Body.Child($"{Word}_root_{Side}", at: Flip(root));
        var second = first.Child($"{Word}_bend_{Side}", at: Flip(middle));
        return [first, second, second.Child($"{Word}_tip_{Side}", at: Flip(tip))];
    }

    protected override void Pose(IReadOnlyList<Joint> joints)
    {
        var chain = Rig.Chain(joints[0], joints[^1]);
        var parts = Rig.Group($"{this}_group").Under(Bird.Systems).PlacedAt(Above);
        Rig.Drive(parts).ByMatrix(Above);
        var (ik, fk) = (chain.Copy("ik").Under(parts), chain.Copy("fk").Under(parts));

        var goal = Rig.Control($"{this}_goal".Replace("wing_", "feather_")).Under(Bird.Ground).PlacedAt(chain.Tip);
        Rig.TwoBone(ik).Reach(goal).Face(Rig.Control($"{Word}_pole_{Side}").Under(parts).PlacedAt(ik.PolePoint(PoleDistance)));

        var above = Above;
        foreach (var joint in chain)
        {
            var turn = Rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
            Limit(turn, joint == chain.Root);
            Rig.Drive(fk.Of(joint)).ByChannels(turn);
            above = turn;
        }

        Solved = goal.Switch("ik");
        Rig.Blend(chain).From(fk, Solved.Value.Inverse).From(ik, Solved.Value);
    }

    protected virtual void Limit(Control turn, bool isRoot) => turn.Lock(isRoot ? Channels.None : Channels.Move);

    protected override void Finish()
    {
        if (Solved is { } solved)
            Rig.Label($"{Name}_label", "IK").Under(Above).ShownBy(solved);
    }

    private Vector3 Flip(Vector3 left) => left * new Vector3(Side.Sign, 1, 1);
}

internal sealed class Wing(Bird bird, Side side) : SidedLimb(bird, side)
{
    protected override string Word => "wing";

    protected override (Vector3 Root, Vector3 Middle, Vector3 Tip) Bones => (new(0.06f, 0.05f, 0.06f), new(0.22f, 0.03f, 0.05f), new(0.3f, 0, -0.09f));

    protected override void Limit(Control turn, bool isRoot)
    {
        base.Limit(turn, isRoot);
        turn.LimitTurn(Axis.Z, isRoot ? -60 : -20, 70);
    }
}

internal sealed class WebbedLeg(Bird bird, Side side) : SidedLimb(bird, side)
{
    protected override string Word => "leg";

    protected override float PoleDistance => base.PoleDistance / 2;

    protected override (Vector3 Root, Vector3 Middle, Vector3 Tip) Bones => (new(0.04f, -0.05f, -0.01f), new(0, -0.13f, -0.03f), new(0, -0.15f, 0.03f));
}

internal sealed class Tail(Bird bird, int feathers) : Appendage(bird)
{
    protected override string Name => "tail";

    protected override IReadOnlyList<Joint> Declare()
    {
        var joints = new Joint[feathers];
        for (var i = 0; i < feathers; i++)
            joints[i] = (i == 0 ? Bird.Body : joints[i - 1]).Child($"{this}_{i}", at: new Vector3(0, 0, -0.1f / (i + 1)));
        return joints;
    }
}

internal sealed class Beak(Bird bird) : Appendage(bird)
{
    protected override string Name => "beak";

    protected override Node Above => Bird.HeadControl;

    protected override IReadOnlyList<Joint> Declare() => [Bird.Head.Child("jaw", at: new Vector3(0, -0.01f, 0.05f))];
}
