namespace Condyle.Runtime;

/// <summary>A clip on a rig's controls that does what a motion of joints does, and how well.</summary>
/// <param name="Clip">The clip.</param>
/// <param name="Largest">The largest deviation of a joint that the motion has.</param>
/// <param name="Joints">How far each joint of the rig is from where the motion has it, at most, in the world, over all frames. A joint that the motion doesn't have should keep its rest.</param>
/// <param name="NotInRig">Joints of the motion that are no joint of the rig.</param>
/// <param name="NotInMotion">Joints of the rig that the motion doesn't have.</param>
/// <param name="Notes">What kept a control or a limb from being matched, each once, as it is where that is most.</param>
public sealed record MotionMatchResult(
    Clip Clip, Deviation Largest, IReadOnlyList<MatchedJoint> Joints, IReadOnlyList<string> NotInRig, IReadOnlyList<string> NotInMotion, IReadOnlyList<string> Notes)
{
    /// <summary>The dials that stay at their defaults though the motion seems to need them: turning one would bring a joint nearer to it. Key them by <see cref="MotionMatchSettings.Choices"/> and match again.</summary>
    public IReadOnlyList<NeededDial> NeededDials { get; init; } = [];
}

/// <summary>A dial that a match leaves at its default and that a motion seems to need.</summary>
/// <param name="Dial">The control that it was made on and its own name, for instance <c>hand_left.curl</c>.</param>
/// <param name="Joint">Of the joints that it would bring nearer the one that is furthest off.</param>
/// <param name="At">When that joint is furthest off by itself, whatever the joints above it are off, in seconds.</param>
/// <param name="Value">The dial's value at which that joint would be nearest then, in its unit.</param>
public sealed record NeededDial(string Dial, string Joint, float At, float Value);

/// <summary>How far a joint is from where a motion has it, at most.</summary>
/// <param name="Joint">Its name in the rig.</param>
/// <param name="From">Its name in the motion; none: the motion doesn't have it.</param>
/// <param name="Off">The largest distance and the largest angle in the world.</param>
public sealed record MatchedJoint(string Joint, string? From, Deviation Off);
