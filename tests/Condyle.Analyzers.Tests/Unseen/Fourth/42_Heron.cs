using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R42;

internal interface IPartVisitor
{
    void Visit(SimplePart part);

    void Visit(LegPart part);
}

internal abstract class Part(string name, Vector3 at)
{
    public string Name { get; } = name;

    public Vector3 At { get; } = at;

    public List<Part> Below { get; } = new();

    public abstract void Accept(IPartVisitor visitor);

    public Part With(params Part[] parts)
    {
        Below.AddRange(parts);
        return this;
    }
}

internal sealed class SimplePart(string name, Vector3 at) : Part(name, at)
{
    public override void Accept(IPartVisitor visitor) => visitor.Visit(this);
}

internal sealed class LegPart(Side side) : Part("hip_" + side, new Vector3(0.06f * side.Sign, -0.05f, 0))
{
    public Side Side { get; } = side;

    public override void Accept(IPartVisitor visitor) => visitor.Visit(this);
}

/// <summary>First visitor: declares the joints.</summary>
internal sealed class JointVisitor(Skeleton skeleton) : IPartVisitor
{
    private readonly Stack<Joint> path = new();

    public Dictionary<Part, Joint> Made { get; } = new();

    public Dictionary<LegPart, Joint> Feet { get; } = new();

    public void Visit(SimplePart part)
    {
        path.Push(Made[part] = path.Count == 0 ? skeleton.Root(part.Name, at: part.At) : path.Peek().Child(part.Name, at: part.At));
        part.Below.ForEach(below => below.Accept(this));
        path.Pop();
    }

    public void Visit(LegPart part)
    {
        var hip = Made[part] = path.Peek().Child(part.Name, at: part.At);
        var knee = hip.Child($"knee_{part.Side}", at: new Vector3(0, -0.3f, -0.05f));
        Feet[part] = knee.Child($"ankle_{part.Side}", at: new Vector3(0, -0.35f, 0.05f));
    }
}

/// <summary>Second visitor: controls, copies and blends.</summary>
internal sealed class ControlVisitor(RigDraft rig, JointVisitor joints, Control world) : IPartVisitor
{
    private readonly Stack<Control> path = new(new[] { world });

    public void Visit(SimplePart part)
    {
        var control = rig.Control("turn_" + part.Name).Under(path.Peek()).PlacedAt(joints.Made[part]);
        rig.Drive(joints.Made[part]).ByChannels(control);
        path.Push(control);
        foreach (var below in part.Below)
            below.Accept(this);
        path.Pop();
    }

    public void Visit(LegPart part)
    {
        var leg = rig.Chain(joints.Made[part], joints.Feet[part]);
        var holder = rig.Group($"leg_{part.Side}_group").PlacedAt(leg.Root);
        rig.Drive(holder).ByMatrix(path.Peek()).KeepingOffset();
        var ik = leg.Copy("ik").Under(holder);
        var fk = leg.Copy("fk").Under(holder);
        var foot = rig.Control($"foot_{part.Side}").Under(world).PlacedAt(leg.Tip);
        var back = rig.Control($"knee_pole_{part.Side}").Under(foot).PlacedAt(leg.PolePoint(0.4f));
        rig.TwoBone(ik).Reach(foot).Face(back);
        foreach (var joint in leg)
            rig.Drive(fk.Of(joint)).ByChannels(rig.Control($"turn_{joint}").Under(joint == leg.Root ? path.Peek() : holder).PlacedAt(joint));
        var stand = foot.Switch("stand", 1);
        rig.Blend(leg).From(ik, stand).From(fk, stand.Inverse);
    }
}

public sealed class Heron : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        Part bird = new SimplePart("pelvis", new Vector3(0, 0.75f, 0)).With(
            new SimplePart("chest", new Vector3(0, 0.1f, 0.15f)).With(
                new SimplePart("neck_1", new Vector3(0, 0.12f, 0.05f)).With(
                    new SimplePart("neck_2", new Vector3(0, 0.12f, -0.04f)).With(
                        new SimplePart("head", new Vector3(0, 0.1f, 0.06f)).With(
                            new SimplePart("beak", new Vector3(0, 0, 0.05f)))))),
            new SimplePart("tail", new Vector3(0, 0, -0.2f)),
            new LegPart(Side.Left),
            new LegPart(Side.Right));

        var joints = new JointVisitor(rig.Skeleton("heron"));
        bird.Accept(joints);
        bird.Accept(new ControlVisitor(rig, joints, rig.Control("world")));
    }
}
