using System.Numerics;
using System.Runtime.InteropServices;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Clips.Files;

/// <summary>A sampler of a file's animation: its times, and its values as the accessor's numbers come to be read (normalised whole numbers and sparse values included).</summary>
internal sealed class Sampler
{
    /// <summary>A spline multiplies slopes by times, and a quaternion's length squares its numbers: beyond this they might leave a float's range.</summary>
    private const float Largest = 1e8f, Longest = 1e6f;

    private readonly GltfFile file;
    private readonly JsonSpot spot;
    private readonly int output;

    private Sampler(GltfFile file, JsonSpot root, JsonSpot spot)
    {
        (this.file, this.spot) = (file, spot);
        var accessors = root["accessors"].Items;
        var input = spot["input"].IndexInto(accessors.Length, "accessors");
        output = spot["output"].IndexInto(accessors.Length, "accessors");
        Mode = spot["interpolation"].Text switch
        {
            null or "LINEAR" => Interpolation.Linear,
            "STEP" => Interpolation.Step,
            "CUBICSPLINE" => Interpolation.Spline,
            { } other => throw spot["interpolation"].Wrong($"is '{other}', which is none of LINEAR, STEP, CUBICSPLINE", "Export the animation again"),
        };
        Kind = accessors[output]["type"].Text;
        Times = TimesOf(accessors[input] with { Node = spot.Node }, input);
        var (values, wanted) = (accessors[output]["count"].Whole(1, int.MaxValue), Times.Length * (Mode == Interpolation.Spline ? 3L : 1));
        if (values != wanted)
            throw spot["output"].Wrong($"has {values} values for {Times.Length} times, and {wanted} are wanted", "Export the animation again");
    }

    public float[] Times { get; }

    public Interpolation Mode { get; }

    /// <summary>VEC3, VEC4, SCALAR, …</summary>
    public string? Kind { get; }

    /// <exception cref="BadInputException">The sampler can't be read.</exception>
    public static Sampler Of(GltfFile file, JsonSpot root, JsonSpot spot) => new(file, root, spot);

    public Keys<Vector3> Vectors() => Keys<Vector3>("VEC3", () => [.. file.Model.LogicalAccessors[output].AsVector3Array()]);

    public Keys<Quaternion> Turns() => Keys<Quaternion>("VEC4", () => [.. file.Model.LogicalAccessors[output].AsQuaternionArray()]);

    public Keys<float> Numbers() => Keys<float>("SCALAR", () => [.. file.Model.LogicalAccessors[output].AsScalarArray()]);

    private Keys<T> Keys<T>(string kind, Func<T[]> read)
        where T : struct
    {
        if (Kind != kind)
            throw spot["output"].Wrong($"holds {Kind} values where {kind} is wanted", "Export the animation again");
        var values = FromLibrary(spot["output"], read);
        if (MemoryMarshal.Cast<T, float>(values).ContainsAnyExceptInRange(-Largest, Largest))
            throw spot["output"].Wrong($"holds a number that is beyond {Largest} or isn't one", "Export the animation again");
        return Mode != Interpolation.Spline
            ? new Keys<T>(Times, values, null, Mode)
            : new Keys<T>(Times, [.. values.Where((_, i) => i % 3 == 1)], [.. Times.Select((_, key) => (values[3 * key], values[(3 * key) + 2]))], Mode);
    }

    /// <summary>The library reports data that it can't read by many exception types, its own and the framework's.</summary>
    private static T FromLibrary<T>(JsonSpot spot, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception problem) when (problem is not (BadInputException or OutOfMemoryException))
        {
            throw spot.Wrong($"can't be read: {problem.Message.ReplaceLineEndings(" ").Trim().TrimEnd('.')}", "Export the animation again", problem);
        }
    }

    private float[] TimesOf(JsonSpot accessor, int index)
    {
        // Without data a time is zero, so there can be one such at most; whatever more is claimed isn't made room for.
        var said = accessor["sparse"] is { Exists: true } sparse ? sparse["count"].Whole(1, int.MaxValue) : 0;
        if (!accessor["bufferView"].Exists && accessor["count"].Whole(1, int.MaxValue) > said + 1)
            throw accessor.Wrong("has times that don't increase, at element 1", "Export the animation again");
        var times = FromLibrary<float[]>(accessor, () => [.. file.Model.LogicalAccessors[index].AsScalarArray()]);
        if (times[^1] > Longest)
            throw accessor.Wrong($"has times beyond {Longest} s", "Export the animation again");
        for (var i = 0; i < times.Length; i++)
        {
            if (!(times[i] >= 0) || (i > 0 && times[i] <= times[i - 1]))
                throw accessor.Wrong($"has times below zero or that don't increase, at element {i}", "Export the animation again");
        }

        return times;
    }
}

/// <summary>Keys of one value, as a file has them. The slopes, into a key and out of it, are there for a spline alone.</summary>
internal sealed record Keys<T>(float[] Times, T[] Values, (T Into, T OutOf)[]? Slopes, Interpolation Mode)
    where T : struct
{
    /// <summary>The keys of one part of the values.</summary>
    public Keys<TPart> Select<TPart>(Func<T, TPart> part)
        where TPart : struct => new(Times, Array.ConvertAll(Values, value => part(value)), Slopes is null ? null : Array.ConvertAll(Slopes, slope => (part(slope.Into), part(slope.OutOf))), Mode);

    public TTrack Fill<TTrack>(TTrack track)
        where TTrack : CurveTrack<T>
    {
        foreach (var (at, value) in Times.Zip(Values))
            track.TryAdd(at, value, Channels.None);
        foreach (var (key, slopes) in (Slopes ?? []).Index())
        {
            track.TrySlope(Times[key], _ => slopes.Into, KeySide.Before);
            track.TrySlope(Times[key], _ => slopes.OutOf, KeySide.After);
        }

        track.Interpolation = Mode;
        return track;
    }
}
