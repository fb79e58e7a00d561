using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A chain's non-exported duplicate. It stands where the chain rests and can be solved or driven without touching the skeleton.</summary>
public readonly record struct Copy : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Copy(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "copy");

    internal int Id => HandleGuard.Of(draft, "copy", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>The copy of the chain's first joint.</summary>
    public CopyJoint Root => new(Draft, Draft.CopiesOf(Id)[0]);

    /// <summary>The copy of the chain's last joint.</summary>
    public CopyJoint Tip => new(Draft, Draft.CopiesOf(Id)[^1]);

    /// <summary>The copy of one of the chain's joints.</summary>
    /// <param name="joint">A joint of the chain that was copied.</param>
    /// <returns>Its copy.</returns>
    /// <exception cref="ArgumentException">The joint isn't in the chain.</exception>
    public CopyJoint Of(Joint joint) => new(Draft, Draft.CopyOf(Id, joint.IdIn(Draft)));

    /// <summary>Puts the copy's first joint under another node of the rig.</summary>
    /// <param name="parent">The node whose motion the copy takes: a group that follows the limb's root.</param>
    /// <returns>The copy.</returns>
    [OverloadResolutionPriority(1)]
    public Copy Under(Node parent, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Under(parent, Draft.Place(file, line));

    /// <inheritdoc cref="Under(Node, string, int)"/>
    public Copy Under(Node parent) => Under(parent, PlaceId.None);

    internal Copy Under(Node parent, PlaceId place)
    {
        Draft.Record(new ParentSet(place, Id, parent.IdIn(Draft)));
        return this;
    }

    /// <summary>The point that the copied chain's bend faces at rest, at a distance from its middle joint.</summary>
    /// <param name="distance">The distance from the middle joint, in metres, above zero.</param>
    /// <returns>The spot.</returns>
    [OverloadResolutionPriority(1)]
    public Spot PolePoint(float distance, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => PolePoint(distance, Draft.Place(file, line));

    /// <inheritdoc cref="PolePoint(float, string, int)"/>
    public Spot PolePoint(float distance) => PolePoint(distance, PlaceId.None);

    internal Spot PolePoint(Fact<float> distance, PlaceId place) => new(Draft, Draft.Record(new PolePointAsked(place, Id, distance)));

    internal static Copy Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Copy));
}
