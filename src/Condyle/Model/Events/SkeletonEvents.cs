using System.Numerics;

namespace Condyle.Model;

internal sealed class SkeletonDeclared(PlaceId place, Text name) : RigEvent(place), INamedEvent
{
    public Text Name => name;

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigSkeleton(id, this, name));
}

internal sealed class JointDeclared(PlaceId place, int skeleton, int? parent, Text name, Fact<JointRole> role, Fact<RestTransform> rest)
    : RigEvent(place), INamedEvent
{
    public int Skeleton => skeleton;

    public int? Parent => parent;

    public Text Name => name;

    public Fact<JointRole> Role => role;

    public Fact<RestTransform> Rest => rest;

    public static JointDeclared Of(
        PlaceId place, int skeleton, int? parent, Text name, Fact<JointRole> role, Fact<Vector3?> at, Fact<Quaternion?> turned, Fact<Vector3?> scaled)
    {
        Given.AName(name, "A joint", "wrist_left");
        Given.ARole(role);
        var rest = at.TryKnown(out var translation) && turned.TryKnown(out var rotation) && scaled.TryKnown(out var scale)
            ? new RestTransform(
                Finite(translation ?? Vector3.Zero, name, "translation"),
                Unit(rotation ?? Quaternion.Identity, name),
                Finite(scale ?? Vector3.One, name, "scale"))
            : Fact<RestTransform>.Open;
        return new JointDeclared(place, skeleton, parent, name, role, rest);
    }

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigNode(id, this, NodeKind.Joint, name)
    {
        Skeleton = fold.Find<RigSkeleton>(skeleton),
        Parent = parent is { } above ? fold.Find<RigNode>(above) : (RigNode?)null,
        Role = role,
        Rest = rest,
    });

    private static Vector3 Finite(Vector3 value, Text joint, string what) =>
        IsFinite(value.X) && IsFinite(value.Y) && IsFinite(value.Z)
            ? value
            : throw new ArgumentException($"The rest {what} of joint '{joint}' is not a finite number: {Invariant.Print(value)}. Correct it where the joint is declared.");

    private static Quaternion Unit(Quaternion value, Text joint)
    {
        var length = value.Length();
        if (!IsFinite(length) || length < 1e-6f)
            throw new ArgumentException($"The rest rotation of joint '{joint}' has no direction: {Invariant.Print(value)}. Give a unit quaternion.");
        // A rotation that is a unit already stays as delivered, to the last bit.
        return Math.Abs(length - 1) < 1e-6f ? value : Quaternion.Normalize(value);
    }

    private static bool IsFinite(float value) => !float.IsNaN(value) && !float.IsInfinity(value);
}
