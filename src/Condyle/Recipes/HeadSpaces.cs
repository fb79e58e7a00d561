namespace Condyle;

/// <summary>What <see cref="RigDraft.Spaces(Head, BodySpaces, SpacesOptions?, string, int)"/> has built; each is a sentence to which further nodes can be added by <c>In</c>.</summary>
public sealed class HeadSpaces
{
    internal HeadSpaces(Space look, Space? turn)
    {
        (Look, Turn) = (look, turn);
    }

    /// <summary>What the control that it looks at rides.</summary>
    public Space Look { get; }

    /// <summary>What its turn goes with; none where it always goes with the body.</summary>
    public Space? Turn { get; }
}
