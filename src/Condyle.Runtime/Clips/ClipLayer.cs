using System.Globalization;

namespace Condyle.Runtime;

/// <summary>A clip that lies over another one, for some controls and by a weight.</summary>
/// <example><code>
/// new Clip("walk_and_wave", walk.Seconds)
///     .Layer(walk)
///     .Layer(new ClipLayer(wave) { Under = "chest", StartsAt = 0.5f }.Weight((0, 0), (0.3f, 1), (1.7f, 1), (2, 0)));
/// </code></example>
public sealed class ClipLayer
{
    private readonly NumberTrack weights = new();

    /// <summary>Begins a layer of weight 1 for all controls.</summary>
    /// <param name="clip">The clip that lies over the other one.</param>
    public ClipLayer(Clip clip)
    {
        ArgumentNullException.ThrowIfNull(clip);
        Clip = clip;
    }

    /// <summary>The clip that lies over the other one.</summary>
    public Clip Clip { get; }

    /// <summary>The control that it is for, with all controls under it and their switches, dials and choices; null: all of them.</summary>
    public string? Under { get; init; }

    /// <summary>Whether it replaces what lies below, or comes on top of it.</summary>
    public LayerBlend Blend { get; init; }

    /// <summary>When the layer's clip begins, in seconds of the clip below. Before it, it has no weight.</summary>
    /// <exception cref="BadInputException">It is no finite number.</exception>
    public float StartsAt
    {
        get;
        init => field = float.IsFinite(value) ? value : throw Clip.Wrong("is a layer that begins at no finite time", "Give seconds");
    }

    /// <summary>Adds keys of the weight, which goes in a line between them.</summary>
    /// <param name="keys">Seconds from where the layer's clip begins, and weights from 0 to 1.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="BadInputException">A weight isn't from 0 to 1, a time is no finite number, or there are two keys at one time.</exception>
    public ClipLayer Weight(params ReadOnlySpan<(float At, float Weight)> keys)
    {
        foreach (var (at, weight) in keys)
        {
            if (!(weight is >= 0 and <= 1))
                throw Clip.Wrong(string.Create(CultureInfo.InvariantCulture, $"is a layer of weight {weight}"), "A weight goes from 0 to 1", at: at);
            if (!float.IsFinite(at))
                throw Clip.Wrong("is a layer whose weight has a key at no finite time", "Give seconds");
            if (!weights.TryAdd(at, weight, Channels.None))
                throw Clip.Wrong("is a layer whose weight has two keys at the same time", "Keep one of them", at: at);
        }

        return this;
    }

    /// <summary>When the weight has keys, in seconds of the layer's clip.</summary>
    internal IReadOnlyList<float> WeightTimes => weights.Times;

    /// <summary>The weight at a time of the layer's clip.</summary>
    internal float WeightAt(float time) => time < 0 ? 0 : weights.Times.Count == 0 ? 1 : weights.At(time);
}

/// <summary>How a layer meets what lies below it.</summary>
public enum LayerBlend
{
    /// <summary>By its weight it takes the place of what lies below: moves, scales, switches and dials go there in a line, turns by slerp; a choice is taken from a weight of one half on.</summary>
    Override,

    /// <summary>
    /// What it takes away from rest comes on top by its weight: moves, switches and dials are added, scales multiplied, turns made about the control's axes as what lies below has turned them.
    /// A choice has nothing to add and is taken as in <see cref="Override"/>.
    /// </summary>
    Additive,
}
