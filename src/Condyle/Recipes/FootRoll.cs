namespace Condyle;

/// <summary>What <see cref="RigDraft.FootRoll(Limb, Joint, System.Numerics.Vector3, System.Numerics.Vector3, FootRollOptions?, string, int)"/> has built.</summary>
public sealed class FootRoll
{
    internal FootRoll(Group heel, Group tip, Group ball, Group ankle, Dial roll, Control toes)
    {
        (Heel, Tip, Ball, Ankle) = (heel, tip, ball, ankle);
        (Roll, Toes) = (roll, toes);
    }

    /// <summary>The group that turns about the heel; it is under the leg's goal.</summary>
    public Group Heel { get; }

    /// <summary>The group that turns about the tip of the toes; it is under the heel's.</summary>
    public Group Tip { get; }

    /// <summary>The group that turns about the ball; it is under the tip's.</summary>
    public Group Ball { get; }

    /// <summary>The group that the leg reaches for; it is under the ball's.</summary>
    public Group Ankle { get; }

    /// <summary>The dial on the leg's goal that rolls the foot, in degrees.</summary>
    public Dial Roll { get; }

    /// <summary>The control that turns the toes.</summary>
    public Control Toes { get; }
}
