using Condyle.Model;

namespace Condyle;

/// <summary>A joint of a copied chain: it can be driven and solved, and is never exported.</summary>
public readonly record struct CopyJoint : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal CopyJoint(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "copied joint");

    internal int Id => HandleGuard.Of(draft, "copied joint", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>The joint's name.</summary>
    public string Name => NameFact.ToString();

    internal Text NameFact => Draft.NameOf(Id);

    internal static CopyJoint Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.CopyJoint));

    /// <summary>A copied joint is a node.</summary>
    [TakesOpen]
    public static implicit operator Node(CopyJoint joint) => new(joint.Draft, joint.Id);

    /// <summary>The joint's name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
