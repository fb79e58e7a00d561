using System.Globalization;

namespace Condyle.Analyzers.Skeletons;

/// <summary>Joints of one kind in order: the twists of a forearm, the joints of a finger. Either side may be empty, and so may the middle.</summary>
internal sealed record JointSeries(string Base, bool AreTwists, IReadOnlyList<SkeletonJoint> Left, IReadOnlyList<SkeletonJoint> Middle, IReadOnlyList<SkeletonJoint> Right)
{
    private static readonly char[] Separators = ['_', '-', '.', ' '];

    /// <summary>Twist joints that share a base form a series even alone; others need two numbered ones on a side.</summary>
    public static IEnumerable<JointSeries> In(IReadOnlyList<SkeletonJoint> joints, SkeletonNaming naming) => joints
        .Select(joint => (Joint: joint, Key: Key.Of(joint, naming)))
        .Where(static entry => entry.Key.AreTwists || entry.Key.Number >= 0)
        .GroupBy(static entry => (entry.Key.Base, entry.Key.AreTwists))
        .Select(static group => new JointSeries(group.Key.Base, group.Key.AreTwists, Side(group, -1), Side(group, 0), Side(group, 1)))
        .Where(static series => series.AreTwists || series.Left.Count > 1 || series.Middle.Count > 1 || series.Right.Count > 1);

    private static IReadOnlyList<SkeletonJoint> Side(IEnumerable<(SkeletonJoint Joint, Key Key)> entries, int side) =>
        [.. entries.Where(entry => entry.Key.Side == side).OrderBy(static entry => entry.Key.Number).Select(static entry => entry.Joint)];

    /// <summary>A name without side and number: <c>index_2_left</c> is the second of <c>index</c> on the left. Without a number: -1.</summary>
    private readonly record struct Key(string Base, int Side, long Number, bool AreTwists)
    {
        private const int MostDigits = 9;

        public static Key Of(SkeletonJoint joint, SkeletonNaming naming)
        {
            var (name, side) = naming.Split(joint.Name);
            var isTwist = joint.Role == JointRole.Twist;
            var stem = name.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
            var digits = name.Length - stem.Length;
            var shared = stem.TrimEnd(Separators);
            return digits is 0 or > MostDigits || shared.Length == 0
                ? new Key(name, side, -1, isTwist)
                : new Key(shared, side, long.Parse(name.Substring(stem.Length), CultureInfo.InvariantCulture), isTwist);
        }
    }
}
