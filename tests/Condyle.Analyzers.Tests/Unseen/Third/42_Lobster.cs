using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R42;

public sealed class Lobster : IRigDefinition
{
    public void Define(RigDraft rig) => Creature
        .Called("lobster").In(rig)
        .WithShell("carapace").At(0f, 0.08f, 0f)
        .WithTail(segments: 7).Each(0.05f).CurlingDownBy(-4f).EndingIn("telson", fins: 2)
        .WithPairsOf(4, "walking_leg").StartingAt(0.05f, -0.02f, 0.06f).Every(-0.03f).Bending((0.06f, 0.03f, 0f), (0.05f, -0.08f, 0f))
        .WithPairsOf(1, "claw").StartingAt(0.05f, 0f, 0.1f).Every(0f).Bending((0.05f, 0f, 0.07f), (-0.02f, 0f, 0.1f)).SwitchableBy("fk")
        .WithWhiskers("antenna").Of(8).Each(0.06f)
        .Done();
}

public readonly record struct Creature(string Name)
{
    public static Creature Called(string name) => new(name);

    public CreatureBuilder In(RigDraft rig) => new(rig, rig.Skeleton(Name));
}

public sealed class CreatureBuilder(RigDraft rig, Skeleton skeleton)
{
    private readonly List<Action> later = [];

    internal RigDraft Rig { get; } = rig;

    internal Joint Shell { get; private set; }

    internal Control World { get; private set; }

    internal Control Body { get; private set; }

    public ShellStep WithShell(string name) => new(this, name);

    public TailStep WithTail(int segments) => new(this, segments);

    public PairsStep WithPairsOf(int count, string name) => new(this, count, name);

    public WhiskerStep WithWhiskers(string name) => new(this, name);

    public void Done()
    {
        foreach (var step in later)
            step();
    }

    internal CreatureBuilder Later(Action step)
    {
        later.Add(step);
        return this;
    }

    internal void Begin(string name, Vector3 at)
    {
        Shell = skeleton.Root(name, at: at);
        World = Rig.Control("world");
        Body = Rig.Control($"move_{name}").Under(World).PlacedAt(Shell);
        Rig.Drive(Shell).ByChannels(Body);
    }

    internal Control Turn(Joint joint, Control above)
    {
        var control = Rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        Rig.Drive(joint).ByChannels(control);
        return control;
    }
}

public sealed class ShellStep(CreatureBuilder creature, string name)
{
    public CreatureBuilder At(float x, float y, float z) => creature.Later(() => creature.Begin(name, new(x, y, z)));
}

public sealed class TailStep(CreatureBuilder creature, int segments)
{
    private float length = 0.04f;
    private float curl;

    public TailStep Each(float metres)
    {
        length = metres;
        return this;
    }

    public TailStep CurlingDownBy(float degrees)
    {
        curl = degrees;
        return this;
    }

    public CreatureBuilder EndingIn(string fan, int fins) => creature.Later(() =>
    {
        var turned = Quaternion.CreateFromAxisAngle(Vector3.UnitX, curl * MathF.PI / 180f);
        var (joint, control) = (creature.Shell, creature.Body);
        for (var i = 1; i <= segments; i++)
        {
            joint = joint.Child($"tail_{i}", at: new(0f, 0f, -length), turned: turned);
            control = creature.Turn(joint, control).LimitTurn(Axis.X, -40f, 15f);
        }

        var end = joint.Child(fan, at: new(0f, 0f, -length));
        var last = creature.Turn(end, control);
        foreach (var side in Side.Both)
        {
            for (var fin = 1; fin <= fins; fin++)
                creature.Turn(end.Child($"{fan}_fin_{fin}_{side}", at: new(side.Sign * 0.02f * fin, 0f, -0.01f)), last);
        }
    });
}

public sealed class PairsStep(CreatureBuilder creature, int count, string name)
{
    private Vector3 start;
    private float step;
    private (float X, float Y, float Z) upper;
    private (float X, float Y, float Z) lower;
    private string? toggle;

    public PairsStep StartingAt(float x, float y, float z)
    {
        start = new(x, y, z);
        return this;
    }

    public PairsStep Every(float z)
    {
        step = z;
        return this;
    }

    public PairsDone Bending((float X, float Y, float Z) first, (float X, float Y, float Z) second)
    {
        (upper, lower) = (first, second);
        creature.Later(Build);
        return new PairsDone(creature, word => toggle = word);
    }

    private void Build()
    {
        for (var number = 1; number <= count; number++)
        {
            foreach (var side in Side.Both)
                One(count == 1 ? name : $"{name}_{number}", start with { X = start.X * side.Sign, Z = start.Z + (step * (number - 1)) }, side);
        }
    }

    private void One(string called, Vector3 at, Side side)
    {
        var root = creature.Shell.Child($"{called}_root_{side}", at: at);
        var middle = root.Child($"{called}_knee_{side}", at: new(upper.X * side.Sign, upper.Y, upper.Z));
        var tip = middle.Child($"{called}_tip_{side}", at: new(lower.X * side.Sign, lower.Y, lower.Z));

        var rig = creature.Rig;
        var chain = rig.Chain(root, tip);
        var holder = rig.Group($"{called}_{side}_group").Under(creature.Body);
        var ik = chain.Copy("ik").Under(holder);
        var goal = rig.Control($"{called}_{side}").Under(creature.World).PlacedAt(tip);
        rig.TwoBone(ik).Reach(goal).Face(rig.Control($"{called}_pole_{side}").Under(creature.Body).PlacedAt(ik.PolePoint(0.1f)));
        if (toggle is null)
        {
            rig.Blend(chain).From(ik, 1f);
            return;
        }

        var fk = chain.Copy("fk").Under(holder);
        var above = creature.Body;
        foreach (var joint in chain)
        {
            above = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(above);
        }

        var amount = goal.Switch(toggle);
        rig.Blend(chain).From(ik, amount.Inverse).From(fk, amount);
        rig.Label($"{called}_label_{side}", toggle.ToUpperInvariant()).ShownBy(amount);
    }
}

public sealed class PairsDone(CreatureBuilder creature, Action<string> setToggle)
{
    public PairsStep WithPairsOf(int count, string name) => creature.WithPairsOf(count, name);

    public CreatureBuilder SwitchableBy(string word)
    {
        setToggle(word);
        return creature;
    }
}

public sealed class WhiskerStep(CreatureBuilder creature, string name)
{
    private int joints = 3;

    public WhiskerStep Of(int count)
    {
        joints = count;
        return this;
    }

    public CreatureBuilder Each(float metres) => creature.Later(() =>
    {
        foreach (var side in Side.Both)
        {
            var (joint, control) = (creature.Shell.Child($"{name}_0_{side}", at: new(0.02f * side.Sign, 0.02f, 0.13f)), creature.Body);
            control = creature.Turn(joint, control);
            for (var i = 1; i < joints; i++)
            {
                joint = joint.Child($"{name}_{i}_{side}", at: new(0.1f * metres * side.Sign, 0f, metres));
                control = creature.Turn(joint, control);
            }
        }
    });
}
