namespace Condyle;

/// <summary>A point that the rig's geometry gives, such as a pole point. It is worked out once the whole rig is known.</summary>
public readonly record struct Spot : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Spot(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "spot");

    internal int Id => HandleGuard.Of(draft, "spot", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    internal static Spot Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Spot));
}
