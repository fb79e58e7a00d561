namespace Condyle;

/// <summary>The left and the right joints of the same kind: <c>joints.ElbowTwists[side]</c>.</summary>
/// <param name="Left">The joints of the character's left.</param>
/// <param name="Right">The joints of the character's right.</param>
public readonly record struct JointSetPair(JointSet Left, JointSet Right)
{
    /// <summary>The joints of a side.</summary>
    /// <param name="side">The side.</param>
    /// <exception cref="ArgumentNullException">The side is null.</exception>
    public JointSet this[Side side] => Given.ASide(side, "A pair of joint sets") == Side.Left ? Left : Right;
}
