namespace Condyle.Runtime;

/// <summary>
/// What becomes of the way that a character goes: its travel over the ground and its heading about the world's Y axis, as one of its joints shows them
/// against where that joint rests. The heading isn't continuous where the joint is turned upside down.
/// </summary>
public sealed record RootMotion
{
    private RootMotion(RootMotionWay way, string? joint) => (Way, Joint) = (way, joint);

    /// <summary>The joints keep what the rig gives them.</summary>
    public static RootMotion AsPosed { get; } = new(RootMotionWay.AsPosed, null);

    /// <summary>What becomes of it.</summary>
    public RootMotionWay Way { get; }

    /// <summary>The joint that shows the way; the first root joint when null.</summary>
    public string? Joint { get; }

    /// <summary>The root joint above a joint goes the way of that joint, on the ground; all other joints stay where they are in the world.</summary>
    /// <param name="joint">The joint that shows the way, for instance <c>pelvis</c>.</param>
    /// <returns>The choice.</returns>
    public static RootMotion OntoRoot(string joint) => new(RootMotionWay.OntoRoot, joint ?? throw new ArgumentNullException(nameof(joint)));

    /// <summary>The way is taken off all joints, so that the character moves in place. The clip keeps it as <see cref="BakedClip.Travel"/>.</summary>
    /// <param name="joint">The joint that shows the way; the first root joint when null.</param>
    /// <returns>The choice.</returns>
    public static RootMotion InPlace(string? joint = null) => new(RootMotionWay.InPlace, joint);
}

/// <summary>What can become of the way that a character goes.</summary>
public enum RootMotionWay
{
    /// <summary>The joints keep what the rig gives them.</summary>
    AsPosed,

    /// <summary>It goes onto the root joint.</summary>
    OntoRoot,

    /// <summary>It is taken off.</summary>
    InPlace,
}
