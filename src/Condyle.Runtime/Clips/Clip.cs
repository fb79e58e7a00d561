using System.Globalization;
using System.Numerics;

namespace Condyle.Runtime;

/// <summary>
/// Motion of a rig's controls, switches, dials and choices, by keys. Times are seconds from the clip's start, moves are metres, turns are degrees.
/// Between keys a track goes in a line, turns by the shortest slerp, or holds (<see cref="Stepped"/>), or goes by a spline (<see cref="Splined"/> and the slopes), as glTF 2.0 defines it;
/// before its first key and after its last it holds. What has no key stays at rest. Other clips can be laid over it (<see cref="Layer(ClipLayer)"/>).
/// </summary>
/// <example><code>
/// new Clip("lift_crate", seconds: 4)
///     .Move("pelvis", at: 0).Move("pelvis", at: 1.2f, y: -0.25f, z: 0.05f)
///     .TurnAbout("turn_elbow_left", Axis.X, (0, 0), (1.5f, 70), (4, 0))
///     .Switch("hand_left.fk", (1.9f, 0), (2.1f, 1));
/// </code></example>
/// <remarks>Every method that adds keys throws <see cref="BadInputException"/>, with clip, control and time, for a number that isn't finite, a time outside the clip, and a second key at the same time.</remarks>
public sealed partial class Clip
{
    private readonly SortedDictionary<string, VectorTrack> moves = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, TurnTrack> turns = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, VectorTrack> scales = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, NumberTrack> switches = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, NumberTrack> dials = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, Track<PickedOption>> choices = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, Interpolation> modes = new(StringComparer.Ordinal);
    private readonly List<Marker> markers = [];

    /// <summary>Begins a clip without keys.</summary>
    /// <param name="name">Its name, which becomes the animation's name in the file.</param>
    /// <param name="seconds">Its length in seconds, above zero.</param>
    /// <exception cref="BadInputException">The name is empty, or the length isn't a positive number.</exception>
    public Clip(string name, float seconds)
    {
        Name = name ?? "";
        Seconds = seconds;
        if (string.IsNullOrWhiteSpace(Name))
            throw Wrong("has no name", "Name the clip");
        if (!float.IsFinite(seconds) || seconds <= 0)
            throw Wrong(string.Create(CultureInfo.InvariantCulture, $"is {seconds} seconds long"), "Give a length above zero");
    }

    /// <summary>The clip's name.</summary>
    public string Name { get; }

    /// <summary>The clip's length in seconds.</summary>
    public float Seconds { get; }

    /// <summary>The clip's named moments, in the order in which they were added.</summary>
    public IReadOnlyList<Marker> Markers => markers;

    internal IReadOnlyDictionary<string, VectorTrack> Moves => moves;

    internal IReadOnlyDictionary<string, TurnTrack> Turned => turns;

    internal IReadOnlyDictionary<string, VectorTrack> Scales => scales;

    internal IReadOnlyDictionary<string, NumberTrack> Switches => switches;

    internal IReadOnlyDictionary<string, NumberTrack> Dials => dials;

    internal IReadOnlyDictionary<string, Track<PickedOption>> Choices => choices;

    /// <summary>The file that it was read from; none for a clip in C#.</summary>
    internal string? File { get; init; }

    /// <summary>How it was said that the tracks of a name go from key to key.</summary>
    internal IReadOnlyDictionary<string, Interpolation> Modes => modes;

    /// <summary>Whether it has no key at all, and no layer.</summary>
    internal bool IsEmpty => moves.Count + turns.Count + scales.Count + switches.Count + dials.Count + choices.Count + layers.Count == 0;

    /// <summary>Adds a key of a control's translation from where it rests.</summary>
    /// <param name="control">The control's name.</param>
    /// <param name="at">Seconds, from 0 to the clip's length.</param>
    /// <param name="x">Metres along the X axis of the control's placement.</param>
    /// <param name="y">Metres along its Y axis.</param>
    /// <param name="z">Metres along its Z axis.</param>
    /// <returns>The clip.</returns>
    public Clip Move(string control, float at, float x = 0, float y = 0, float z = 0) =>
        Add(moves, control, at, new Vector3(x, y, z), AreFinite(x, y, z), Used(Channels.MoveX, x, y, z, atRest: 0));

    /// <summary>Adds keys of a control's translation along one axis; the other axes read zero at those keys.</summary>
    /// <param name="control">The control's name.</param>
    /// <param name="axis">An axis of the control's placement.</param>
    /// <param name="keys">Seconds and metres.</param>
    /// <returns>The clip.</returns>
    public Clip MoveAlong(string control, Axis axis, params ReadOnlySpan<(float At, float Metres)> keys)
    {
        foreach (var (at, metres) in keys)
        {
            var move = Vector3.Zero;
            move[(int)axis] = metres;
            Move(control, at, move.X, move.Y, move.Z);
        }

        return this;
    }

    /// <summary>Adds a key of a control's rotation from how it rests, as three angles. From key to key a control turns the short way: set a key between when it turns by half a turn or more.</summary>
    /// <param name="control">The control's name.</param>
    /// <param name="at">Seconds, from 0 to the clip's length.</param>
    /// <param name="x">Degrees about the control's X axis.</param>
    /// <param name="y">Degrees about its Y axis.</param>
    /// <param name="z">Degrees about its Z axis.</param>
    /// <param name="order">Which turn comes first; each turns about the control's own axes as the earlier ones left them.</param>
    /// <returns>The clip.</returns>
    public Clip Turn(string control, float at, float x = 0, float y = 0, float z = 0, TurnOrder order = TurnOrder.XYZ) =>
        Add(turns, control, at, Turns.Of(x, y, z, order), AreFinite(x, y, z), Used(Channels.TurnX, x, y, z, atRest: 0));

    /// <summary>Adds a key of a control's rotation from how it rests.</summary>
    /// <param name="control">The control's name.</param>
    /// <param name="at">Seconds, from 0 to the clip's length.</param>
    /// <param name="rotation">A quaternion of any length above zero; it is brought to unit length.</param>
    /// <returns>The clip.</returns>
    public Clip Turn(string control, float at, Quaternion rotation)
    {
        var length = rotation.Length();
        return length < 1e-6f
            ? throw Wrong("turns by a quaternion of length zero", "Give a quaternion that has a direction", control, at)
            : Add(turns, control, at, Quaternion.Normalize(rotation), float.IsFinite(length), Used(Channels.TurnX, rotation.X, rotation.Y, rotation.Z, atRest: 0));
    }

    /// <summary>Adds keys of a control's rotation about one axis. From key to key it turns the short way: set a key between when it turns by half a turn or more.</summary>
    /// <param name="control">The control's name.</param>
    /// <param name="axis">One of the control's own axes.</param>
    /// <param name="keys">Seconds and degrees.</param>
    /// <returns>The clip.</returns>
    public Clip TurnAbout(string control, Axis axis, params ReadOnlySpan<(float At, float Degrees)> keys)
    {
        foreach (var (at, degrees) in keys)
            Add(turns, control, at, Turns.About(axis, degrees), float.IsFinite(degrees), degrees == 0 ? Channels.None : ChannelNames.Turn(axis));
        return this;
    }

    /// <summary>Adds a key of a control's scale, for a control whose scale is unlocked.</summary>
    /// <param name="control">The control's name.</param>
    /// <param name="at">Seconds, from 0 to the clip's length.</param>
    /// <param name="x">Factor along the control's X axis.</param>
    /// <param name="y">Factor along its Y axis.</param>
    /// <param name="z">Factor along its Z axis.</param>
    /// <returns>The clip.</returns>
    public Clip Scale(string control, float at, float x = 1, float y = 1, float z = 1) =>
        Add(scales, control, at, new Vector3(x, y, z), AreFinite(x, y, z), Used(Channels.ScaleX, x, y, z, atRest: 1));

    /// <summary>Adds a key of a switch.</summary>
    /// <param name="name">The control's name, a dot and the switch's name, for instance <c>hand_left.fk</c>.</param>
    /// <param name="at">Seconds, from 0 to the clip's length.</param>
    /// <param name="value">From 0 to 1.</param>
    /// <returns>The clip.</returns>
    public Clip Switch(string name, float at, float value) => value is < 0 or > 1
        ? throw Wrong(string.Create(CultureInfo.InvariantCulture, $"is set to {value}"), "A switch goes from 0 to 1", name, at)
        : Add(switches, name, at, value, float.IsFinite(value), Channels.None);

    /// <summary>Adds keys of a switch.</summary>
    /// <param name="name">The control's name, a dot and the switch's name, for instance <c>hand_left.fk</c>.</param>
    /// <param name="keys">Seconds, and values from 0 to 1.</param>
    /// <returns>The clip.</returns>
    public Clip Switch(string name, params ReadOnlySpan<(float At, float Value)> keys)
    {
        foreach (var (at, value) in keys)
            Switch(name, at, value);
        return this;
    }

    /// <summary>Adds a key of a dial.</summary>
    /// <param name="name">The control's name, a dot and the dial's name, for instance <c>hand_left.curl</c>.</param>
    /// <param name="at">Seconds, from 0 to the clip's length.</param>
    /// <param name="value">Within the dial's range.</param>
    /// <returns>The clip.</returns>
    public Clip Dial(string name, float at, float value) => Add(dials, name, at, value, float.IsFinite(value), Channels.None);

    /// <summary>Adds keys of a dial.</summary>
    /// <param name="name">The control's name, a dot and the dial's name, for instance <c>hand_left.curl</c>.</param>
    /// <param name="keys">Seconds, and values within the dial's range.</param>
    /// <returns>The clip.</returns>
    public Clip Dial(string name, params ReadOnlySpan<(float At, float Value)> keys)
    {
        foreach (var (at, value) in keys)
            Dial(name, at, value);
        return this;
    }

    /// <summary>Adds a key of a choice. The option stays picked until the next key.</summary>
    /// <param name="name">The control's name, a dot and the choice's name, for instance <c>hand_left.space</c>.</param>
    /// <param name="at">Seconds, from 0 to the clip's length.</param>
    /// <param name="option">The option's name.</param>
    /// <returns>The clip.</returns>
    public Clip Choice(string name, float at, string option) => Add(choices, name, at, new PickedOption(option), isFinite: true, Channels.None);

    /// <summary>Makes every track of a control, or of a switch or dial, hold each key's value until the next key.</summary>
    /// <param name="name">The control, or the switch or dial as <c>hand_left.fk</c>; it needs a key somewhere in the clip.</param>
    /// <returns>The clip.</returns>
    public Clip Stepped(string name) => Go(name, Interpolation.Step);

    /// <summary>
    /// Makes every track of a control, or of a switch or dial, a cubic spline through its keys: at each key it goes the way from the key before to the key after, and it leaves the first key and reaches the last
    /// at rest. A slope that is said of a key (<see cref="MoveSlope"/> and so on) holds there instead.
    /// </summary>
    /// <param name="name">The control, or the switch or dial as <c>hand_left.curl</c>; it needs a key somewhere in the clip.</param>
    /// <returns>The clip.</returns>
    public Clip Splined(string name) => Go(name, Interpolation.Spline);

    /// <summary>Names a moment, for reports and for people who look at the clip.</summary>
    /// <param name="at">Seconds, from 0 to the clip's length.</param>
    /// <param name="name">What begins there.</param>
    /// <returns>The clip.</returns>
    public Clip Mark(float at, string name)
    {
        CheckTime(name, at);
        markers.Add(new Marker(at, name));
        return this;
    }

    /// <summary>What is wrong with this clip, in the one form that all its errors have.</summary>
    internal BadInputException Wrong(string problem, string remedy, string? target = null, float? at = null)
    {
        var clip = string.IsNullOrWhiteSpace(Name) ? "a clip" : $"clip '{Name}'";
        var time = at is { } seconds ? string.Create(CultureInfo.InvariantCulture, $"{seconds:0.####} s") : null;
        return File is null
            ? new(clip, problem, remedy, target, time)
            : new(File, problem, remedy, target, time is null ? clip : $"{clip}, {time}");
    }

    /// <summary>Takes a whole track of a control's moves.</summary>
    internal void Take(string control, VectorTrack track) => moves[control] = Used(track, Vector3.Zero, Channels.MoveX);

    internal void Take(string control, TurnTrack track) => turns[control] = track;

    internal void TakeScale(string control, VectorTrack track) => scales[control] = Used(track, Vector3.One, Channels.ScaleX);

    internal void TakeSwitch(string name, NumberTrack track) => switches[name] = track;

    internal void TakeDial(string name, NumberTrack track) => dials[name] = track;

    private static VectorTrack Used(VectorTrack track, Vector3 atRest, Channels first)
    {
        foreach (var (at, value) in track.Times.Zip(track.Values))
            track.Use(Used(first, value.X, value.Y, value.Z, atRest.X), at);
        return track;
    }

    private Clip Add<TTrack, T>(SortedDictionary<string, TTrack> tracks, string target, float at, T value, bool isFinite, Channels used)
        where TTrack : Track<T>, new()
        where T : struct
    {
        CheckTarget(target, at);
        if (!isFinite)
            throw Wrong("has a key that is no finite number", "Give a finite number", target, at);
        if (!tracks.TryGetValue(target, out var track))
        {
            tracks[target] = track = new TTrack();
            if (modes.TryGetValue(target, out var mode))
                (track as CurveTrack<T>)?.Interpolation = mode;
        }

        return track.TryAdd(at, value, used) ? this : throw Wrong("has two keys at the same time", "Keep one of them", target, at);
    }

    private Clip Go(string name, Interpolation mode)
    {
        modes[name] = mode;
        moves.GetValueOrDefault(name)?.Interpolation = mode;
        scales.GetValueOrDefault(name)?.Interpolation = mode;
        turns.GetValueOrDefault(name)?.Interpolation = mode;
        switches.GetValueOrDefault(name)?.Interpolation = mode;
        dials.GetValueOrDefault(name)?.Interpolation = mode;
        return this;
    }

    private void CheckTarget(string target, float at)
    {
        if (string.IsNullOrWhiteSpace(target))
            throw Wrong("keys something without a name", "Name the control, or the switch, dial or choice as control.name", at: at);
        CheckTime(target, at);
    }

    private static bool AreFinite(float x, float y, float z) => float.IsFinite(x) && float.IsFinite(y) && float.IsFinite(z);

    private static Channels Used(Channels first, float x, float y, float z, float atRest) =>
        (x == atRest ? Channels.None : first)
        | (y == atRest ? Channels.None : (Channels)((int)first << 1))
        | (z == atRest ? Channels.None : (Channels)((int)first << 2));

    private void CheckTime(string target, float at)
    {
        if (!float.IsFinite(at) || at < 0 || at > Seconds)
            throw Wrong(string.Create(CultureInfo.InvariantCulture, $"lies outside the clip, which lasts from 0 to {Seconds:0.####} s"), "Move the key, or make the clip longer", target, at);
    }
}
