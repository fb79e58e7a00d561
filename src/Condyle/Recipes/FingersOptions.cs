using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>How fingers curl and spread, as counted on the left: on the right they go as the joints' frames mirror. What isn't said keeps its default.</summary>
public sealed record FingersOptions
{
    private Fact<bool>? allAxesMirror;

    /// <summary>Whether the first finger is a thumb, which curls by its own angle and doesn't spread.</summary>
    public bool HasThumb { get => HasThumbFact.OrDefault(); init => HasThumbFact = value; }

    /// <summary>Whether the hand has a dial <c>spread</c>; without two fingers beside the thumb it has none.</summary>
    public bool Spreads { get => SpreadsFact.OrDefault(); init => SpreadsFact = value; }

    /// <summary>The axis of the joints' own frames about which they curl.</summary>
    public Axis CurlAxis { get => CurlAxisFact.OrDefault(); init => CurlAxisFact = value; }

    /// <summary>How far each joint of a finger turns when all of them curl, in degrees.</summary>
    public float CurlDegrees { get => CurlDegreesFact.OrDefault(); init => CurlDegreesFact = value; }

    /// <summary>How far each joint of the thumb turns when all fingers curl, in degrees.</summary>
    public float ThumbDegrees { get => ThumbDegreesFact.OrDefault(); init => ThumbDegreesFact = value; }

    /// <summary>The axis of the joints' own frames about which fingers spread.</summary>
    public Axis SpreadAxis { get => SpreadAxisFact.OrDefault(); init => SpreadAxisFact = value; }

    /// <summary>How far the outer fingers turn when all spread, in degrees: the one beside the thumb so far, the last one as far the other way.</summary>
    public float SpreadDegrees { get => SpreadDegreesFact.OrDefault(); init => SpreadDegreesFact = value; }

    /// <summary>
    /// Whether all axes of the joints' frames mirror, so that equal turns about any of them make mirror images. Where it isn't said, the frames of both sides at rest tell,
    /// and where those don't, they don't.
    /// </summary>
    public bool AllAxesMirror { get => AllAxesMirrorFact.OrDefault(); init => AllAxesMirrorFact = value; }

    internal Fact<bool> HasThumbFact { get; private set; } = true;

    internal Fact<bool> SpreadsFact { get; private set; } = true;

    internal Fact<Axis> CurlAxisFact { get; private set; } = Axis.X;

    internal Fact<float> CurlDegreesFact { get; private set; } = 80f;

    internal Fact<float> ThumbDegreesFact { get; private set; } = 40f;

    internal Fact<Axis> SpreadAxisFact { get; private set; } = Axis.Z;

    internal Fact<float> SpreadDegreesFact { get; private set; } = 12f;

    internal Fact<bool> AllAxesMirrorFact { get => allAxesMirror ?? false; private set => allAxesMirror = value; }

    internal Fact<bool>? AllAxesMirrorSaid => allAxesMirror;

    internal static FingersOptions Open(RigDraft _) => new()
    {
        HasThumbFact = Fact<bool>.Open,
        SpreadsFact = Fact<bool>.Open,
        CurlAxisFact = Fact<Axis>.Open,
        CurlDegreesFact = Fact<float>.Open,
        ThumbDegreesFact = Fact<float>.Open,
        SpreadAxisFact = Fact<Axis>.Open,
        SpreadDegreesFact = Fact<float>.Open,
        AllAxesMirrorFact = Fact<bool>.Open,
    };
}
