using System.Numerics;
using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>The delivered hierarchy of joints. A generated skeleton class declares it from a glTF file; code can declare it by hand.</summary>
public readonly record struct Skeleton : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Skeleton(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "skeleton");

    internal int Id => HandleGuard.Of(draft, "skeleton", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>Declares a joint that has no joint above it, as it was delivered.</summary>
    /// <param name="name">Its name in the skeleton.</param>
    /// <param name="role">What it is for.</param>
    /// <param name="at">Its rest translation, in metres; the origin when not given.</param>
    /// <param name="turned">Its rest rotation, a unit quaternion; unturned when not given.</param>
    /// <param name="scaled">Its rest scale; one when not given.</param>
    /// <returns>The joint.</returns>
    /// <exception cref="ArgumentException">The name is empty, the role is none, or a number is not finite.</exception>
    public Joint Root(
        string name,
        JointRole role = JointRole.Deform,
        Vector3? at = null,
        Quaternion? turned = null,
        Vector3? scaled = null,
        [CallerFilePath] string file = "",
        [CallerLineNumber] int line = 0) => Root(name, role, at, turned, scaled, Draft.Place(file, line));

    internal Joint Root(Text name, Fact<JointRole> role, Fact<Vector3?> at, Fact<Quaternion?> turned, Fact<Vector3?> scaled, PlaceId place) =>
        new(Draft, Draft.Record(JointDeclared.Of(place, Id, parent: null, name, role, at, turned, scaled)));

    internal static Skeleton Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Skeleton));
}
