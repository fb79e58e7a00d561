using System.Globalization;
using System.Numerics;
using Condyle.Naming;

namespace Condyle.Runtime;

/// <summary>Finds in a rig what a clip keys, and checks that the rig lets it.</summary>
internal sealed class ClipBinding
{
    private const int MostSuggestions = 3;

    private readonly CompiledRig rig;
    private readonly Clip clip;
    private readonly Dictionary<string, int> controls;
    private readonly List<(string Control, Channels Channel, float At)> locked = [];

    public ClipBinding(CompiledRig rig, Clip clip)
    {
        (this.rig, this.clip) = (rig, clip);
        controls = rig.Controls.ToDictionary(control => control.Name, control => control.Index, StringComparer.Ordinal);
    }

    /// <exception cref="BadInputException">The clip doesn't fit the rig.</exception>
    public void Into(RigMotion motion)
    {
        if (clip.IsEmpty)
            throw clip.Wrong("has no keys", "Key at least one control, switch, dial or choice");
        Bind<VectorTrack, Vector3>(clip.Moves, motion.Moves);
        Bind<TurnTrack, Quaternion>(clip.Turned, motion.Turns);
        Bind<VectorTrack, Vector3>(clip.Scales, motion.Scales);
        RefuseLocked();
        BindSettings(motion);
        foreach (var (name, mode) in clip.Modes)
        {
            if (!clip.Moves.ContainsKey(name) && !clip.Turned.ContainsKey(name) && !clip.Scales.ContainsKey(name)
                && !clip.Switches.ContainsKey(name) && !clip.Dials.ContainsKey(name) && !clip.Choices.ContainsKey(name))
            {
                var how = mode == Interpolation.Step ? "stepped" : "splined";
                throw clip.Wrong($"is {how} but has no key", $"Key it, or don't say that it is {how}", name);
            }
        }
    }

    private void Bind<TTrack, T>(IReadOnlyDictionary<string, TTrack> tracks, SortedDictionary<int, Motion<T>> bound)
        where TTrack : Track<T>
        where T : struct
    {
        foreach (var (name, track) in tracks)
        {
            var control = Find(name, "control", track.Times[0], controls);
            foreach (var (channel, at) in track.Uses)
            {
                if (rig.Controls[control].Locked.HasFlag(channel))
                    locked.Add((name, channel, at));
            }

            bound.Add(control, track);
        }
    }

    /// <summary>Says all of them at once: who mends a clip would else meet them one by one.</summary>
    private void RefuseLocked()
    {
        if (locked.ToArray() is not [var (control, channel, at), .. var others])
            return;
        throw clip.Wrong(
            $"changes its {ChannelNames.Say(channel)}, which the rig locks{ChannelNames.AndLocked([.. others.Select(use => (use.Control, use.Channel))])}",
            others.Length == 0 ? "Unlock the channel in the rig, or drop the key" : "Unlock the channels in the rig, or drop the keys",
            control,
            at);
    }

    private void BindSettings(RigMotion motion)
    {
        var named = Named(rig.Switches.Select(sw => (sw.Name, sw.AlsoKnownAs)));
        foreach (var (_, sw, track) in Bound<NumberTrack, float>(clip.Switches, "switch", named))
            motion.Switches.Add(sw, track);

        named = Named(rig.Dials.Select(dial => (dial.Name, dial.AlsoKnownAs)));
        foreach (var (name, dial, track) in Bound<NumberTrack, float>(clip.Dials, "dial", named))
        {
            var (least, most) = (rig.Dials[dial].From, rig.Dials[dial].To);
            foreach (var (value, at) in track.Values.Zip(track.Times))
            {
                if (value < least || value > most)
                    throw clip.Wrong(string.Create(CultureInfo.InvariantCulture, $"is set to {value}"), string.Create(CultureInfo.InvariantCulture, $"The dial goes from {least} to {most}"), name, at);
            }

            motion.Dials.Add(dial, track);
        }

        named = Named(rig.Choices.Select(choice => (choice.Name, choice.AlsoKnownAs)));
        foreach (var (name, choice, track) in Bound<Track<PickedOption>, PickedOption>(clip.Choices, "choice", named))
        {
            var options = Named(rig.Choices[choice].Options.Select(option => (option, (IReadOnlyList<string>)[])));
            var picks = new Track<int>();
            foreach (var (picked, at) in track.Values.Zip(track.Times))
                picks.TryAdd(at, options.TryGetValue(picked.Name ?? "", out var option) ? option : throw NoSuchOption(name, picked.Name, options.Keys, at), Channels.None);
            motion.Choices.Add(choice, picks);
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
                throw clip.Wrong($"is the same {kind} as '{taken[index]}', and both have keys", "Key it by one of its names", name, track.Times[0]);
            yield return (name, index, track);
        }
    }

    private BadInputException NoSuchOption(string choice, string? option, IEnumerable<string> options, float at) =>
        clip.Wrong($"picks '{option}', which is none of its options", $"They are {string.Join(", ", options.Select(each => $"'{each}'"))}", choice, at);

    private int Find(string name, string kind, float at, Dictionary<string, int> known)
    {
        if (known.TryGetValue(name, out var index))
            return index;
        var nearest = NearestNames.To(name, known.Keys, MostSuggestions);
        throw clip.Wrong(
            $"is no {kind} of the rig '{rig.Name}'",
            nearest.Count > 0 ? $"The nearest: {string.Join(", ", nearest.Select(near => $"'{near}'"))}" : $"The rig has no {kind} at all",
            name,
            at);
    }
}
