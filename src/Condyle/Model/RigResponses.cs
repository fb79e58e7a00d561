namespace Condyle.Model;

/// <summary>How far a node is turned from its rest about one of its own axes, in degrees. It has no axis yet when the sentence is unfinished.</summary>
internal sealed class RigMeasure(int id, RigEvent said, RigNode? node) : RigElement(id, said)
{
    public RigNode? Node { get; } = node;

    public Fact<Axis?> Axis { get; set; } = (Axis?)null;

    public override string Title => $"the angle of {Node?.Title ?? "a node"}";

    public override void Forget() => Axis = Fact<Axis?>.Open;
}

/// <summary>What a response sets.</summary>
internal enum ResponseWay
{
    /// <summary>A node's translation along one of its axes as it rests, in metres.</summary>
    Move,

    /// <summary>A node's rotation about one of its axes, in degrees.</summary>
    Turn,

    /// <summary>A node's scale along one of its axes, as a factor.</summary>
    Scale,

    /// <summary>The weight of a morph target.</summary>
    Morph,
}

/// <summary>A point of a response's curve; without a slope of its own the curve comes and goes straight.</summary>
internal sealed record ResponseKey(int Event, PlaceId Place, Fact<float> At, Fact<float> Value, Fact<float?> Slope);

/// <summary>A channel of a node that a response sets.</summary>
internal sealed record ResponseTarget(int Event, PlaceId Place, ResponseWay Way)
{
    public RigNode? Node { get; init; }

    public Fact<Axis> Axis { get; init; }

    public MorphName Morph { get; init; }
}

/// <summary>A morph target by its mesh and its own name.</summary>
internal readonly record struct MorphName(Text Mesh, Text Target);

/// <summary>A curve from a dial, a switch or a measured angle to channels and morph targets.</summary>
internal sealed class RigResponse(int id, RigEvent said, RigElement? source) : RigElement(id, said)
{
    /// <summary>A switch, a dial or a measure; none where it isn't known.</summary>
    public RigElement? Source { get; } = source;

    public List<ResponseKey> Keys { get; } = [];

    public bool KeysAreOpen { get; set; }

    public List<ResponseTarget> Targets { get; } = [];

    public bool TargetsAreOpen { get; set; }

    /// <summary>Whether the curve goes on straight beyond its ends; else it holds there.</summary>
    public Fact<bool> IsContinued { get; set; } = false;

    public override string Title => $"the response to {Source?.Title ?? "a value"}";

    public override void Forget()
    {
        KeysAreOpen = true;
        TargetsAreOpen = true;
        IsContinued = Fact<bool>.Open;
    }
}
