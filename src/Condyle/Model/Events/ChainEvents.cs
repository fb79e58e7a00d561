using System.Numerics;

namespace Condyle.Model;

internal sealed class ChainDeclared(PlaceId place, IReadOnlyList<int>? joints) : RigEvent(place)
{
    /// <summary>The joints from root to tip; none when the chain isn't known.</summary>
    public IReadOnlyList<int>? Joints => joints;

    public override void Apply(ModelFold fold, int id) =>
        fold.Add(new RigChain(id, this, joints is null ? null : [.. joints.Select(joint => fold.Find<RigNode>(joint)!)]));
}

internal sealed class BendDeclared(PlaceId place, int chain, Fact<Vector3> towards) : RigEvent(place)
{
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
