namespace Condyle;

/// <summary>What a joint of the delivered skeleton is for.</summary>
public enum JointRole
{
    /// <summary>Moves skin.</summary>
    Deform,

    /// <summary>Moves skin and carries a share of a bone's roll.</summary>
    Twist,

    /// <summary>Moves no skin: carries a prop or the root motion, or holds others.</summary>
    Helper,
}
