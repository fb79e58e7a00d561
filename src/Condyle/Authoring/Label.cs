using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>Text that shows which source has the limb.</summary>
public readonly record struct Label : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Label(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "label");

    internal int Id => HandleGuard.Of(draft, "label", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>Shows the label while the weight is above one half.</summary>
    /// <param name="weight">The weight, best the one of the source that the label names.</param>
    /// <returns>The label.</returns>
    [OverloadResolutionPriority(1)]
    public Label ShownBy(Weight weight, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => ShownBy(weight, Draft.Place(file, line));

    /// <inheritdoc cref="ShownBy(Weight, string, int)"/>
    public Label ShownBy(Weight weight) => ShownBy(weight, PlaceId.None);

    internal Label ShownBy(Weight weight, PlaceId place)
    {
        Draft.Record(new LabelShown(place, Id, weight.In(Draft)));
        return this;
    }

    /// <summary>Puts the label where a node is; without it the label stands in the world.</summary>
    /// <param name="parent">The node that the label goes with.</param>
    /// <returns>The label.</returns>
    [OverloadResolutionPriority(1)]
    public Label Under(Node parent, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Under(parent, Draft.Place(file, line));

    /// <inheritdoc cref="Under(Node, string, int)"/>
    public Label Under(Node parent) => Under(parent, PlaceId.None);

    internal Label Under(Node parent, PlaceId place)
    {
        Draft.Record(new ParentSet(place, Id, parent.IdIn(Draft)));
        return this;
    }

    internal static Label Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Label));
}
