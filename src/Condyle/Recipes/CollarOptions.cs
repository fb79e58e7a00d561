using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>What a collar that follows its arm is called, and how far it follows. What isn't said keeps its default.</summary>
public sealed record CollarOptions
{
    /// <summary>What it is called in names of groups, without its side.</summary>
    public string Name { get => NameFact.ToString(); init => NameFact = value; }

    /// <summary>The name of the switch that says how far it follows the arm's goal.</summary>
    public string Switch { get => SwitchFact.ToString(); init => SwitchFact = value; }

    /// <summary>
    /// Which share of the way to the goal it turns at rest, from 0 to 1. A raised arm takes about a quarter of its turn from the collar (common practice, no source);
    /// but going from IK to FK without a match takes out of the arm what the collar follows, so it is 0 where nothing is said.
    /// </summary>
    public float Follows { get => FollowsFact.OrDefault(); init => FollowsFact = value; }

    internal Text NameFact { get; private set; } = "collar";

    internal Text SwitchFact { get; private set; } = "follows";

    internal Fact<float> FollowsFact { get; private set; } = 0f;

    internal static CollarOptions Open(RigDraft _) => new()
    {
        NameFact = Text.Open,
        SwitchFact = Text.Open,
        FollowsFact = Fact<float>.Open,
    };
}
