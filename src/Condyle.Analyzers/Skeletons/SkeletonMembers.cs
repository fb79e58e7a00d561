using System.Security;

namespace Condyle.Analyzers.Skeletons;

/// <summary>Which properties a skeleton's class has: one for each joint or pair of joints, then one for each series, then one for each humanoid bone.</summary>
internal sealed class SkeletonMembers
{
    private readonly SkeletonNaming naming;
    private readonly MemberNames names;
    private readonly List<SkeletonMember> members = [];

    private SkeletonMembers(string className, SkeletonNaming naming) => (this.naming, names) = (naming, new MemberNames(className));

    public static IReadOnlyList<SkeletonMember> Of(string className, IReadOnlyList<SkeletonJoint> joints, SkeletonNaming naming)
    {
        var all = new SkeletonMembers(className, naming);
        all.AddJoints(joints);
        foreach (var series in JointSeries.In(joints, naming))
            all.AddSeries(series);
        all.AddHumanBones(joints);
        return all.members;
    }

    /// <summary>The constructor's variable that holds a joint; it is numbered as the file numbers its nodes.</summary>
    public static string Variable(int node) => FormattableString.Invariant($"node{node}");

    private void AddJoints(IReadOnlyList<SkeletonJoint> joints)
    {
        var byName = joints.ToDictionary(static joint => joint.Name, StringComparer.Ordinal);
        var paired = new HashSet<string>(StringComparer.Ordinal);
        foreach (var joint in joints)
        {
            var (shared, side) = naming.Split(joint.Name);
            if (side == 0 || !byName.TryGetValue(shared + naming.LeftMark, out var left) || !byName.TryGetValue(shared + naming.RightMark, out var right))
                Add(names.Take(joint.Name), "Joint", Variable(joint.Node), $"The joint {Code(joint)}: it {Task(joint.Role)}.");
            else if (paired.Add(shared))
                Add(names.Take(shared), "JointPair", New("JointPair", Variable(left.Node), Variable(right.Node)), PairSummary(left, right));
        }
    }

    private void AddSeries(JointSeries series)
    {
        var suffix = series.AreTwists ? "s" : "Joints";
        var kind = series.AreTwists ? "twist joints" : "joints";
        if (series.Left.Count > 0 && series.Right.Count > 0)
        {
            Add(names.Take(series.Base, suffix), "JointSetPair", New("JointSetPair", Set(series.Left), Set(series.Right)),
                $"The {kind} {Listed(series.Left)} and {Listed(series.Right)}, in order.");
        }
        else
        {
            AddOneSide(series.Left, naming.LeftMark);
            AddOneSide(series.Right, naming.RightMark);
        }

        AddOneSide(series.Middle, "");

        void AddOneSide(IReadOnlyList<SkeletonJoint> joints, string mark)
        {
            if (joints.Count > 0)
                Add(names.Take(series.Base, suffix + Identifiers.Pascal(mark, whenEmpty: "")), "JointSet", Set(joints), $"The {kind} {Listed(joints)}, in order.");
        }
    }

    /// <summary>By what they are rather than what they are called, so that one rig fits the characters of many modellers.</summary>
    private void AddHumanBones(IReadOnlyList<SkeletonJoint> joints)
    {
        const string left = "left", right = "right";
        var byBone = joints.Where(static joint => joint.HumanBone is not null).ToDictionary(static joint => joint.HumanBone!, StringComparer.Ordinal);
        foreach (var (bone, joint) in byBone.Select(static bone => (bone.Key, bone.Value)))
        {
            if (bone.StartsWith(left, StringComparison.Ordinal) && bone.Substring(left.Length) is var shared && byBone.TryGetValue(right + shared, out var other))
            {
                Add(names.Take("Human" + Identifiers.Pascal(shared, whenEmpty: "Bone")), "JointPair", New("JointPair", Variable(joint.Node), Variable(other.Node)),
                    $"The humanoid bones {Code(bone)} and {Code(right + shared)} of VRM 1.0: the joints {Code(joint)} and {Code(other)}.");
            }
            else if (!bone.StartsWith(right, StringComparison.Ordinal) || !byBone.ContainsKey(left + bone.Substring(right.Length)))
            {
                Add(names.Take("Human" + Identifiers.Pascal(bone, whenEmpty: "Bone")), "Joint", Variable(joint.Node), $"The humanoid bone {Code(bone)} of VRM 1.0: the joint {Code(joint)}.");
            }
        }
    }

    private void Add(string name, string type, string value, string summary) =>
        members.Add(new SkeletonMember(name, "global::Condyle." + type, value, summary));

    private static string Set(IReadOnlyList<SkeletonJoint> joints) => New("JointSet", [.. joints.Select(static joint => Variable(joint.Node))]);

    private static string New(string type, params string[] arguments) => $"new global::Condyle.{type}({string.Join(", ", arguments)})";

    private static string Listed(IReadOnlyList<SkeletonJoint> joints) => string.Join(", ", joints.Select(Code));

    private static string Code(SkeletonJoint joint) => Code(joint.Name);

    private static string Code(string name) =>
        $"<c>{SecurityElement.Escape(new string([.. name.Where(static character => !char.IsControl(character) && !char.IsSurrogate(character))]))}</c>";

    private static string PairSummary(SkeletonJoint left, SkeletonJoint right) => left.Role == right.Role
        ? $"The joints {Code(left)} and {Code(right)}: each {Task(left.Role)}."
        : $"The joints {Code(left)}, which {Task(left.Role)}, and {Code(right)}, which {Task(right.Role)}.";

    private static string Task(JointRole role) => role switch
    {
        JointRole.Deform => "moves skin",
        JointRole.Twist => "moves skin and carries a share of a bone's roll",
        _ => "moves no skin",
    };
}
