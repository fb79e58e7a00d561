namespace Condyle;

/// <summary>What <see cref="RigDraft.Collar(Limb, Joint, Node, CollarOptions?, string, int)"/> has built.</summary>
public sealed class Collar
{
    internal Collar(Control turn, Switch follows, Group aimed, Group carried)
    {
        (Turn, Follows, Aimed, Carried) = (turn, follows, aimed, carried);
    }

    /// <summary>The control that turns it, on top of what it follows; the arm's root is under it.</summary>
    public Control Turn { get; }

    /// <summary>The switch: at 0 it stays, at 1 it points at the arm's goal as far as IK has the arm. It is on both controls.</summary>
    public Switch Follows { get; }

    /// <summary>The group that points at the arm's goal.</summary>
    public Group Aimed { get; }

    /// <summary>The group in front of the control, which takes its share of that.</summary>
    public Group Carried { get; }
}
