using System.Globalization;
using System.Numerics;
using Condyle.Runtime.Gltf.Reading;
using Condyle.Runtime.Matching;

namespace Condyle.Runtime.Clips.Files;

/// <summary>Makes tracks of a clip from keys of a file. What a file rounds away from rest on a locked channel, or out of a range, is brought back; what is more is an error.</summary>
internal sealed class ControlTracks(CompiledRig rig, Clip clip)
{
    private const float SameMetres = 1e-5f, SameDegrees = 0.02f, SameFactor = 1e-5f, SameSlope = 1e-3f;

    /// <summary>How far a switch or a dial may be out of its range, as a share of it.</summary>
    private const float SameShare = 1e-4f;

    private readonly List<LockedValue> refused = [];

    public void Move(int control, Keys<Vector3> keys, JsonSpot spot) => Vector(control, keys, spot, Channels.Move, Vector3.Zero, SameMetres, clip.Take);

    public void Scale(int control, Keys<Vector3> keys, JsonSpot spot) => Vector(control, keys, spot, Channels.Scale, Vector3.One, SameFactor, clip.TakeScale);

    public void Turn(int control, Keys<Quaternion> keys, JsonSpot spot)
    {
        var (name, locked) = (rig.Controls[control].Name, rig.Controls[control].Locked & Channels.Turn);
        foreach (var (key, value) in keys.Values.Index())
        {
            if (!(value.Length() > 1e-6f))
                throw spot.Wrong($"turns '{name}' by a zero quaternion at {Say(keys.Times[key])} s", "Export the animation again");
            var angles = locked == Channels.None ? default : WithLeast(locked, Angles.Of(((Evaluation.Quaterniond)value).Normalized()));
            foreach (var channel in ChannelNames.Each(locked))
            {
                if (Math.Abs(angles[AxisOf(channel)]) > SameDegrees)
                    Refuse(spot, name, channel, keys.Times[key], $"{Say(angles[AxisOf(channel)])}°");
            }
        }

        if (locked == Channels.Turn)
            return;
        clip.Take(name, keys.Mode == Interpolation.Spline
            ? keys.Fill(new TurnTrack { KeepsSigns = true })
            : keys.Select(Quaternion.Normalize).Fill(new TurnTrack()));
    }

    /// <summary>Of the two ways in which a turn comes apart, the one that turns less about what is locked.</summary>
    private static Angles WithLeast(Channels locked, Angles angles)
    {
        return Most(angles.Other) < Most(angles) - SameDegrees ? angles.Other : angles;

        double Most(Angles each) => ChannelNames.Each(locked).Max(channel => Math.Abs(each[AxisOf(channel)]));
    }

    public void Switch(string name, Keys<float> keys, JsonSpot spot) => clip.TakeSwitch(name, Ranged(name, keys, 0, 1, "A switch", spot).Fill(new NumberTrack()));

    public void Dial(int dial, string name, Keys<float> keys, JsonSpot spot) =>
        clip.TakeDial(name, Ranged(name, keys, rig.Dials[dial].From, rig.Dials[dial].To, "The dial", spot).Fill(new NumberTrack()));

    /// <summary>Each key picks an option by its number, and it stays picked until the next, whatever lies between them in the file.</summary>
    public void Choice(int choice, string name, Keys<float> keys, JsonSpot spot)
    {
        var options = rig.Choices[choice].Options;
        foreach (var (at, value) in keys.Times.Zip(keys.Values))
        {
            if (MathF.Round(value) is var option && !(option >= 0 && option < options.Count))
                throw spot.Wrong($"picks option {Say(value)} of '{name}' at {Say(at)} s", $"They are {string.Join(", ", options.Index().Select(each => $"{each.Index}: '{each.Item}'"))}");
            clip.Choice(name, at, options[(int)MathF.Round(value)]);
        }
    }

    private void Vector(int control, Keys<Vector3> keys, JsonSpot spot, Channels all, Vector3 atRest, float same, Action<string, VectorTrack> take)
    {
        var (name, locked) = (rig.Controls[control].Name, rig.Controls[control].Locked & all);
        foreach (var channel in ChannelNames.Each(locked))
        {
            var axis = (int)AxisOf(channel);
            for (var key = 0; key < keys.Values.Length; key++)
            {
                if (Math.Abs(keys.Values[key][axis] - atRest[axis]) > same)
                    Refuse(spot, name, channel, keys.Times[key], Say(keys.Values[key][axis]));
                keys.Values[key][axis] = atRest[axis];
                if (keys.Slopes is not { } slopes)
                    continue;
                if (Math.Max(Math.Abs(slopes[key].Into[axis]), Math.Abs(slopes[key].OutOf[axis])) > SameSlope)
                    Refuse(spot, name, channel, keys.Times[key], "a slope");
                slopes[key].Into[axis] = slopes[key].OutOf[axis] = 0;
            }
        }

        if (locked != all)
            take(name, keys.Fill(new VectorTrack()));
    }

    /// <summary>Says what is locked and moves all the same, all of it at once: who mends a clip would else meet it channel by channel.</summary>
    /// <exception cref="BadInputException">There is such a channel.</exception>
    public void RefuseLocked()
    {
        if (refused.ToArray() is not [var first, .. var others])
            return;
        throw first.Spot.Wrong(
            $"gives '{first.Control}' {first.Value} for its {ChannelNames.Say(first.Channel)} at {Say(first.At)} s, which the rig '{rig.Name}' locks{ChannelNames.AndLocked([.. others.Select(other => (other.Control, other.Channel))])}",
            others.Length == 0 ? "Clear that channel where the clip was made, or unlock it in the rig" : "Clear those channels where the clip was made, or unlock them in the rig");
    }

    private static Keys<float> Ranged(string name, Keys<float> keys, float from, float to, string what, JsonSpot spot)
    {
        var same = SameShare * (to - from);
        for (var key = 0; key < keys.Values.Length; key++)
        {
            if (!(keys.Values[key] >= from - same && keys.Values[key] <= to + same))
                throw spot.Wrong($"sets '{name}' to {Say(keys.Values[key])} at {Say(keys.Times[key])} s", $"{what} goes from {Say(from)} to {Say(to)}");
            keys.Values[key] = Math.Clamp(keys.Values[key], from, to);
        }

        return keys;
    }

    private void Refuse(JsonSpot spot, string control, Channels channel, float at, string value)
    {
        if (!refused.Exists(known => known.Control == control && known.Channel == channel))
            refused.Add(new(spot, control, channel, at, value));
    }

    private static Axis AxisOf(Channels channel) => (Axis)(BitOperations.Log2((uint)channel) % 3);

    private static string Say(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private sealed record LockedValue(JsonSpot Spot, string Control, Channels Channel, float At, string Value);
}
