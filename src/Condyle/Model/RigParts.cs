using System.Numerics;

namespace Condyle.Model;

internal sealed class RigSkeleton(int id, RigEvent said, Text name) : RigElement(id, said)
{
    public Text Name { get; } = name;

    public override string Title => $"skeleton '{Name}'";
}

/// <summary>Joints in order from root to tip; none when the chain isn't known.</summary>
internal sealed class RigChain(int id, RigEvent said, IReadOnlyList<RigNode>? joints) : RigElement(id, said)
{
    public IReadOnlyList<RigNode>? Joints { get; } = joints;

    /// <summary>The direction, in the world at rest, to which it is declared to bend; none: its rest tells.</summary>
    public Fact<Vector3?> Bend { get; set; } = (Vector3?)null;

    public override string Title => Joints is { Count: > 0 } ? $"the chain from {Joints[0].Title} to {Joints[Joints.Count - 1].Title}" : "a chain";

    public override void Forget() => Bend = Fact<Vector3?>.Open;
}

internal sealed class RigCopy(int id, RigEvent said, RigChain chain, Text tag) : RigElement(id, said)
{
    public RigChain Chain { get; } = chain;

    public Text Tag { get; } = tag;

    public List<RigNode> Joints { get; } = [];

    public override string Title => $"copy '{Tag}' of {Chain.Title}";

    public override void Forget()
    {
        foreach (var joint in Joints)
            joint.Forget();
    }
}

/// <summary>A point of the world at rest, which the rig's geometry gives.</summary>
internal abstract class RigSpot(int id, RigEvent said) : RigElement(id, said)
{
    /// <summary>All that the model says of it.</summary>
    public abstract string Text { get; }
}

/// <summary>The point at an offset, in metres along the world's axes, from where a node rests.</summary>
internal sealed class RigPointBeside(int id, RigEvent said, RigNode? node, Fact<Vector3> by) : RigSpot(id, said)
{
    public RigNode? Node { get; } = node;

    public Fact<Vector3> By { get; } = by;

    public override string Title => $"the spot beside {Node?.Title ?? "a node"}";

    public override string Text => $"beside #{Node?.Id} by {By}";
}

/// <summary>The point that a chain's bend faces at rest, at a distance in metres from its middle joint.</summary>
internal sealed class RigPolePoint(int id, RigEvent said, RigChain? chain, Fact<float> distance) : RigSpot(id, said)
{
    public RigChain? Chain { get; } = chain;

    public Fact<float> Distance { get; } = distance;

    public override string Title => $"the pole point of {Chain?.Title ?? "a chain"}";

    public override string Text => $"pole point of #{Chain?.Id} at {Distance}";
}

/// <summary>A range of one of a control's channels: degrees where it turns, metres where it moves.</summary>
internal sealed record ChannelLimit(int Event, PlaceId Place, bool Turns, Axis Axis, Fact<float> From, Fact<float> To);

internal sealed class RigLabel(int id, RigEvent said, Text name, Text text) : RigElement(id, said), IHung
{
    public Text Name { get; } = name;

    public Text Shows { get; } = text;

    public Fact<WeightPolynomial?> ShownBy { get; set; } = (WeightPolynomial?)null;

    /// <summary>The number of the event that said it.</summary>
    public int ShownByEvent { get; set; }

    public Fact<RigNode?> Parent { get; set; } = (RigNode?)null;

    public PlaceId ParentPlace { get; set; }

    public override string Title => $"label '{Name}'";

    public override void Forget()
    {
        ShownBy = Fact<WeightPolynomial?>.Open;
        Parent = Fact<RigNode?>.Open;
    }
}

/// <summary>A stretch of code that couldn't be read, and why; or code that fails whenever it runs.</summary>
/// <param name="Of">What was being read: "the rig 'Gull'".</param>
/// <param name="Place">The code.</param>
/// <param name="Reason">Why.</param>
internal sealed record RigGap(string Of, PlaceId Place, string Reason)
{
    public bool IsFailure { get; init; }

    /// <summary>The calls by which it is reached, from the outside in.</summary>
    public IReadOnlyList<PlaceId> Callers { get; init; } = [];
}

/// <summary>A finding that the team means to keep; no element when it isn't known which.</summary>
internal sealed record RigAcceptance(int Event, RigElement? Element, Text Rule, Text Because, PlaceId Place);
