using System.Numerics;

namespace Condyle.Model;

internal sealed class ChainDeclared(PlaceId place, IReadOnlyList<int>? joints, int? of = null, Fact<JointRole> without = default) : RigEvent(place)
{
    /// <summary>The joints from root to tip; none when the chain isn't known.</summary>
    public IReadOnlyList<int>? Joints => joints;

    public override Saying? SaidIn(EventLog log) => of is { } whole ? Saying.MadeBy(whole, nameof(Chain.Without), without) : joints is [var root, .., var tip] ? Saying.OfRig(nameof(RigDraft.Chain), new Saying.Element(root), new Saying.Element(tip)) : joints is [var only] ? Saying.OfRig(nameof(RigDraft.Chain), new Saying.Element(only), new Saying.Element(only)) : null;

    public override void Apply(ModelFold fold, int id) =>
        fold.Add(new RigChain(id, this, joints is null ? null : [.. joints.Select(joint => fold.Find<RigNode>(joint)!)]));
}

internal sealed class BendDeclared(PlaceId place, int chain, Fact<Vector3> towards) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(chain, nameof(Chain.Bending), towards);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigChain>(chain) is { } bent)
            bent.Bend = fold.IsCertain(this, bent) && towards.TryKnown(out var direction) ? direction : Fact<Vector3?>.Open;
    }
}

internal sealed class CopyMade(PlaceId place, int chain, Text tag, bool isOpen) : RigEvent(place)
{
    public int Chain => chain;

    public Text Tag => tag;

    public bool IsOpen => isOpen;

    public override Saying? SaidIn(EventLog log) => Saying.MadeBy(chain, nameof(Condyle.Chain.Copy), tag);

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigCopy(id, this, fold.Find<RigChain>(chain)!, tag) { IsUnknown = isOpen });
}

internal sealed class CopyJointMade(PlaceId place, int copy, int original, int? previous, Text name) : RigEvent(place), INamedEvent
{
    public int Copy => copy;

    public int Original => original;

    public Text Name => name;

    public override void Apply(ModelFold fold, int id)
    {
        var of = fold.Find<RigNode>(original)!;
        var node = new RigNode(id, this, NodeKind.CopyJoint, name)
        {
            Parent = previous is { } above ? fold.Find<RigNode>(above) : (RigNode?)null,
            Original = of,
            Copy = fold.Find<RigCopy>(copy),
            Placement = new AtNode(of),
            Locked = Channels.All,
        };
        fold.Add(node);
        node.Copy!.Joints.Add(node);
    }
}
