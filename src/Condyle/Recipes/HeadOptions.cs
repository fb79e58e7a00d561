using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>What a head that looks is called, and how far it looks. What isn't said keeps its default.</summary>
public sealed record HeadOptions
{
    /// <summary>The name of the control that it looks at.</summary>
    public string Look { get => LookFact.ToString(); init => LookFact = value; }

    /// <summary>The name of the switch that gives the head from its own turn, at 0, to looking, at 1.</summary>
    public string Switch { get => SwitchFact.ToString(); init => SwitchFact = value; }

    /// <summary>How far in front of the head that control stands, in metres.</summary>
    public float LookDistance { get => LookDistanceFact.OrDefault(); init => LookDistanceFact = value; }

    internal Text LookFact { get; private set; } = "look";

    internal Text SwitchFact { get; private set; } = "aim";

    internal Fact<float> LookDistanceFact { get; private set; } = 1f;

    internal static HeadOptions Open(RigDraft _) => new()
    {
        LookFact = Text.Open,
        SwitchFact = Text.Open,
        LookDistanceFact = Fact<float>.Open,
    };
}
