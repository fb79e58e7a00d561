using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What a rule reports: the element it is about, a message that stands alone, the place, related places, and how to repair it where that is known.</summary>
internal sealed record Finding(Rule Rule, RigElement? Subject, string Message, PlaceId Place)
{
    public string Message { get; } = Messages.OnOneLine(Message);

    /// <summary>The node that the element acts on: the finding can be accepted there as well.</summary>
    public RigNode? ActsOn { get; init; }

    /// <summary>Other places that the message speaks of.</summary>
    public IReadOnlyList<PlaceId> Related { get; init; } = [];

    /// <summary>Ways to repair it; more than one where the rig alone doesn't tell which is meant.</summary>
    public IReadOnlyList<Repair> Repairs { get; init; } = [];
}
