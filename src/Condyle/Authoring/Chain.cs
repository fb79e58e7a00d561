using System.Collections;
using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>Joints of the skeleton in order from root to tip.</summary>
public readonly record struct Chain : IHandle, IReadOnlyList<Joint>
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Chain(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "chain");

    internal int Id => HandleGuard.Of(draft, "chain", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    private IReadOnlyList<int> Joints => Draft.JointsOf(Id) ?? [];

    /// <summary>How many joints the chain has.</summary>
    public int Count => Joints.Count;

    /// <summary>A joint by its place in the chain, from 0 at the root.</summary>
    /// <param name="index">The place, from 0 to <see cref="Count"/> − 1.</param>
    public Joint this[int index] => new(Draft, Joints[index]);

    /// <summary>The first joint.</summary>
    public Joint Root => this[0];

    /// <summary>The last joint.</summary>
    public Joint Tip => this[Count - 1];

    /// <summary>The same chain without the joints of a role, for instance without its twist joints.</summary>
    /// <param name="role">The role to leave out.</param>
    /// <returns>The shorter chain.</returns>
    /// <exception cref="ArgumentException">No joint is left, or the role is none.</exception>
    [OverloadResolutionPriority(1)]
    public Chain Without(JointRole role, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Without(role, Draft.Place(file, line));

    /// <inheritdoc cref="Without(JointRole, string, int)"/>
    public Chain Without(JointRole role) => Without(role, PlaceId.None);

    internal Chain Without(Fact<JointRole> role, PlaceId place) =>
        new(Draft, Draft.Record(new ChainDeclared(place, Draft.JointsWithout(Id, role), Id, role)));

    /// <summary>Says to which side the chain bends, where its rest is too straight to tell.</summary>
    /// <param name="towards">A direction in the world at rest, of any length above zero.</param>
    /// <returns>The chain.</returns>
    [OverloadResolutionPriority(1)]
    public Chain Bending(System.Numerics.Vector3 towards, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Bending(towards, Draft.Place(file, line));

    /// <inheritdoc cref="Bending(System.Numerics.Vector3, string, int)"/>
    public Chain Bending(System.Numerics.Vector3 towards) => Bending(towards, PlaceId.None);

    internal Chain Bending(Fact<System.Numerics.Vector3> towards, PlaceId place)
    {
        Draft.Record(new BendDeclared(place, Id, towards));
        return this;
    }

    /// <summary>Makes a non-exported duplicate of the chain, tagged.</summary>
    /// <param name="tag">The tag that goes into the names of the copied joints, for instance <c>ik</c>.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentException">The tag is empty.</exception>
    [OverloadResolutionPriority(1)]
    public Copy Copy(string tag, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Copy(tag, Draft.Place(file, line));

    /// <inheritdoc cref="Copy(string, string, int)"/>
    public Copy Copy(string tag) => Copy(tag, PlaceId.None);

    internal Copy Copy(Text tag, PlaceId place) => new(Draft, Draft.CopyChain(Id, tag, place));

    /// <summary>The point that the chain's bend faces at rest, at a distance from its middle joint.</summary>
    /// <param name="distance">The distance from the middle joint, in metres, above zero.</param>
    /// <returns>The spot.</returns>
    [OverloadResolutionPriority(1)]
    public Spot PolePoint(float distance, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => PolePoint(distance, Draft.Place(file, line));

    /// <inheritdoc cref="PolePoint(float, string, int)"/>
    public Spot PolePoint(float distance) => PolePoint(distance, PlaceId.None);

    internal Spot PolePoint(Fact<float> distance, PlaceId place) => new(Draft, Draft.Record(new PolePointAsked(place, Id, distance)));

    /// <summary>The joints from root to tip.</summary>
    /// <returns>An enumerator of them.</returns>
    public IEnumerator<Joint> GetEnumerator()
    {
        var owner = Draft;
        return Joints.Select(joint => new Joint(owner, joint)).GetEnumerator();
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    internal static Chain Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Chain));
}
