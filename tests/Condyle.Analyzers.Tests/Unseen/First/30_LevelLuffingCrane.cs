using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R30;

/// <summary>A level-luffing quay crane. Its machine is a composite of parts; visitors declare, rig and label it.</summary>
public sealed class LevelLuffingCrane : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        AbstractPart crane = CreateMachine();
        crane.Accept(new ValidatingVisitor());
        DeclaringVisitor declaring = new DeclaringVisitor(rig.Skeleton("level_luffing_crane"));
        crane.Accept(declaring);
        RiggingVisitor rigging = new RiggingVisitor(rig, declaring.GetJoints());
        crane.Accept(rigging);
        rigging.Finish();
    }

    private static AbstractPart CreateMachine()
    {
        CompositePart portal = new CompositePart("portal", new Vector3(0, 0, 0));
        foreach (string corner in new[] { "front_left", "front_right", "rear_left", "rear_right" })
        {
            float x = corner.EndsWith("_left", StringComparison.Ordinal) ? 5.25f : -5.25f;
            float z = corner.StartsWith("front", StringComparison.Ordinal) ? 4.5f : -4.5f;
            portal.Add(new RotatingPart("bogie_" + corner, new Vector3(x, 0.6f, z), Axis.X, null));
        }

        CompositePart house = new CompositePart("house", new Vector3(0, 11, 0));
        house.Add(new LuffingPart("boom", new Vector3(0, 2.4f, 1.8f), new Vector3(0, 19, 14), new Vector3(0, -1.5f, 9.5f)));
        house.Add(new RotatingPart("cab_door", new Vector3(1.4f, 0.2f, 2.1f), Axis.Y, new AngleRange(0, 105)));
        house.Add(new RotatingPart("counterweight", new Vector3(0, 4.2f, -3), Axis.X, new AngleRange(-35, 50)));
        portal.Add(house);
        return portal;
    }
}

internal sealed class MachineModelException(string partName, string problem) : Exception($"Part '{partName}': {problem}.");

internal sealed record AngleRange(float From, float To);

internal interface IMachineVisitor
{
    void EnterComposite(CompositePart part);
    void LeaveComposite(CompositePart part);
    void VisitRotating(RotatingPart part);
    void VisitLuffing(LuffingPart part);
}

internal abstract class AbstractPart(string name, Vector3 position)
{
    public string Name { get; } = name;
    public Vector3 Position { get; } = position;
    public abstract void Accept(IMachineVisitor visitor);
}

internal sealed class CompositePart(string name, Vector3 position) : AbstractPart(name, position)
{
    private readonly List<AbstractPart> children = new List<AbstractPart>();

    public void Add(AbstractPart child) => children.Add(child);

    public override void Accept(IMachineVisitor visitor)
    {
        visitor.EnterComposite(this);
        IEnumerator<AbstractPart> iterator = children.GetEnumerator();
        while (iterator.MoveNext())
            iterator.Current.Accept(visitor);

        visitor.LeaveComposite(this);
    }
}

internal sealed class RotatingPart(string name, Vector3 position, Axis axis, AngleRange? range) : AbstractPart(name, position)
{
    public Axis Axis { get; } = axis;
    public AngleRange? Range { get; } = range;
    public override void Accept(IMachineVisitor visitor) => visitor.VisitRotating(this);
}

internal sealed class LuffingPart(string name, Vector3 position, Vector3 elbow, Vector3 tip) : AbstractPart(name, position)
{
    public Vector3 Elbow { get; } = elbow;
    public Vector3 Tip { get; } = tip;
    public override void Accept(IMachineVisitor visitor) => visitor.VisitLuffing(this);
}

internal abstract class VisitorAdapter : IMachineVisitor
{
    public virtual void EnterComposite(CompositePart part) => Visit(part);

    public virtual void LeaveComposite(CompositePart part)
    {
    }

    public virtual void VisitRotating(RotatingPart part) => Visit(part);
    public virtual void VisitLuffing(LuffingPart part) => Visit(part);

    protected abstract void Visit(AbstractPart part);
}

internal sealed class ValidatingVisitor : VisitorAdapter
{
    private readonly ISet<string> seen = new HashSet<string>(StringComparer.Ordinal);

    protected override void Visit(AbstractPart part)
    {
        if (!seen.Add(part.Name))
            throw new MachineModelException(part.Name, "its name is taken");
        if (part is RotatingPart { Range: { } range } && range.From > range.To)
            throw new MachineModelException(part.Name, "its range runs backwards");
    }
}

internal sealed class DeclaringVisitor(Skeleton skeleton) : VisitorAdapter
{
    private readonly Stack<Joint> path = new Stack<Joint>();
    private readonly Dictionary<string, Joint> joints = new Dictionary<string, Joint>();

    public IReadOnlyDictionary<string, Joint> GetJoints() => joints;

    public override void EnterComposite(CompositePart part)
    {
        Joint joint = path.Count == 0 ? skeleton.Root(part.Name, at: part.Position) : path.Peek().Child(part.Name, at: part.Position);
        joints.Add(part.Name, joint);
        path.Push(joint);
    }

    public override void LeaveComposite(CompositePart part) => path.Pop();

    public override void VisitLuffing(LuffingPart part)
    {
        Visit(part);
        Joint knuckle = joints[part.Name].Child(part.Name + "_knuckle", at: part.Elbow);
        joints[part.Name + "_knuckle"] = knuckle;
        joints[part.Name + "_tip"] = knuckle.Child(part.Name + "_tip", at: part.Tip);
    }

    protected override void Visit(AbstractPart part) => joints.Add(part.Name, path.Peek().Child(part.Name, at: part.Position));
}

internal sealed class RiggingVisitor(RigDraft rig, IReadOnlyDictionary<string, Joint> joints) : VisitorAdapter
{
    private readonly Stack<Node> owners = new Stack<Node>();
    private readonly Queue<Action> deferred = new Queue<Action>();
    private readonly Group systems = rig.Group("systems_group");

    public void Finish()
    {
        while (deferred.TryDequeue(out Action? action))
            action.Invoke();
    }

    public override void EnterComposite(CompositePart part)
    {
        Control control = rig.Control("move_" + part.Name).PlacedAt(joints[part.Name]);
        if (owners.TryPeek(out Node owner))
            control.Under(owner).Lock(Channels.Move | Channels.TurnX | Channels.TurnZ);
        rig.Drive(joints[part.Name]).ByChannels(control);
        owners.Push(control);
    }

    public override void LeaveComposite(CompositePart part) => owners.Pop();

    public override void VisitRotating(RotatingPart part)
    {
        Channels free = part.Axis switch
        {
            Axis.X => Channels.TurnX,
            Axis.Y => Channels.TurnY,
            _ => Channels.TurnZ,
        };
        Control control = rig.Control("turn_" + part.Name).Under(owners.Peek()).PlacedAt(joints[part.Name]).Lock(Channels.Move | (Channels.Turn & ~free));
        if (part.Range != null)
            control.LimitTurn(part.Axis, part.Range.From, part.Range.To);
        rig.Drive(joints[part.Name]).ByChannels(control);
    }

    protected override void Visit(AbstractPart part) => throw new MachineModelException(part.Name, "nobody knows how to rig it");

    public override void VisitLuffing(LuffingPart part)
    {
        Node owner = owners.Peek();
        Chain chain = rig.Chain(joints[part.Name], joints[part.Name + "_tip"]);
        Group parts = rig.Group(part.Name + "_group").Under(systems).PlacedAt(owner);
        rig.Drive(parts).ByMatrix(owner);
        Copy reach = chain.Copy("reach").Under(parts);
        Control hook = rig.Control("hook").Under(owner).PlacedAt(chain.Tip).Lock(Channels.Turn);
        rig.TwoBone(reach).Reach(hook);
        deferred.Enqueue(() => rig.Label("radius_label", "radius").Under(hook).ShownBy(1f));
        foreach (Joint joint in chain)
            deferred.Enqueue(() => rig.Drive(joint).ByChannels(reach.Of(joint)));
    }
}
