using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What of a node a sentence writes.</summary>
internal enum Moved
{
    /// <summary>Its channels, whatever they were.</summary>
    Channels,

    /// <summary>Its placement.</summary>
    Placement,

    /// <summary>Its channels, on top of what they are.</summary>
    OnTop,
}

/// <summary>A node that a sentence goes by, and how: "follows", "reaches for"; by its angle, its own channels are all that counts.</summary>
internal readonly record struct Leader(RigNode? Node, string Verb, bool ByAngle = false);

/// <summary>A sentence that moves a node.</summary>
/// <param name="Sentence">The drive, blend, solver, space, response or the like.</param>
/// <param name="Node">The node that it moves.</param>
/// <param name="What">What of the node it writes.</param>
/// <param name="Written">The channels that it has, scale apart; all of them where it writes the placement.</param>
/// <param name="Place">Where it was said.</param>
/// <param name="IsCertain">Whether it does so for certain, by what is known, whenever its sentence is said.</param>
/// <param name="Leaders">The nodes that it goes by.</param>
internal sealed record Move(RigElement Sentence, RigNode Node, Moved What, Channels Written, PlaceId Place, bool IsCertain, IReadOnlyList<Leader> Leaders)
{
    /// <summary>All channels but scale, which is the rest's unless something asks for it.</summary>
    public const Channels Whole = Channels.Move | Channels.Turn;

    /// <summary>Whether both are said, or neither.</summary>
    public bool IsSaidWith(Move other) => IsCertain && other.IsCertain && Sentence.Scope == other.Sentence.Scope;

    /// <summary>How people are told of it.</summary>
    public string Title => Sentence is RigDrive && Leaders[0].Node is { } source ? $"its drive by {source.Title}" : Sentence.Title;
}
