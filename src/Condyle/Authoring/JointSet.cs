using System.Collections;

namespace Condyle;

/// <summary>Joints of one kind in order, such as the twist joints of a forearm or the joints of a finger.</summary>
public sealed class JointSet : IReadOnlyList<Joint>
{
    private readonly Joint[] joints;

    /// <summary>Gathers joints.</summary>
    /// <param name="joints">The joints, in order.</param>
    public JointSet(params Joint[] joints) => this.joints = [.. joints];

    /// <summary>How many joints there are.</summary>
    public int Count => joints.Length;

    /// <summary>A joint by its place in the order, from 0.</summary>
    /// <param name="index">The place, from 0 to <see cref="Count"/> − 1.</param>
    public Joint this[int index] => joints[index];

    /// <summary>The joints in order.</summary>
    /// <returns>An enumerator of them.</returns>
    public IEnumerator<Joint> GetEnumerator() => ((IEnumerable<Joint>)joints).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
