using System.Numerics;

namespace Condyle.Runtime;

/// <summary>Takes a value from what lies below to what lies above it, by a weight from 0 to 1.</summary>
internal delegate T Mix<T>(T below, T above, float weight);

/// <summary>A motion over another one.</summary>
internal sealed class LayeredMotion<T>(Motion<T> below, Motion<T> above, ClipLayer layer, Mix<T> mix) : Motion<T>
    where T : struct
{
    public override T At(float time)
    {
        var own = time - layer.StartsAt;
        var weight = layer.WeightAt(own);
        return weight == 0 ? below.At(time) : mix(below.At(time), above.At(own), weight);
    }
}

/// <summary>What nothing below a layer keys stays at rest.</summary>
internal sealed class Still<T>(T value) : Motion<T>
    where T : struct
{
    public override T At(float time) => value;
}

/// <summary>The ways in which layers mix, for each kind of value.</summary>
internal static class Mixes
{
    public static Mix<Vector3> OfMoves(LayerBlend blend) => blend == LayerBlend.Override ? Vector3.Lerp : static (below, above, weight) => below + (above * weight);

    public static Mix<Vector3> OfScales(LayerBlend blend) => blend == LayerBlend.Override ? Vector3.Lerp : static (below, above, weight) => below * Vector3.Lerp(Vector3.One, above, weight);

    public static Mix<Quaternion> OfTurns(LayerBlend blend) => blend == LayerBlend.Override
        ? Quaternion.Slerp
        : static (below, above, weight) => below * Quaternion.Slerp(Quaternion.Identity, above, weight);

    public static Mix<float> OfNumbers(LayerBlend blend, float atRest) => blend == LayerBlend.Override
        ? float.Lerp
        : (below, above, weight) => below + ((above - atRest) * weight);

    public static Mix<int> OfPicks() => static (below, above, weight) => weight >= 0.5f ? above : below;
}
