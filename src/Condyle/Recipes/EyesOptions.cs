using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>What eyes are called, and how far they look. What isn't said keeps its default.</summary>
public sealed record EyesOptions
{
    /// <summary>The name of the control that they look at.</summary>
    public string Name { get => NameFact.ToString(); init => NameFact = value; }

    /// <summary>How far in front of the eyes the controls stand, in metres.</summary>
    public float LookDistance { get => LookDistanceFact.OrDefault(); init => LookDistanceFact = value; }

    /// <summary>How far above the head's joint the eyes are, in metres.</summary>
    public float Height { get => HeightFact.OrDefault(); init => HeightFact = value; }

    internal Text NameFact { get; private set; } = "eyes";

    internal Fact<float> LookDistanceFact { get; private set; } = 1f;

    internal Fact<float> HeightFact { get; private set; } = 0.1f;

    internal static EyesOptions Open(RigDraft _) => new()
    {
        NameFact = Text.Open,
        LookDistanceFact = Fact<float>.Open,
        HeightFact = Fact<float>.Open,
    };
}
