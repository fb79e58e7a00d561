namespace Condyle;

/// <summary>What <see cref="RigDraft.Spaces(Limb, BodySpaces, SpacesOptions?, string, int)"/> has built; each is a sentence to which further nodes can be added by <c>In</c>.</summary>
public sealed class LimbSpaces
{
    internal LimbSpaces(Space goal, Space? pole, Space? turn)
    {
        (Goal, Pole, Turn) = (goal, pole, turn);
    }

    /// <summary>What the goal rides.</summary>
    public Space Goal { get; }

    /// <summary>What the pole rides; none where it doesn't.</summary>
    public Space? Pole { get; }

    /// <summary>What the first turn goes with; none where it always goes with the body.</summary>
    public Space? Turn { get; }
}
