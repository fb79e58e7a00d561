using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>Which space is picked at rest, what the options are called, and what else of a limb or a head rides. What isn't said keeps its default.</summary>
public sealed record SpacesOptions
{
    /// <summary>What is picked at rest and so is the first option; the others follow in the order world, hips, chest, head.</summary>
    public BodySpace First { get => FirstFact.OrDefault(); init => FirstFact = value; }

    /// <summary>Whether a limb's pole can ride its goal, so that the bend goes with the hand or the foot.</summary>
    public bool PoleRides { get => PoleRidesFact.OrDefault(); init => PoleRidesFact = value; }

    /// <summary>Whether a limb's first turn and a head's turn can stay as they lie in the world while the body turns.</summary>
    public bool StaysLevel { get => StaysLevelFact.OrDefault(); init => StaysLevelFact = value; }

    /// <summary>What the option of the world is called.</summary>
    public string World { get => WorldFact.ToString(); init => WorldFact = value; }

    /// <summary>What the option of the hips is called.</summary>
    public string Hips { get => HipsFact.ToString(); init => HipsFact = value; }

    /// <summary>What the option of the chest is called.</summary>
    public string Chest { get => ChestFact.ToString(); init => ChestFact = value; }

    /// <summary>What the option of the head is called.</summary>
    public string Head { get => HeadFact.ToString(); init => HeadFact = value; }

    /// <summary>What the option of a pole that rides its goal is called.</summary>
    public string Goal { get => GoalFact.ToString(); init => GoalFact = value; }

    /// <summary>What the option of a turn that goes with the body is called.</summary>
    public string Body { get => BodyFact.ToString(); init => BodyFact = value; }

    internal Fact<BodySpace> FirstFact { get; private set; } = BodySpace.World;

    internal Fact<bool> PoleRidesFact { get; private set; } = true;

    internal Fact<bool> StaysLevelFact { get; private set; } = true;

    internal Text WorldFact { get; private set; } = "world";

    internal Text HipsFact { get; private set; } = "hips";

    internal Text ChestFact { get; private set; } = "chest";

    internal Text HeadFact { get; private set; } = "head";

    internal Text GoalFact { get; private set; } = "goal";

    internal Text BodyFact { get; private set; } = "body";

    internal static SpacesOptions Open(RigDraft _) => new()
    {
        FirstFact = Fact<BodySpace>.Open,
        PoleRidesFact = Fact<bool>.Open,
        StaysLevelFact = Fact<bool>.Open,
        WorldFact = Text.Open,
        HipsFact = Text.Open,
        ChestFact = Text.Open,
        HeadFact = Text.Open,
        GoalFact = Text.Open,
        BodyFact = Text.Open,
    };
}
