using System.Numerics;

namespace Condyle.Runtime;

/// <summary>A clip whose names were found in a rig, so that it can pose the rig's instances. Threads can share it as long as nothing is added to the clip: what comes later plays, but was never checked.</summary>
public sealed class ClipPlayer
{
    private readonly (int Control, Motion<Vector3> Motion)[] moves;
    private readonly (int Control, Motion<Quaternion> Motion)[] turns;
    private readonly (int Control, Motion<Vector3> Motion)[] scales;
    private readonly (int Switch, Motion<float> Motion)[] switches;
    private readonly (int Dial, Motion<float> Motion)[] dials;
    private readonly (int Choice, Motion<int> Motion)[] choices;

    /// <summary>Finds what a clip moves in a rig, and what the clips that lie over it move.</summary>
    /// <param name="rig">The rig to pose.</param>
    /// <param name="clip">The clip to play.</param>
    /// <exception cref="BadInputException">
    /// A clip has no keys, keys a control, switch, dial or choice that the rig doesn't have, keys one of them by two of its names, takes a dial out of its range,
    /// picks an option that isn't there, or changes a locked channel.
    /// </exception>
    public ClipPlayer(CompiledRig rig, Clip clip)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(clip);
        clip.CheckLayers();
        (Rig, Clip) = (rig, clip);
        var motion = RigMotion.Of(rig, clip);
        (moves, turns, scales) = (Listed(motion.Moves), Listed(motion.Turns), Listed(motion.Scales));
        (switches, dials, choices) = (Listed(motion.Switches), Listed(motion.Dials), Listed(motion.Choices));
    }

    /// <summary>The rig whose instances it poses.</summary>
    public CompiledRig Rig { get; }

    /// <summary>The clip that it plays.</summary>
    public Clip Clip { get; }

    /// <summary>Sets the controls, switches, dials and choices that the clip and its layers key; the others stay as they are. Evaluate afterwards. Allocates nothing.</summary>
    /// <param name="instance">An instance of <see cref="Rig"/>.</param>
    /// <param name="time">Seconds; before the clip its first keys hold, after it its last.</param>
    public void Pose(RigInstance instance, float time)
    {
        ArgumentNullException.ThrowIfNull(instance);
        Pose([instance], [time]);
    }

    /// <summary>Poses many instances, each for its own time: curve by curve, since those that lie side by side have a control's numbers in the same places.</summary>
    internal void Pose(ReadOnlySpan<RigInstance> instances, ReadOnlySpan<float> times)
    {
        foreach (var (control, motion) in moves)
        {
            for (var i = 0; i < times.Length; i++)
                instances[i].SetMove(control, motion.At(times[i]));
        }

        foreach (var (control, motion) in turns)
        {
            for (var i = 0; i < times.Length; i++)
                instances[i].SetTurn(control, motion.At(times[i]));
        }

        foreach (var (control, motion) in scales)
        {
            for (var i = 0; i < times.Length; i++)
                instances[i].SetScale(control, motion.At(times[i]));
        }

        foreach (var (sw, motion) in switches)
        {
            for (var i = 0; i < times.Length; i++)
                instances[i].SetSwitch(sw, motion.At(times[i]));
        }

        foreach (var (dial, motion) in dials)
        {
            for (var i = 0; i < times.Length; i++)
                instances[i].SetDial(dial, motion.At(times[i]));
        }

        foreach (var (choice, motion) in choices)
        {
            for (var i = 0; i < times.Length; i++)
                instances[i].SetChoice(choice, motion.At(times[i]));
        }
    }

    private static (int, Motion<T>)[] Listed<T>(SortedDictionary<int, Motion<T>> motions)
        where T : struct => [.. motions.Select(motion => (motion.Key, motion.Value))];
}
