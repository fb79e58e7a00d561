using System.Numerics;
using Condyle;
using Condyle.Runtime.Gltf;

namespace Newcomers;

/// <summary>What a skeleton's structure tells about a character: which joints are bones, and which of them make limbs.</summary>
internal sealed class Anatomy
{
    /// <summary>A limb is at least this long, as a share of the character's extent: fingers of a whole body are none, those of a lone hand are.</summary>
    private const float LeastLength = 0.15f;

    /// <summary>The shorter of a limb's two bones is at least this share of the longer one.</summary>
    private const float LeastRatio = 0.33f;

    /// <summary>A limb's tip is at least this far from its root, as a share of its length: folded onto its root it has no direction.</summary>
    private const float LeastReach = 0.05f;

    /// <summary>What leads so much of the furthest way leads about as far: the fingers of a hand, the little one included, but not its thumb.</summary>
    private const float AboutAsFar = 0.8f;

    private readonly IReadOnlyList<GltfJoint> joints;
    private readonly Vector3[] points;
    private readonly float[] reaches;
    private readonly int[] ends;
    private readonly JointKinds kinds;
    private readonly bool[] flat;
    private readonly bool[] inLimb;

    private Anatomy(GltfSkeleton skeleton)
    {
        joints = skeleton.Joints;
        kinds = new JointKinds(joints);
        points = [.. skeleton.RestWorld().Select(world => world.Translation)];
        (reaches, ends) = Reaches();
        flat = FindFlat();
        inLimb = new bool[joints.Count];
        var bones = points.Where((_, joint) => kinds.IsBone(joint)).ToList();
        Extent = Vector3.Distance(bones.Aggregate(Vector3.Min), bones.Aggregate(Vector3.Max));
        Limbs = FindLimbs();
    }

    /// <summary>The diagonal of the box around all bones at rest, in metres.</summary>
    public float Extent { get; }

    public IReadOnlyList<Limb> Limbs { get; }

    public static Anatomy Of(GltfSkeleton skeleton) => new(skeleton);

    /// <summary>What a joint is for: what lies between the bones of a limb goes along with them and is no part of the chain.</summary>
    public JointRole RoleOf(int joint) => kinds.IsTwist(joint) ? JointRole.Twist
        : kinds.IsBone(joint) || Limbs.Any(limb => limb.Tip == joint) ? JointRole.Deform
        : JointRole.Helper;

    /// <summary>Whether a scale of zero has flattened a joint or what it hangs under.</summary>
    public bool IsFlat(int joint) => flat[joint];

    /// <summary>Whether a joint belongs to a limb, or holds two of its bones together.</summary>
    public bool IsInLimb(int joint) => inLimb[joint];

    public Limb? LimbFrom(int root) => Limbs.FirstOrDefault(limb => limb.Root == root);

    private IReadOnlyList<Limb> FindLimbs()
    {
        var found = new List<Limb>();
        foreach (var limb in Enumerable.Range(0, joints.Count).Select(LimbAt).OfType<Limb>().OrderByDescending(limb => limb.Length))
        {
            var path = Path(limb.Root, limb.Tip).ToList();
            if (path.Exists(joint => inLimb[joint]))
                continue;
            foreach (var joint in path)
                inLimb[joint] = true;
            found.Add(limb);
        }

        return [.. found.OrderBy(limb => limb.Root)];
    }

    private Limb? LimbAt(int root)
    {
        if (!kinds.IsBone(root) || Next(root) is not { } middle || Next(middle) is not { } tip || flat[tip])
            return null;
        var (upper, lower, line) = (points[middle] - points[root], points[tip] - points[middle], points[tip] - points[root]);
        var (longer, shorter) = (MathF.Max(upper.Length(), lower.Length()), MathF.Min(upper.Length(), lower.Length()));
        var length = longer + shorter;
        var hasBones = shorter > 0 && shorter >= LeastRatio * longer && length >= LeastLength * Extent && line.Length() >= LeastReach * length;
        var endsTheBody = reaches[tip] <= length;
        return hasBones && endsTheBody && !Forks(root, upper, length / 4) && !Forks(middle, lower, length / 4) ? new Limb(root, middle, tip, length, line) : null;
    }

    /// <summary>Whether a further part of the body leads away from a bone, in another direction than this one; fingers do not.</summary>
    private bool Forks(int bone, Vector3 direction, float least) => Below(bone).Any(joint =>
        points[joint] - points[bone] is var other
        && other.Length() + reaches[joint] >= least
        && Vector3.Dot(other, direction) < 0.5f * other.Length() * direction.Length());

    /// <summary>
    /// The bone below a bone that leads furthest away from it, or the marker that shows where the bone ends; what lies between is passed over.
    /// Of several that lead about as far, as the fingers of a hand do, the one in their middle: which of them is longest by a hair differs from side to side.
    /// </summary>
    private int? Next(int bone)
    {
        var below = Below(bone).GroupBy(kinds.IsBone).OrderByDescending(kind => kind.Key).FirstOrDefault()?.ToList() ?? [];
        if (below.Count == 0)
            return null;
        var furthest = below.Max(Reach);
        var equals = below.FindAll(joint => Reach(joint) >= AboutAsFar * furthest);
        var middle = equals.Aggregate(Vector3.Zero, (sum, joint) => sum + points[ends[joint]]) / equals.Count;
        return equals.MinBy(joint => Vector3.Distance(points[ends[joint]], middle));

        float Reach(int joint) => Vector3.Distance(points[bone], points[joint]) + reaches[joint];
    }

    private IEnumerable<int> Below(int bone) => Enumerable.Range(bone + 1, joints.Count - bone - 1)
        .Where(joint => (kinds.IsBone(joint) || kinds.IsEnd(joint)) && kinds.BoneAbove(joint) == bone);

    private IEnumerable<int> Path(int root, int tip)
    {
        for (var joint = tip; joint != root; joint = joints[joint].Parent)
            yield return joint;
        yield return root;
    }

    /// <summary>How far from each joint the furthest bone below it is, and which one that is; a joint that has none below ends in itself.</summary>
    private (float[] Reaches, int[] Ends) Reaches()
    {
        var (found, furthest) = (new float[joints.Count], Enumerable.Range(0, joints.Count).ToArray());
        for (var bone = 0; bone < joints.Count; bone++)
        {
            for (var above = joints[bone].Parent; kinds.IsBone(bone) && above >= 0; above = joints[above].Parent)
            {
                if (Vector3.Distance(points[bone], points[above]) is var reach && reach > found[above])
                    (found[above], furthest[above]) = (reach, bone);
            }
        }

        return (found, furthest);
    }

    private bool[] FindFlat()
    {
        var found = new bool[joints.Count];
        for (var joint = 0; joint < found.Length; joint++)
        {
            var scale = joints[joint].Scale;
            found[joint] = scale.X == 0 || scale.Y == 0 || scale.Z == 0 || (joints[joint].Parent is >= 0 and var above && found[above]);
        }

        return found;
    }
}
