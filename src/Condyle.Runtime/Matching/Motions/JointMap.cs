using Condyle.Naming;

namespace Condyle.Runtime;

/// <summary>Which joint of a motion is which joint of a rig. Joints of one name on both sides needn't be said.</summary>
/// <example><code>new JointMap().With("hips", "pelvis").With("leftUpperArm", "shoulder_left").Without("leftThumbMetacarpal")</code></example>
public sealed class JointMap
{
    private const int MostSuggestions = 3;

    private readonly SortedDictionary<string, string?> names = new(StringComparer.Ordinal);

    /// <summary>Says which joint of the rig a joint of the motion is.</summary>
    /// <param name="from">The joint's name in the motion.</param>
    /// <param name="to">Its name in the rig.</param>
    /// <returns>The map.</returns>
    public JointMap With(string from, string to)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(from);
        ArgumentException.ThrowIfNullOrWhiteSpace(to);
        names[from] = to;
        return this;
    }

    /// <summary>Leaves a joint of the motion out, though the rig has one of its name.</summary>
    /// <param name="from">The joint's name in the motion.</param>
    /// <returns>The map.</returns>
    public JointMap Without(string from)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(from);
        names[from] = null;
        return this;
    }

    /// <summary>The joint of the motion for each joint of the rig; −1 where there is none.</summary>
    /// <exception cref="BadInputException">The map names a joint that isn't there, or one joint of the rig twice, or nothing fits.</exception>
    internal int[] Bind(JointMotion motion, CompiledRig rig)
    {
        var from = motion.Joints.Index().Where(joint => joint.Item.Name.Length > 0).ToDictionary(joint => joint.Item.Name, joint => joint.Index, StringComparer.Ordinal);
        var to = rig.Joints.ToDictionary(joint => joint.Name, joint => joint.Index, StringComparer.Ordinal);
        var bound = new int[rig.Joints.Count];
        Array.Fill(bound, -1);
        foreach (var (source, target) in names)
        {
            if (!from.TryGetValue(source, out var index))
                throw Wrong(motion, $"is mapped, but the motion has no such joint", Nearest(source, from.Keys), source);
            if (target is null)
                continue;
            if (!to.TryGetValue(target, out var joint))
                throw Wrong(motion, $"is mapped to '{target}', which is no joint of the rig '{rig.Name}'", Nearest(target, to.Keys), source);
            if (bound[joint] >= 0)
                throw Wrong(motion, $"is mapped to '{target}', and so is '{motion.Joints[bound[joint]].Name}'", "Map one of them", source);
            bound[joint] = index;
        }

        foreach (var (name, index) in from.Where(pair => !names.ContainsKey(pair.Key)))
        {
            if (to.TryGetValue(name, out var joint) && bound[joint] < 0)
                bound[joint] = index;
        }

        return bound.Any(index => index >= 0) ? bound
            : throw new BadInputException(motion.File, $"motion '{motion.Name}' has no joint of the rig '{rig.Name}'", $"Say by a JointMap, or by --joint, which is which. Its joints: {string.Join(", ", motion.JointNames.Take(10).Select(name => $"'{name}'"))}");
    }

    private static string Nearest(string name, IEnumerable<string> known) =>
        $"The nearest: {string.Join(", ", NearestNames.To(name, known, MostSuggestions).Select(near => $"'{near}'"))}";

    private static BadInputException Wrong(JointMotion motion, string problem, string remedy, string joint) => new(motion.File, problem, remedy, joint, $"motion '{motion.Name}'");
}
