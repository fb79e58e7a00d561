using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A sentence that lets a control ride one of several nodes, by a choice. It keeps the place that it has in each of them at rest.</summary>
public readonly record struct Space : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Space(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "space");

    internal int Id => HandleGuard.Of(draft, "space", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>Adds a node to ride while an option is picked. While an option without one is picked, the control rides the node that it is under.</summary>
    /// <param name="option">The option, by which an animator picks the node.</param>
    /// <param name="parent">The node whose motion the control takes.</param>
    /// <returns>The space.</returns>
    /// <exception cref="ArgumentException">The choice that was given has no such option, the space has a node for it already, or its name is empty.</exception>
    public Space In(string option, Node parent, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        In(option, parent, Draft.Place(file, line));

    internal Space In(Text option, Node parent, PlaceId place)
    {
        Given.AName(option, "An option of a space", "chest");
        var picked = Draft.Log[Id] is not SpaceBegun begun ? null
            : begun.OwnsChoice ? Draft.AddOption(begun.Choice, option, place)
            : Draft.OptionOf(begun.Choice, option);
        Draft.Record(new SpaceParentAdded(place, Id, picked, parent.IdIn(Draft)));
        return this;
    }

    internal static Space Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Space));
}
