using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>What a foot that rolls is called, and how far it rolls. What isn't said keeps its default.</summary>
public sealed record FootRollOptions
{
    /// <summary>What the foot is called in names of groups, without its side.</summary>
    public string Name { get => NameFact.ToString(); init => NameFact = value; }

    /// <summary>The name of the dial on the leg's goal.</summary>
    public string Dial { get => DialFact.ToString(); init => DialFact = value; }

    /// <summary>How far it rolls back over the heel, in degrees, above zero.</summary>
    public float HeelDegrees { get => HeelDegreesFact.OrDefault(); init => HeelDegreesFact = value; }

    /// <summary>How far it rolls over the ball, in degrees, above zero, before it goes on over the tip of the toes.</summary>
    public float BallDegrees { get => BallDegreesFact.OrDefault(); init => BallDegreesFact = value; }

    /// <summary>How far it rolls over the tip of the toes, in degrees, above zero, on top of what it has rolled over the ball.</summary>
    public float TipDegrees { get => TipDegreesFact.OrDefault(); init => TipDegreesFact = value; }

    internal Text NameFact { get; private set; } = "foot";

    internal Text DialFact { get; private set; } = "roll";

    internal Fact<float> HeelDegreesFact { get; private set; } = 60f;

    internal Fact<float> BallDegreesFact { get; private set; } = 35f;

    internal Fact<float> TipDegreesFact { get; private set; } = 55f;

    internal static FootRollOptions Open(RigDraft _) => new()
    {
        NameFact = Text.Open,
        DialFact = Text.Open,
        HeelDegreesFact = Fact<float>.Open,
        BallDegreesFact = Fact<float>.Open,
        TipDegreesFact = Fact<float>.Open,
    };
}
