using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>What a limb has besides its bones: names of its handles, and what its IK can do. What isn't said is left out or keeps its default.</summary>
public sealed record LimbOptions
{
    private Text? goal;
    private Text? pole;
    private Fact<float>? softness;

    /// <summary>The name of the control that the tip reaches, without its side; the limb's name and <c>goal</c> where none is said.</summary>
    public string Goal { get => GoalFact.ToString(); init => GoalFact = value; }

    /// <summary>The name of the control that the bend faces, without its side; the limb's name and <c>pole</c> where none is said.</summary>
    public string Pole { get => PoleFact.ToString(); init => PoleFact = value; }

    /// <summary>How far the pole stands from the bend, in metres, above zero.</summary>
    public float PoleDistance { get => PoleDistanceFact.OrDefault(); init => PoleDistanceFact = value; }

    /// <summary>The name of the switch that gives the limb from IK, at 0, to FK, at 1.</summary>
    public string Switch { get => SwitchFact.ToString(); init => SwitchFact = value; }

    /// <summary>Whether FK has the limb at rest.</summary>
    public bool StartsInFk { get => StartsInFkFact.OrDefault(); init => StartsInFkFact = value; }

    /// <summary>Whether the goal has a switch <c>stretch</c> by which bones lengthen to reach it.</summary>
    public bool Stretches { get => StretchesFact.OrDefault(); init => StretchesFact = value; }

    /// <summary>To how many times their length bones stretch at most, 1 or more.</summary>
    public float MostStretch { get => MostStretchFact.OrDefault(); init => MostStretchFact = value; }

    /// <summary>The last part of the reach, in metres, that is approached softly; 0 for none.</summary>
    public float Softness { get => SoftnessFact.OrDefault(); init => SoftnessFact = value; }

    /// <summary>Whether the goal has a dial <c>bend</c>, in degrees, that turns the plane of the bend.</summary>
    public bool TurnsPlane { get => TurnsPlaneFact.OrDefault(); init => TurnsPlaneFact = value; }

    /// <summary>Whether the goal's axes lie along the world's, so that its Y lifts it, rather than along those of the tip's joint.</summary>
    public bool GoalAlongWorld { get => GoalAlongWorldFact.OrDefault(); init => GoalAlongWorldFact = value; }

    /// <summary>Whether labels show which of IK and FK has the limb.</summary>
    public bool HasLabels { get => HasLabelsFact.OrDefault(); init => HasLabelsFact = value; }

    internal Text GoalFact { get => goal ?? ""; private set => goal = value; }

    internal Text PoleFact { get => pole ?? ""; private set => pole = value; }

    internal Fact<float> PoleDistanceFact { get; private set; } = 0.4f;

    internal Text SwitchFact { get; private set; } = "fk";

    internal Fact<bool> StartsInFkFact { get; private set; } = false;

    internal Fact<bool> StretchesFact { get; private set; } = false;

    internal Fact<float> MostStretchFact { get; private set; } = 1.5f;

    internal Fact<float> SoftnessFact { get => softness ?? 0f; private set => softness = value; }

    internal bool IsSoft => softness is not null;

    internal Fact<bool> TurnsPlaneFact { get; private set; } = false;

    internal Fact<bool> GoalAlongWorldFact { get; private set; } = false;

    internal Fact<bool> HasLabelsFact { get; private set; } = true;

    internal Text NameOfGoal(Text limb) => goal ?? limb + "_goal";

    internal Text NameOfPole(Text limb) => pole ?? limb + "_pole";

    /// <summary>The same with names for the goal and the pole where none are said.</summary>
    internal LimbOptions Named(Text goal, Text pole) => this with { GoalFact = this.goal ?? goal, PoleFact = this.pole ?? pole };

    internal static LimbOptions Open(RigDraft _) => new()
    {
        GoalFact = Text.Open,
        PoleFact = Text.Open,
        PoleDistanceFact = Fact<float>.Open,
        SwitchFact = Text.Open,
        StartsInFkFact = Fact<bool>.Open,
        StretchesFact = Fact<bool>.Open,
        MostStretchFact = Fact<float>.Open,
        SoftnessFact = Fact<float>.Open,
        TurnsPlaneFact = Fact<bool>.Open,
        GoalAlongWorldFact = Fact<bool>.Open,
        HasLabelsFact = Fact<bool>.Open,
    };
}
