namespace Condyle;

/// <summary>What <see cref="RigDraft.Head(Joint, Node, Node, HeadOptions?, string, int)"/> has built.</summary>
public sealed class Head
{
    internal Head(Joint joint, Node under, Control turn, Control look, Switch aim)
    {
        (Joint, Under, Turn, Look, Aim) = (joint, under, turn, look, aim);
    }

    /// <summary>The head's joint.</summary>
    public Joint Joint { get; }

    /// <summary>What carries it.</summary>
    public Node Under { get; }

    /// <summary>The control that turns it while it doesn't look.</summary>
    public Control Turn { get; }

    /// <summary>The control that it looks at.</summary>
    public Control Look { get; }

    /// <summary>The switch: at 0 the head has its own turn, at 1 it looks. It is on both controls.</summary>
    public Switch Aim { get; }
}
