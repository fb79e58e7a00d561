namespace Condyle;

/// <summary>Any node of a rig: a joint, a copied joint, a control or a group. Handles of those convert to it by themselves.</summary>
public readonly record struct Node : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Node(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "node");

    internal int Id => HandleGuard.Of(draft, "node", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>The node's name.</summary>
    public string Name => NameFact.ToString();

    internal Model.Text NameFact => Draft.NameOf(Id);

    internal static Node Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Node));

    /// <summary>The node's name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
