using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <summary>Which joints of a skeleton make a biped that faces +Z; between those that are named, the chains find the rest. What isn't there is left out.</summary>
public sealed record BipedJoints
{
    /// <summary>The joint above the pelvis by which the engine reads the way that the character goes; none where the pelvis is the first.</summary>
    public Joint? Root { get => RootFact.OrDefault(); init => RootFact = value; }

    /// <summary>Where the spine begins and the legs hang.</summary>
    [TakesOpen]
    public required Joint Pelvis { get; init; }

    /// <summary>Where the spine ends; the arms and the neck hang from it.</summary>
    [TakesOpen]
    public required Joint Chest { get; init; }

    /// <summary>The neck's first joint.</summary>
    public Joint? Neck { get => NeckFact.OrDefault(); init => NeckFact = value; }

    /// <summary>The head.</summary>
    [TakesOpen]
    public required Joint Head { get; init; }

    /// <summary>The eyes.</summary>
    public JointPair? Eyes { get => EyesFact.OrDefault(); init => EyesFact = value; }

    /// <summary>The collars, which carry the arms.</summary>
    public JointPair? Collar { get => CollarFact.OrDefault(); init => CollarFact = value; }

    /// <summary>Where the arms begin.</summary>
    public required JointPair Shoulder { get => ShoulderFact.OrDefault(); init => ShoulderFact = value; }

    /// <summary>Where the arms end.</summary>
    public required JointPair Wrist { get => WristFact.OrDefault(); init => WristFact = value; }

    /// <summary>The fingers of each hand, from the thumb to the little finger.</summary>
    [TakesOpen]
    public JointSetPair[] Fingers { get; init; } = [];

    /// <summary>Where the legs begin.</summary>
    public required JointPair Hip { get => HipFact.OrDefault(); init => HipFact = value; }

    /// <summary>Where the legs end.</summary>
    public required JointPair Ankle { get => AnkleFact.OrDefault(); init => AnkleFact = value; }

    /// <summary>The toes, at the balls of the feet.</summary>
    public JointPair? Toes { get => ToesFact.OrDefault(); init => ToesFact = value; }

    /// <summary>The twist joints of the upper arms.</summary>
    public JointSetPair? ShoulderTwists { get => ShoulderTwistsFact.OrDefault(); init => ShoulderTwistsFact = value; }

    /// <summary>The twist joints of the forearms.</summary>
    public JointSetPair? ElbowTwists { get => ElbowTwistsFact.OrDefault(); init => ElbowTwistsFact = value; }

    /// <summary>The twist joints of the thighs.</summary>
    public JointSetPair? HipTwists { get => HipTwistsFact.OrDefault(); init => HipTwistsFact = value; }

    /// <summary>The twist joints of the shins.</summary>
    public JointSetPair? KneeTwists { get => KneeTwistsFact.OrDefault(); init => KneeTwistsFact = value; }

    internal Fact<Joint?> RootFact { get; private set; } = (Joint?)null;

    internal Fact<Joint?> NeckFact { get; private set; } = (Joint?)null;

    internal Fact<JointPair?> EyesFact { get; private set; } = (JointPair?)null;

    internal Fact<JointPair?> CollarFact { get; private set; } = (JointPair?)null;

    internal Fact<JointPair> ShoulderFact { get; private set; }

    internal Fact<JointPair> WristFact { get; private set; }

    internal Fact<JointPair> HipFact { get; private set; }

    internal Fact<JointPair> AnkleFact { get; private set; }

    internal Fact<JointPair?> ToesFact { get; private set; } = (JointPair?)null;

    internal Fact<JointSetPair?> ShoulderTwistsFact { get; private set; } = (JointSetPair?)null;

    internal Fact<JointSetPair?> ElbowTwistsFact { get; private set; } = (JointSetPair?)null;

    internal Fact<JointSetPair?> HipTwistsFact { get; private set; } = (JointSetPair?)null;

    internal Fact<JointSetPair?> KneeTwistsFact { get; private set; } = (JointSetPair?)null;
}
