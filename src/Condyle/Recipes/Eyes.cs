namespace Condyle;

/// <summary>What <see cref="RigDraft.Eyes(Joint, Joint, Joint, Group, Node, EyesOptions?, string, int)"/> has built.</summary>
public sealed class Eyes
{
    internal Eyes(Control look, Control left, Control right)
    {
        (Look, Left, Right) = (look, left, right);
    }

    /// <summary>The control that both look at.</summary>
    public Control Look { get; }

    /// <summary>The control that the left eye looks at, under it.</summary>
    public Control Left { get; }

    /// <summary>The control that the right eye looks at, under it.</summary>
    public Control Right { get; }
}
