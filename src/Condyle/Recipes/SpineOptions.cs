using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>What a spine has besides its joints. What isn't said is left out or keeps its default.</summary>
public sealed record SpineOptions
{
    /// <summary>The name of the control that moves all of it.</summary>
    public string Body { get => BodyFact.ToString(); init => BodyFact = value; }

    /// <summary>The name of the control that turns the pelvis.</summary>
    public string Hips { get => HipsFact.ToString(); init => HipsFact = value; }

    /// <summary>Whether it lies along a curve through controls instead of being turned joint by joint.</summary>
    public bool Curves { get => CurvesFact.OrDefault(); init => CurvesFact = value; }

    /// <summary>Whether the body has a switch <c>stretch</c> by which a spine that curves lengthens.</summary>
    public bool Stretches { get => StretchesFact.OrDefault(); init => StretchesFact = value; }

    internal Text BodyFact { get; private set; } = "body";

    internal Text HipsFact { get; private set; } = "hips";

    internal Fact<bool> CurvesFact { get; private set; } = false;

    internal Fact<bool> StretchesFact { get; private set; } = false;

    internal static SpineOptions Open(RigDraft _) => new()
    {
        BodyFact = Text.Open,
        HipsFact = Text.Open,
        CurvesFact = Fact<bool>.Open,
        StretchesFact = Fact<bool>.Open,
    };
}
