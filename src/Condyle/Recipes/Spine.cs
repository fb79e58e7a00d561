namespace Condyle;

/// <summary>What <see cref="RigDraft.Spine(Chain, string, Group, Node, SpineOptions?, string, int)"/> has built.</summary>
public sealed class Spine
{
    internal Spine(Control body, Control hips, IReadOnlyList<Control> turns)
    {
        (Body, Hips, Turns) = (body, hips, turns);
    }

    /// <summary>The control that moves all of it.</summary>
    public Control Body { get; }

    /// <summary>The control that turns the pelvis, and that legs hang under.</summary>
    public Control Hips { get; }

    /// <summary>The controls above the hips, from the bottom up: one for each joint, or the middle and the top of a curve.</summary>
    public IReadOnlyList<Control> Turns { get; }
}
