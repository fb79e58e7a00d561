namespace Condyle.Runtime;

/// <summary>How motion of joints is put onto a rig's controls.</summary>
public sealed record MotionMatchSettings
{
    /// <summary>What is kept where the two skeletons don't rest alike.</summary>
    public RestPolicy Rest { get; init; }

    /// <summary>Frames per second, from 1 to 1000; none: those of the motion, or 30.</summary>
    public float? FramesPerSecond { get; init; }

    /// <summary>By how much moves are scaled; none: by how high the joint that carries the others rests on both skeletons.</summary>
    public double? Scale { get; init; }

    /// <summary>Leaves out keys as long as no joint is further off in the world than this on any frame; none: every control that moves has a key on every frame.</summary>
    public BakeTolerance? Keys { get; init; }

    /// <summary>Whether limbs are shown by the joints that controls turn, or by their ends. Both are set to stand alike, so that an animator can switch at any frame.</summary>
    public LimbCopy Limbs { get; init; }

    /// <summary>A clip that keys choices, such as spaces, and dials: what rides by them is set so that the motion stays as it is. None: choices and dials are at rest.</summary>
    public Clip? Choices { get; init; }
}

/// <summary>Which copy of a limb with IK and FK is shown.</summary>
public enum LimbCopy
{
    /// <summary>The one whose joints controls turn.</summary>
    Turned,

    /// <summary>The one that reaches for a goal.</summary>
    Solved,
}

/// <summary>What of a motion is kept where the skeleton that it comes from rests otherwise than the rig's. Where both rest alike, all three are the same.</summary>
public enum RestPolicy
{
    /// <summary>
    /// Bones point where they point in the motion: each joint with one bone is turned to where the other skeleton rests, the short way, and then turned in the world as the other one turns from its rest.
    /// Right for another character or an actor, whatever its joints' own axes.
    /// </summary>
    KeepDirections,

    /// <summary>Each joint turns in the world as the other one turns from its rest. Right where both characters rest in what is meant to be the same pose.</summary>
    KeepTurns,

    /// <summary>Each joint has the frame in the world that the other one has. Right for a skeleton whose joints kept their axes and whose rest was posed anew.</summary>
    KeepFrames,
}
