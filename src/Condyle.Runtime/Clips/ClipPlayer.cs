using Condyle.Naming;

namespace Condyle.Runtime;

/// <summary>A clip whose names were found in a rig, so that it can pose the rig's instances. It never changes, so threads can share it.</summary>
public sealed class ClipPlayer
{
    private const int MostSuggestions = 3;

    private readonly List<(int Control, VectorTrack Track)> moves = [];
    private readonly List<(int Control, TurnTrack Track)> turns = [];
    private readonly List<(int Control, VectorTrack Track)> scales = [];
    private readonly List<(int Switch, SwitchTrack Track)> switches = [];

    /// <summary>Finds what a clip moves in a rig.</summary>
    /// <param name="rig">The rig to pose.</param>
    /// <param name="clip">The clip to play.</param>
    /// <exception cref="BadInputException">
    /// The clip has no keys, keys a control or switch that the rig doesn't have, keys a switch by two of its names, or changes a locked channel.
    /// </exception>
    public ClipPlayer(CompiledRig rig, Clip clip)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(clip);
        (Rig, Clip) = (rig, clip);
        if (clip.IsEmpty)
            throw clip.Wrong("has no keys", "Key at least one control or switch");

        var controls = rig.Controls.ToDictionary(control => control.Name, control => control.Index, StringComparer.Ordinal);
        Bind(clip.Moves, controls, moves);
        Bind(clip.Turned, controls, turns);
        Bind(clip.Scales, controls, scales);
        BindSwitches();
        foreach (var name in clip.SteppedNames)
        {
            if (!clip.Moves.ContainsKey(name) && !clip.Turned.ContainsKey(name) && !clip.Scales.ContainsKey(name) && !clip.Switches.ContainsKey(name))
                throw clip.Wrong("is stepped but has no key", "Key it, or don't say that it is stepped", name);
        }
    }

    /// <summary>The rig whose instances it poses.</summary>
    public CompiledRig Rig { get; }

    /// <summary>The clip that it plays.</summary>
    public Clip Clip { get; }

    /// <summary>Sets the controls and switches that the clip keys; the others stay as they are. Evaluate afterwards. Allocates nothing.</summary>
    /// <param name="instance">An instance of <see cref="Rig"/>.</param>
    /// <param name="time">Seconds; before the clip its first keys hold, after it its last.</param>
    public void Pose(RigInstance instance, float time)
    {
        ArgumentNullException.ThrowIfNull(instance);
        foreach (var (control, track) in moves)
            instance.SetMove(control, track.At(time));
        foreach (var (control, track) in turns)
            instance.SetTurn(control, track.At(time));
        foreach (var (control, track) in scales)
            instance.SetScale(control, track.At(time));
        foreach (var (sw, track) in switches)
            instance.SetSwitch(sw, track.At(time));
    }

    private void Bind<TTrack, T>(IReadOnlyDictionary<string, TTrack> tracks, Dictionary<string, int> controls, List<(int, TTrack)> bound)
        where TTrack : Track<T>
        where T : struct
    {
        foreach (var (name, track) in tracks)
        {
            var control = Find(name, "control", track.Times[0], controls);
            foreach (var (channel, at) in track.Uses)
            {
                if (Rig.Controls[control].Locked.HasFlag(channel))
                    throw Clip.Wrong($"changes its {ChannelNames.Say(channel)}, which the rig locks", "Unlock the channel in the rig, or drop the key", name, at);
            }

            bound.Add((control, track));
        }
    }

    private void Bind(IReadOnlyDictionary<string, VectorTrack> tracks, Dictionary<string, int> controls, List<(int, VectorTrack)> bound) =>
        Bind<VectorTrack, System.Numerics.Vector3>(tracks, controls, bound);

    private void Bind(IReadOnlyDictionary<string, TurnTrack> tracks, Dictionary<string, int> controls, List<(int, TurnTrack)> bound) =>
        Bind<TurnTrack, System.Numerics.Quaternion>(tracks, controls, bound);

    private void BindSwitches()
    {
        var names = Rig.Switches
            .SelectMany(sw => sw.AlsoKnownAs.Prepend(sw.Name).Select(name => (name, sw.Index)))
            .ToDictionary(pair => pair.name, pair => pair.Index, StringComparer.Ordinal);
        var taken = new Dictionary<int, string>();
        foreach (var (name, track) in Clip.Switches)
        {
            var sw = Find(name, "switch", track.Times[0], names);
            if (!taken.TryAdd(sw, name))
                throw Clip.Wrong($"is the same switch as '{taken[sw]}', and both have keys", "Key it by one of its names", name, track.Times[0]);
            switches.Add((sw, track));
        }
    }

    private int Find(string name, string kind, float at, Dictionary<string, int> known)
    {
        if (known.TryGetValue(name, out var index))
            return index;
        var nearest = NearestNames.To(name, known.Keys, MostSuggestions);
        throw Clip.Wrong(
            $"is no {kind} of the rig '{Rig.Name}'",
            nearest.Count > 0 ? $"The nearest: {string.Join(", ", nearest.Select(near => $"'{near}'"))}" : $"The rig has no {kind} at all",
            name,
            at);
    }
}
