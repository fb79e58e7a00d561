using System.Numerics;
using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A joint of the delivered skeleton. It is exported: what the engine reads are its translation, rotation and scale.</summary>
public readonly record struct Joint : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Joint(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "joint");

    internal int Id => HandleGuard.Of(draft, "joint", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>The joint's name in the skeleton.</summary>
    public string Name => NameFact.ToString();

    internal Text NameFact => Draft.NameOf(Id);

    /// <summary>Declares a joint below this one, as it was delivered.</summary>
    /// <param name="name">Its name in the skeleton.</param>
    /// <param name="role">What it is for.</param>
    /// <param name="at">Its rest translation in this joint's space, in metres; at this joint when not given.</param>
    /// <param name="turned">Its rest rotation in this joint's space, a unit quaternion; unturned when not given.</param>
    /// <param name="scaled">Its rest scale; one when not given.</param>
    /// <returns>The joint.</returns>
    /// <exception cref="ArgumentException">The name is empty, the role is none, or a number is not finite.</exception>
    public Joint Child(
        string name,
        JointRole role = JointRole.Deform,
        Vector3? at = null,
        Quaternion? turned = null,
        Vector3? scaled = null,
        [CallerFilePath] string file = "",
        [CallerLineNumber] int line = 0) => Child(name, role, at, turned, scaled, Draft.Place(file, line));

    internal Joint Child(Text name, Fact<JointRole> role, Fact<Vector3?> at, Fact<Quaternion?> turned, Fact<Vector3?> scaled, PlaceId place) =>
        new(Draft, Draft.Record(JointDeclared.Of(place, Draft.SkeletonOf(Id), Id, name, role, at, turned, scaled)));

    /// <summary>Keeps what a rule finds about this joint, with the reason; the analyzer and the program both honour it.</summary>
    /// <param name="rule">The rule's id, for instance <c>CDY3001</c>.</param>
    /// <param name="because">Why the team means it so.</param>
    /// <returns>The joint.</returns>
    /// <exception cref="ArgumentException">The reason is empty.</exception>
    public Joint Accept(string rule, string because, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Accept(rule, because, Draft.Place(file, line));

    internal Joint Accept(Text rule, Text because, PlaceId place)
    {
        Given.AReason(rule, because);
        Draft.Record(new Accepted(place, Id, rule, because));
        return this;
    }

    internal static Joint Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Joint));

    /// <summary>A joint is a node.</summary>
    [TakesOpen]
    public static implicit operator Node(Joint joint) => new(joint.Draft, joint.Id);

    /// <summary>The joint's name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
