using System.Collections;

namespace Condyle;

/// <summary>Joints of one kind in order, such as the twist joints of a forearm or the joints of a finger.</summary>
public sealed class JointSet : IReadOnlyList<Joint>
{
    private readonly Joint[] joints;

    /// <summary>Gathers joints.</summary>
    /// <param name="joints">The joints, in order.</param>
    public JointSet(params Joint[] joints) =>
        this.joints = [.. joints ?? throw new ArgumentNullException(nameof(joints), "A set of joints was given null. Give it the joints in order, or none.")];

    /// <summary>How many joints there are.</summary>
    public int Count => joints.Length;

    /// <summary>A joint by its place in the order, from 0.</summary>
    /// <param name="index">The place, from 0 to <see cref="Count"/> − 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The set has no such place.</exception>
    public Joint this[int index] => index >= 0 && index < joints.Length ? joints[index]
        : throw new ArgumentOutOfRangeException(nameof(index), $"A set of joints has none at {index}, only {joints.Length} in all. Places count from 0.");

    /// <summary>The joints in order.</summary>
    /// <returns>An enumerator of them.</returns>
    public IEnumerator<Joint> GetEnumerator() => ((IEnumerable<Joint>)joints).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
