using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>What a character's controls can ride. It is said once, and given to each limb, head and control that rides; what isn't said is no option.</summary>
public sealed record BodySpaces
{
    /// <summary>What stays when the body moves: the world's control.</summary>
    [TakesOpen]
    public required Node World { get; init; }

    /// <summary>The hips' control.</summary>
    public Node? Hips { get => HipsFact.OrDefault(); init => HipsFact = value; }

    /// <summary>The chest's control, or its joint.</summary>
    public Node? Chest { get => ChestFact.OrDefault(); init => ChestFact = value; }

    /// <summary>The head's control, or its joint.</summary>
    public Node? Head { get => HeadFact.OrDefault(); init => HeadFact = value; }

    internal Fact<Node?> HipsFact { get; private set; } = (Node?)null;

    internal Fact<Node?> ChestFact { get; private set; } = (Node?)null;

    internal Fact<Node?> HeadFact { get; private set; } = (Node?)null;

    internal static BodySpaces Open(RigDraft draft) => new()
    {
        World = Node.Open(draft),
        HipsFact = Fact<Node?>.Open,
        ChestFact = Fact<Node?>.Open,
        HeadFact = Fact<Node?>.Open,
    };
}
