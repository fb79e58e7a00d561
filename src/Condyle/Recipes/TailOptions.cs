using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>How the bend of a tail or a wing is shared. What isn't said keeps its default.</summary>
public sealed record TailOptions
{
    /// <summary>The first joint's share of the bend, beside the last one's; those between go in a line.</summary>
    public float FirstShare { get => FirstShareFact.OrDefault(); init => FirstShareFact = value; }

    /// <summary>The last joint's share of the bend.</summary>
    public float LastShare { get => LastShareFact.OrDefault(); init => LastShareFact = value; }

    internal Fact<float> FirstShareFact { get; private set; } = 1f;

    internal Fact<float> LastShareFact { get; private set; } = 1f;

    internal static TailOptions Open(RigDraft _) => new()
    {
        FirstShareFact = Fact<float>.Open,
        LastShareFact = Fact<float>.Open,
    };
}
