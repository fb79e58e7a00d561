namespace Condyle;

/// <summary>The left and the right joint of the same kind: <c>joints.Elbow[side]</c>.</summary>
/// <param name="Left">The joint of the character's left.</param>
/// <param name="Right">The joint of the character's right.</param>
public readonly record struct JointPair(Joint Left, Joint Right)
{
    /// <summary>The joint of a side.</summary>
    /// <param name="side">The side.</param>
    /// <exception cref="ArgumentNullException">The side is null.</exception>
    public Joint this[Side side] => Given.ASide(side, "A pair of joints") == Side.Left ? Left : Right;
}
