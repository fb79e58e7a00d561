namespace Condyle;

/// <summary>What <see cref="RigDraft.Tail(Chain, string, Node, TailOptions?, string, int)"/> has built.</summary>
public sealed class Tail
{
    internal Tail(IReadOnlyList<Control> turns, Control bend)
    {
        (Turns, Bend) = (turns, bend);
    }

    /// <summary>The controls that turn the joints, from root to tip.</summary>
    public IReadOnlyList<Control> Turns { get; }

    /// <summary>The control that bends all of it, by its own turn: a space would move the control alone. What is to ride another node is the first of <see cref="Turns"/>.</summary>
    public Control Bend { get; }
}
