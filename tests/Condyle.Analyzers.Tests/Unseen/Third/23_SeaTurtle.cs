using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R23;

public interface IPartVisitor<out TResult>
{
    TResult Visit(Shell part);

    TResult Visit(Plate part);

    TResult Visit(Flipper part);

    TResult Visit(Neck part);

    TResult Visit(Tail part);
}

public abstract class Part
{
    protected Part(string name, Vector3 at, IEnumerable<Part> children)
    {
        Name = name;
        At = at;
        Children = children.ToList();
    }

    public string Name { get; }

    public Vector3 At { get; }

    public IReadOnlyList<Part> Children { get; }

    public abstract TResult Accept<TResult>(IPartVisitor<TResult> visitor);
}

public sealed class Shell(string name, Vector3 at, params Part[] children) : Part(name, at, children)
{
    public override TResult Accept<TResult>(IPartVisitor<TResult> visitor) => visitor.Visit(this);
}

public sealed class Plate(string name, Vector3 at) : Part(name, at, [])
{
    public override TResult Accept<TResult>(IPartVisitor<TResult> visitor) => visitor.Visit(this);
}

public sealed class Flipper(string name, Vector3 at, Vector3 upper, Vector3 lower, Side side) : Part($"{name}_{side}", at, [])
{
    public Vector3 Upper { get; } = upper;

    public Vector3 Lower { get; } = lower;

    public override TResult Accept<TResult>(IPartVisitor<TResult> visitor) => visitor.Visit(this);
}

public sealed class Neck(string name, Vector3 at, int joints, Vector3 step) : Part(name, at, [])
{
    public int Joints { get; } = joints;

    public Vector3 Step { get; } = step;

    public override TResult Accept<TResult>(IPartVisitor<TResult> visitor) => visitor.Visit(this);
}

public sealed class Tail(string name, Vector3 at) : Part(name, at, [])
{
    public override TResult Accept<TResult>(IPartVisitor<TResult> visitor) => visitor.Visit(this);
}

internal sealed class JointVisitor(Skeleton skeleton) : IPartVisitor<Joint>
{
    private readonly Stack<Joint> above = new();

    public Dictionary<Part, List<Joint>> Made { get; } = [];

    public Joint Visit(Shell part)
    {
        var joint = Make(part, part.At);
        above.Push(joint);
        foreach (var child in part.Children)
            child.Accept(this);
        above.Pop();
        return joint;
    }

    public Joint Visit(Plate part) => Make(part, part.At);

    public Joint Visit(Flipper part) => Make(part, part.At, part.Upper, part.Lower);

    public Joint Visit(Neck part) => Make(part, [part.At, .. Enumerable.Repeat(part.Step, part.Joints - 1)]);

    public Joint Visit(Tail part) => Make(part, part.At);

    private Joint Make(Part part, params Vector3[] offsets)
    {
        var made = Made[part] = [];
        Joint? last = above.Count > 0 ? above.Peek() : null;
        foreach (var offset in offsets)
        {
            var name = offsets.Length == 1 ? part.Name : $"{part.Name}_{made.Count + 1}";
            last = last is { } over ? over.Child(name, at: offset) : skeleton.Root(name, at: offset);
            made.Add(last.Value);
        }

        return made[0];
    }
}

internal sealed class ControlVisitor(RigDraft rig, IReadOnlyDictionary<Part, List<Joint>> joints) : IPartVisitor<Control>
{
    private readonly Control world = rig.Control("world");
    private Control? current;

    public Control Visit(Shell part)
    {
        var outer = current;
        var control = Follow(part.Name, outer ?? world, joints[part][0]);
        current = control;
        foreach (var child in part.Children)
            child.Accept(this);
        current = outer;
        return control;
    }

    public Control Visit(Plate part) => Follow(part.Name, current ?? world, joints[part][0]).Lock(Channels.Turn).LimitMove(Axis.Y, -0.01f, 0.01f);

    public Control Visit(Flipper part)
    {
        var bones = joints[part];
        var above = current ?? world;
        var chain = rig.Chain(bones[0], bones[2]);
        var holder = rig.Group($"{part.Name}_group").Under(above).PlacedAt(chain.Root);
        var (walk, swim) = (chain.Copy("walk").Under(holder), chain.Copy("swim").Under(holder));
        var goal = rig.Control($"{part.Name}_goal").Under(world).PlacedAt(chain.Tip);
        rig.TwoBone(walk).Reach(goal).Face(rig.Control($"{part.Name}_pole").Under(above).PlacedAt(walk.PolePoint(0.2f)));

        var over = above;
        foreach (var joint in chain)
        {
            over = rig.Control($"swim_{joint}").Under(over).PlacedAt(joint).Lock(Channels.Move);
            rig.Drive(swim.Of(joint)).ByChannels(over);
        }

        var swims = goal.Switch("swim", 1f).AlsoOn(above);
        rig.Blend(chain).From(swim, swims).From(walk, swims.Inverse);
        return goal;
    }

    public Control Visit(Neck part)
    {
        var above = current ?? world;
        foreach (var joint in joints[part])
            above = Follow(joint.Name, above, joint);
        return above.LimitTurn(Axis.Y, -70f, 70f);
    }

    public Control Visit(Tail part) => Follow(part.Name, current ?? world, joints[part][0]).Lock(Channels.Move);

    private Control Follow(string name, Control above, Joint joint)
    {
        var control = rig.Control($"{name}_handle").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}

internal sealed class CountVisitor : IPartVisitor<int>
{
    public int Visit(Shell part) => 1 + part.Children.Sum(child => child.Accept(this));

    public int Visit(Plate part) => 1;

    public int Visit(Flipper part) => 3;

    public int Visit(Neck part) => part.Joints;

    public int Visit(Tail part) => 1;
}

/// <summary>The old turtle under the pier.</summary>
public sealed class SeaTurtle : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var turtle = new Shell("carapace", new Vector3(0, 0.3f, 0), [
            .. Side.Both.Select(side => new Flipper("front", new(0.2f * side.Sign, 0, 0.25f), new(0.2f * side.Sign, 0, -0.03f), new(0.25f * side.Sign, 0, -0.12f), side)),
            .. Side.Both.Select(side => new Flipper("back", new(0.15f * side.Sign, 0, -0.3f), new(0.08f * side.Sign, 0, -0.06f), new(0.06f * side.Sign, 0, -0.12f), side)),
            .. Enumerable.Range(0, 13).Select(i => new Plate($"plate_{i:00}", new((i % 3 - 1) * 0.12f, 0.12f, 0.25f - i / 3 * 0.13f))),
            new Neck("neck", new(0, 0.02f, 0.35f), 4, new(0, 0.015f, 0.05f)),
            new Tail("tail", new(0, -0.03f, -0.4f))]);

        var bones = new JointVisitor(rig.Skeleton("sea_turtle"));
        turtle.Accept(bones);
        var top = turtle.Accept(new ControlVisitor(rig, bones.Made));
        rig.Label("turtle_label", $"TURTLE, {turtle.Accept(new CountVisitor())} JOINTS").Under(top);
    }
}
