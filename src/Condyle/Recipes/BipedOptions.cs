using System.Numerics;
using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>What a biped's parts are like, and what it has besides. What isn't said keeps its default.</summary>
public sealed record BipedOptions
{
    /// <summary>The name of the control that moves all of it.</summary>
    public string World { get => WorldFact.ToString(); init => WorldFact = value; }

    /// <summary>The name of the control under it that shifts the character against the way that it goes.</summary>
    public string Offset { get => OffsetFact.ToString(); init => OffsetFact = value; }

    /// <summary>What the spine is like.</summary>
    public SpineOptions Spine { get => SpineFact.OrDefault(); init => SpineFact = value; }

    /// <summary>What the head is like.</summary>
    public HeadOptions Head { get => HeadFact.OrDefault(); init => HeadFact = value; }

    /// <summary>What the eyes are like.</summary>
    public EyesOptions Eyes { get => EyesFact.OrDefault(); init => EyesFact = value; }

    /// <summary>What the collars are like.</summary>
    public CollarOptions Collar { get => CollarFact.OrDefault(); init => CollarFact = value; }

    /// <summary>What the arms are like; their goals are <c>hand</c> and their poles <c>elbow_pole</c> where nothing else is said.</summary>
    public LimbOptions Arm { get => ArmFact.OrDefault(); init => ArmFact = value; }

    /// <summary>What the fingers are like.</summary>
    public FingersOptions Fingers { get => FingersFact.OrDefault(); init => FingersFact = value; }

    /// <summary>What the legs are like; their goals are <c>foot</c> and their poles <c>knee_pole</c> where nothing else is said. Without it, feet move along the world's axes.</summary>
    public LimbOptions Leg { get => LegFact.OrDefault(); init => LegFact = value; }

    /// <summary>How the feet roll.</summary>
    public FootRollOptions FootRoll { get => FootRollFact.OrDefault(); init => FootRollFact = value; }

    /// <summary>Where the heels meet the ground, in metres from the ankles along the world's axes at rest; below and a little behind them where nothing is said.</summary>
    public Vector3? Heel { get => HeelFact.OrDefault(); init => HeelFact = value; }

    /// <summary>Where the toes end on the ground, in metres from the toes' joints along the world's axes at rest; a little in front of them where nothing is said.</summary>
    public Vector3? Tip { get => TipFact.OrDefault(); init => TipFact = value; }

    /// <summary>Whether hands, feet, poles, the look and turns ride the customary spaces.</summary>
    public bool HasSpaces { get => HasSpacesFact.OrDefault(); init => HasSpacesFact = value; }

    /// <summary>Whether turns are limited to what a human can do, about those own axes of a joint that lie along a human's.</summary>
    public bool HasLimits { get => HasLimitsFact.OrDefault(); init => HasLimitsFact = value; }

    /// <summary>How large the controls' shapes are, beside those that go by the skeleton's height.</summary>
    public float ShapeSize { get => ShapeSizeFact.OrDefault(); init => ShapeSizeFact = value; }

    internal Text WorldFact { get; private set; } = "world";

    internal Text OffsetFact { get; private set; } = "offset";

    internal Fact<SpineOptions> SpineFact { get; private set; } = new SpineOptions();

    internal Fact<HeadOptions> HeadFact { get; private set; } = new HeadOptions();

    internal Fact<EyesOptions> EyesFact { get; private set; } = new EyesOptions();

    internal Fact<CollarOptions> CollarFact { get; private set; } = new CollarOptions();

    internal Fact<LimbOptions> ArmFact { get; private set; } = new LimbOptions();

    internal Fact<FingersOptions> FingersFact { get; private set; } = new FingersOptions();

    internal Fact<LimbOptions> LegFact { get; private set; } = CustomaryLeg;

    internal Fact<FootRollOptions> FootRollFact { get; private set; } = new FootRollOptions();

    internal Fact<Vector3?> HeelFact { get; private set; } = (Vector3?)null;

    internal Fact<Vector3?> TipFact { get; private set; } = (Vector3?)null;

    internal Fact<bool> HasSpacesFact { get; private set; } = true;

    internal Fact<bool> HasLimitsFact { get; private set; } = true;

    internal Fact<float> ShapeSizeFact { get; private set; } = 1f;

    internal static LimbOptions CustomaryLeg { get; } = new() { GoalAlongWorld = true };

    internal static BipedOptions Open(RigDraft _) => new()
    {
        WorldFact = Text.Open,
        OffsetFact = Text.Open,
        SpineFact = Fact<SpineOptions>.Open,
        HeadFact = Fact<HeadOptions>.Open,
        EyesFact = Fact<EyesOptions>.Open,
        CollarFact = Fact<CollarOptions>.Open,
        ArmFact = Fact<LimbOptions>.Open,
        FingersFact = Fact<FingersOptions>.Open,
        LegFact = Fact<LimbOptions>.Open,
        FootRollFact = Fact<FootRollOptions>.Open,
        HeelFact = Fact<Vector3?>.Open,
        TipFact = Fact<Vector3?>.Open,
        HasSpacesFact = Fact<bool>.Open,
        HasLimitsFact = Fact<bool>.Open,
        ShapeSizeFact = Fact<float>.Open,
    };
}
