using System;
using System.Collections.Concurrent;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R50;

/// <summary>The heron on the breakwater. Its body is a tree of parts; one visitor declares the skeleton, another rigs it, a third counts.</summary>
public sealed class Heron : IRigDefinition
{
    private static readonly Lazy<Part> Anatomy = new(() =>
        new Bone("body", new(0, 0.7f, 0), [
            new Curve("neck", 6, i => new Vector3(0, 0.1f, i < 3 ? 0.05f - 0.04f * i : -0.06f + 0.04f * i), [
                new Bone("head", new(0, 0.05f, 0.06f), [new Bone("beak", new(0, 0, 0.12f), [])]),
            ]),
            new Mirror(side => new Stilt($"leg_{side}", side)),
            new Mirror(side => new Bone($"wing_{side}", new(0.09f * side.Sign, 0.08f, 0), [new Bone($"wing_tip_{side}", new(0.3f * side.Sign, 0, -0.1f), [])])),
        ]));

    public void Define(RigDraft rig)
    {
        var declaring = new Declaring(rig.Skeleton("heron"));
        Anatomy.Value.Accept(declaring, default(Joint?));
        var rigging = new Rigging(rig, declaring.Joints);
        Anatomy.Value.Accept(rigging, rig.Control("heron"));

        var counting = new Counting();
        var total = Anatomy.Value.Accept(counting, 0);
        rig.Label("parts_label", $"{total} joints, {counting.Deepest} deep").ShownBy(total > 20 ? 1 : 0);
    }
}

internal interface IVisitor<TAbove, out TResult>
{
    TResult Visit(Bone bone, TAbove above);

    TResult Visit(Curve curve, TAbove above);

    TResult Visit(Stilt stilt, TAbove above);

    TResult Visit(Mirror mirror, TAbove above);
}

internal abstract record Part
{
    public abstract TResult Accept<TAbove, TResult>(IVisitor<TAbove, TResult> visitor, TAbove above);
}

internal sealed record Bone(string Name, Vector3 At, Part[] Parts) : Part
{
    public override TResult Accept<TAbove, TResult>(IVisitor<TAbove, TResult> visitor, TAbove above) => visitor.Visit(this, above);
}

internal sealed record Curve(string Name, int Count, Func<int, Vector3> Step, Part[] End) : Part
{
    public IEnumerable<string> Names => Enumerable.Range(0, Count).Select(i => $"{Name}_{i}");

    public override TResult Accept<TAbove, TResult>(IVisitor<TAbove, TResult> visitor, TAbove above) => visitor.Visit(this, above);
}

internal sealed record Stilt(string Name, Side Side) : Part
{
    public string this[string part] => Name.Insert(Name.IndexOf('_'), "_" + part);

    public override TResult Accept<TAbove, TResult>(IVisitor<TAbove, TResult> visitor, TAbove above) => visitor.Visit(this, above);
}

internal sealed record Mirror(Func<Side, Part> Make) : Part
{
    private readonly ConcurrentDictionary<Side, Part> made = new();

    public Part Of(Side side) => made.GetOrAdd(side, Make);

    public override TResult Accept<TAbove, TResult>(IVisitor<TAbove, TResult> visitor, TAbove above) => visitor.Visit(this, above);
}

internal sealed class Declaring(Skeleton skeleton) : IVisitor<Joint?, int>
{
    public Dictionary<string, Joint> Joints { get; } = [];

    public int Visit(Bone bone, Joint? above)
    {
        var joint = Keep(bone.Name, above, bone.At);
        return 1 + bone.Parts.Sum(part => part.Accept(this, joint));
    }

    public int Visit(Curve curve, Joint? above)
    {
        var last = curve.Names.Select((name, i) => (name, i)).Aggregate(above, (up, link) => Keep(link.name, up, curve.Step(link.i)));
        return curve.Count + curve.End.Sum(part => part.Accept(this, last));
    }

    public int Visit(Stilt stilt, Joint? above)
    {
        var hip = Keep(stilt["hip"], above, new(0.05f * stilt.Side.Sign, -0.06f, 0));
        var knee = Keep(stilt["knee"], hip, new(0, -0.28f, 0.03f));
        Keep(stilt["foot"], knee, new(0, -0.3f, -0.04f));
        return 3;
    }

    public int Visit(Mirror mirror, Joint? above) => Side.Both.Sum(side => mirror.Of(side).Accept(this, above));

    private Joint Keep(string name, Joint? above, Vector3 at) => Joints[name] = above?.Child(name, at: at) ?? skeleton.Root(name, at: at);
}

internal sealed class Rigging(RigDraft rig, IReadOnlyDictionary<string, Joint> joints) : IVisitor<Control, Control>
{
    private readonly Dictionary<string, Action<Control>> manners = new()
    {
        ["beak"] = control => control.Lock(Channels.Move | Channels.TurnZ).LimitTurn(Axis.X, 0, 30),
        ["wing"] = control => control.Lock(Channels.Move),
        ["neck"] = control => control.LimitTurn(Axis.X, -40, 40),
    };

    public Control Visit(Bone bone, Control above)
    {
        var control = Turn(bone.Name, above);
        foreach (var part in bone.Parts)
            part.Accept(this, control);
        return control;
    }

    public Control Visit(Curve curve, Control above)
    {
        var control = curve.Names.Aggregate(above, (up, name) => Turn(name, up));
        Array.ForEach(curve.End, part => part.Accept(this, control));
        return control;
    }

    public Control Visit(Stilt stilt, Control above)
    {
        var chain = rig.Chain(joints[stilt["hip"]], joints[stilt["foot"]]);
        var copy = chain.Copy("ik").Under(above);
        var foot = rig.Control(stilt["step"]).PlacedAt(chain.Tip);
        rig.TwoBone(copy).Reach(foot).Face(Pole());
        var still = chain.Copy("tucked").Under(above);
        var tucked = foot.Switch("tucked");
        rig.Blend(chain).From(still, tucked).From(copy, tucked.Inverse);
        return foot;

        Control Pole() => rig.Control(stilt["pole"]).Under(above).PlacedAt(copy.PolePoint(0.2f));
    }

    public Control Visit(Mirror mirror, Control above) => Side.Both.Select(side => mirror.Of(side).Accept(this, above)).Last();

    private Control Turn(string name, Control above)
    {
        var control = rig.Control($"turn_{name}").Under(above).PlacedAt(joints[name]);
        if (manners.FirstOrDefault(manner => name.StartsWith(manner.Key)) is { Value: { } apply })
            apply(control);
        rig.Drive(joints[name]).ByChannels(control);
        return control;
    }
}

internal sealed class Counting : IVisitor<int, int>
{
    public int Deepest { get; private set; }

    public int Visit(Bone bone, int above) => Seen(above + 1) + bone.Parts.Select(part => part.Accept(this, above + 1)).DefaultIfEmpty().Sum();

    public int Visit(Curve curve, int above) => curve.Names.Count() * Seen(above + curve.Count) + curve.End.Sum(part => part.Accept(this, above + curve.Count));

    public int Visit(Stilt stilt, int above) => Seen(above + 3) * 3;

    public int Visit(Mirror mirror, int above) => mirror.Of(Side.Left).Accept(this, above) * Side.Both.Count;

    private int Seen(int depth)
    {
        Deepest = Math.Max(Deepest, depth);
        return 1;
    }
}
