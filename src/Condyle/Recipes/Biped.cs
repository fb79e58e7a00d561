namespace Condyle;

/// <summary>What <see cref="RigDraft.Biped(BipedJoints, BipedOptions?, string, int)"/> has built.</summary>
public sealed class Biped
{
    private readonly BipedSide left;
    private readonly BipedSide right;

    internal Biped(Control world, Control offset, Group systems, Spine spine, IReadOnlyList<Control> neck, Head head, HeadSpaces? headSpaces, Eyes? eyes, BipedSide left, BipedSide right)
    {
        (World, Offset, Systems, Spine, Neck, Head, HeadSpaces, Eyes) = (world, offset, systems, spine, neck, head, headSpaces, eyes);
        (this.left, this.right) = (left, right);
    }

    /// <summary>The control that moves all of it.</summary>
    public Control World { get; }

    /// <summary>The control under it that shifts the character against the way that it goes.</summary>
    public Control Offset { get; }

    /// <summary>The group that holds what animators don't see.</summary>
    public Group Systems { get; }

    /// <summary>The spine, with the body's and the hips' control.</summary>
    public Spine Spine { get; }

    /// <summary>The controls that turn the neck, from the bottom up; none where it has no joint.</summary>
    public IReadOnlyList<Control> Neck { get; }

    /// <summary>The head.</summary>
    public Head Head { get; }

    /// <summary>What the head's turn and what it looks at ride; none where the biped has no spaces.</summary>
    public HeadSpaces? HeadSpaces { get; }

    /// <summary>The eyes; none where it has no joints for them.</summary>
    public Eyes? Eyes { get; }

    /// <summary>Arm and leg of a side.</summary>
    /// <param name="side">The side.</param>
    public BipedSide this[Side side] => side == Side.Left ? left : right;
}
