using System.Globalization;

namespace Condyle.Runtime;

/// <summary>Clips that lie over a clip.</summary>
public sealed partial class Clip
{
    /// <summary>Each layer costs its part of a frame, also where the same clip lies over others many times.</summary>
    // They can lie over each other in a row, and each one is a step down the stack.
    private const int MostLayers = 1_000;

    private readonly List<ClipLayer> layers = [];

    /// <summary>The clips that lie over its own keys, the lowest first.</summary>
    public IReadOnlyList<ClipLayer> Layers => layers;

    /// <summary>
    /// Lays another clip over this one and what was laid over it before. What the other clip doesn't key shows through, and so does what isn't under the layer's control.
    /// The result is a clip like any other: it plays, and it bakes.
    /// </summary>
    /// <param name="layer">The other clip, and how it lies over this one.</param>
    /// <returns>The clip.</returns>
    /// <exception cref="BadInputException">The layer's clip is this one or has it among its own layers, or there are more than 1 000 layers, those of its layers counted.</exception>
    public Clip Layer(ClipLayer layer)
    {
        ArgumentNullException.ThrowIfNull(layer);
        if (layer.Clip.Holds(this, []))
            throw Wrong($"would lie over itself, as a layer of '{layer.Clip.Name}'", "Begin a new clip and lay both over it");
        layers.Add(layer);
        try
        {
            CheckLayers();
        }
        catch (BadInputException)
        {
            layers.Remove(layer);
            throw;
        }

        return this;
    }

    /// <summary>Lays another clip over this one from its start, by the same weight all along.</summary>
    /// <param name="clip">The other clip.</param>
    /// <param name="under">The control that it is for, with all controls under it; null: all controls.</param>
    /// <param name="weight">From 0, which leaves this clip as it is, to 1.</param>
    /// <param name="blend">Whether it replaces what lies below, or comes on top of it.</param>
    /// <returns>The clip.</returns>
    public Clip Layer(Clip clip, string? under = null, float weight = 1, LayerBlend blend = LayerBlend.Override)
    {
        ArgumentNullException.ThrowIfNull(clip);
        return weight is >= 0 and <= 1
            ? Layer(new ClipLayer(clip) { Under = under, Blend = blend }.Weight((0, weight)))
            : throw Wrong(string.Create(CultureInfo.InvariantCulture, $"has a layer of weight {weight}"), "A weight goes from 0 to 1", clip.Name);
    }

    /// <summary>Refuses more layers than a clip can have; a layer's clip can have got further ones since it was laid over this one.</summary>
    internal void CheckLayers()
    {
        if (LayerCount([], 0) > MostLayers)
            throw Wrong($"has more than {MostLayers} layers, those of its layers counted", "Lay each clip over it once, or bake what repeats into a clip of its own");
    }

    private bool Holds(Clip other, HashSet<Clip> seen) => this == other || (seen.Add(this) && layers.Any(layer => layer.Clip.Holds(other, seen)));

    private long LayerCount(Dictionary<Clip, long> known, int deep)
    {
        if (deep > MostLayers)
            return MostLayers + 1;
        if (!known.TryGetValue(this, out var count))
            known[this] = count = Math.Min(layers.Sum(layer => 1 + layer.Clip.LayerCount(known, deep + 1)), MostLayers + 1);
        return count;
    }
}
