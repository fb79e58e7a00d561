using System.Globalization;
using Condyle.Naming;

namespace Condyle.Runtime;

/// <summary>A clip whose names were found in a rig, so that it can pose the rig's instances. It never changes, so threads can share it.</summary>
public sealed class ClipPlayer
{
    private const int MostSuggestions = 3;

    private readonly List<(int Control, VectorTrack Track)> moves = [];
    private readonly List<(int Control, TurnTrack Track)> turns = [];
    private readonly List<(int Control, VectorTrack Track)> scales = [];
    private readonly List<(int Switch, NumberTrack Track)> switches = [];
    private readonly List<(int Dial, NumberTrack Track)> dials = [];
    private readonly List<(int Choice, PickTrack Track)> choices = [];

    /// <summary>Finds what a clip moves in a rig.</summary>
    /// <param name="rig">The rig to pose.</param>
    /// <param name="clip">The clip to play.</param>
    /// <exception cref="BadInputException">
    /// The clip has no keys, keys a control, switch, dial or choice that the rig doesn't have, keys one of them by two of its names, takes a dial out of its range,
    /// picks an option that isn't there, or changes a locked channel.
    /// </exception>
    public ClipPlayer(CompiledRig rig, Clip clip)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(clip);
        (Rig, Clip) = (rig, clip);
        if (clip.IsEmpty)
            throw clip.Wrong("has no keys", "Key at least one control, switch, dial or choice");

        var controls = rig.Controls.ToDictionary(control => control.Name, control => control.Index, StringComparer.Ordinal);
        Bind(clip.Moves, controls, moves);
        Bind(clip.Turned, controls, turns);
        Bind(clip.Scales, controls, scales);
        BindSettings();
        foreach (var name in clip.SteppedNames)
        {
            if (!clip.Moves.ContainsKey(name) && !clip.Turned.ContainsKey(name) && !clip.Scales.ContainsKey(name)
                && !clip.Switches.ContainsKey(name) && !clip.Dials.ContainsKey(name) && !clip.Choices.ContainsKey(name))
                throw clip.Wrong("is stepped but has no key", "Key it, or don't say that it is stepped", name);
        }
    }

    /// <summary>The rig whose instances it poses.</summary>
    public CompiledRig Rig { get; }

    /// <summary>The clip that it plays.</summary>
    public Clip Clip { get; }

    /// <summary>Sets the controls, switches, dials and choices that the clip keys; the others stay as they are. Evaluate afterwards. Allocates nothing.</summary>
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
        foreach (var (dial, track) in dials)
            instance.SetDial(dial, track.At(time));
        foreach (var (choice, track) in choices)
            instance.SetChoice(choice, track.At(time));
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

    private void BindSettings()
    {
        var named = Named(Rig.Switches.Select(sw => (sw.Name, sw.AlsoKnownAs)));
        foreach (var (name, sw, track) in Bound<NumberTrack, float>(Clip.Switches, "switch", named))
            switches.Add((sw, track));

        named = Named(Rig.Dials.Select(dial => (dial.Name, dial.AlsoKnownAs)));
        foreach (var (name, dial, track) in Bound<NumberTrack, float>(Clip.Dials, "dial", named))
        {
            var (least, most) = (Rig.Dials[dial].From, Rig.Dials[dial].To);
            foreach (var (value, at) in track.Values.Zip(track.Times))
            {
                if (value < least || value > most)
                    throw Clip.Wrong(string.Create(CultureInfo.InvariantCulture, $"is set to {value}"), string.Create(CultureInfo.InvariantCulture, $"The dial goes from {least} to {most}"), name, at);
            }

            dials.Add((dial, track));
        }

        named = Named(Rig.Choices.Select(choice => (choice.Name, choice.AlsoKnownAs)));
        foreach (var (name, choice, track) in Bound<ChoiceTrack, PickedOption>(Clip.Choices, "choice", named))
        {
            var options = Named(Rig.Choices[choice].Options.Select(option => (option, (IReadOnlyList<string>)[])));
            var picks = new PickTrack();
            foreach (var (picked, at) in track.Values.Zip(track.Times))
                picks.TryAdd(at, options.TryGetValue(picked.Name ?? "", out var option) ? option : throw NoSuchOption(name, picked.Name, options.Keys, at), Channels.None);
            choices.Add((choice, picks));
        }
    }

    private static Dictionary<string, int> Named(IEnumerable<(string Name, IReadOnlyList<string> Others)> items) => items
        .SelectMany((item, index) => item.Others.Prepend(item.Name).Select(name => (name, index)))
        .ToDictionary(pair => pair.name, pair => pair.index, StringComparer.Ordinal);

    private IEnumerable<(string Name, int Index, TTrack Track)> Bound<TTrack, T>(IReadOnlyDictionary<string, TTrack> tracks, string kind, Dictionary<string, int> names)
        where TTrack : Track<T>
        where T : struct
    {
        var taken = new Dictionary<int, string>();
        foreach (var (name, track) in tracks)
        {
            var index = Find(name, kind, track.Times[0], names);
            if (!taken.TryAdd(index, name))
                throw Clip.Wrong($"is the same {kind} as '{taken[index]}', and both have keys", "Key it by one of its names", name, track.Times[0]);
            yield return (name, index, track);
        }
    }

    private BadInputException NoSuchOption(string choice, string? option, IEnumerable<string> options, float at) =>
        Clip.Wrong($"picks '{option}', which is none of its options", $"They are {string.Join(", ", options.Select(each => $"'{each}'"))}", choice, at);

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
