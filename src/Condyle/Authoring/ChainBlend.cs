using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A sentence that drives every joint of a chain by channels from several weighted copies.</summary>
public readonly record struct ChainBlend : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal ChainBlend(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "blend");

    internal int Id => HandleGuard.Of(draft, "blend", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>Adds a source. The weights of all sources should add up to one for every switch value.</summary>
    /// <param name="source">A copy of the chain.</param>
    /// <param name="weight">Its weight: a switch, its inverse, a number, or sums and products of them.</param>
    /// <returns>The blend.</returns>
    public ChainBlend From(Copy source, Weight weight, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        From(source, weight, Draft.Place(file, line));

    internal ChainBlend From(Copy source, Weight weight, PlaceId place)
    {
        Draft.Record(new BlendSourced(place, Id, source.IdIn(Draft), weight.In(Draft)));
        return this;
    }

    /// <summary>Keeps what a rule finds about this blend, with the reason; the analyzer and the program both honour it.</summary>
    /// <param name="rule">The rule's id, for instance <c>CDY2001</c>.</param>
    /// <param name="because">Why the team means it so.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentException">The reason is empty.</exception>
    public ChainBlend Accept(string rule, string because, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Accept(rule, because, Draft.Place(file, line));

    internal ChainBlend Accept(Text rule, Text because, PlaceId place)
    {
        Given.AReason(rule, because);
        Draft.Record(new Accepted(place, Id, rule, because));
        return this;
    }

    internal static ChainBlend Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Blend));
}
