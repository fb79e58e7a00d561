namespace Condyle;

/// <summary>Arm and leg of a side of a <see cref="Biped"/>.</summary>
public sealed class BipedSide
{
    internal BipedSide(Limb arm, Collar? collar, Fingers? fingers, Limb leg, FootRoll? foot, LimbSpaces? armSpaces, LimbSpaces? legSpaces)
    {
        (Arm, Collar, Fingers, Leg, Foot, ArmSpaces, LegSpaces) = (arm, collar, fingers, leg, foot, armSpaces, legSpaces);
    }

    /// <summary>The arm.</summary>
    public Limb Arm { get; }

    /// <summary>The collar that carries it; none where it has no joint.</summary>
    public Collar? Collar { get; }

    /// <summary>The hand's fingers; none where it has no joints for them.</summary>
    public Fingers? Fingers { get; }

    /// <summary>The leg.</summary>
    public Limb Leg { get; }

    /// <summary>The foot that rolls; none where it has no joint for the toes.</summary>
    public FootRoll? Foot { get; }

    /// <summary>What the arm's goal, pole and first turn ride; none where the biped has no spaces.</summary>
    public LimbSpaces? ArmSpaces { get; }

    /// <summary>What the leg's goal, pole and first turn ride; none where the biped has no spaces.</summary>
    public LimbSpaces? LegSpaces { get; }
}
