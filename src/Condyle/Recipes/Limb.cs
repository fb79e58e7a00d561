namespace Condyle;

/// <summary>What <see cref="RigDraft.Limb(Chain, string, Side, Node, Group, Node, LimbOptions?, string, int)"/> has built.</summary>
public sealed class Limb
{
    internal Limb(Chain bones, Side side, Control root, Control goal, Control pole, IReadOnlyList<Control> turns, Switch fk, Copy ikCopy, Copy fkCopy, TwoBone solver, Group parts)
    {
        (Bones, Side, Root, Goal, Pole, Turns) = (bones, side, root, goal, pole, turns);
        (Fk, IkCopy, FkCopy, Solver, Parts) = (fk, ikCopy, fkCopy, solver, parts);
    }

    /// <summary>The limb's joints, from root to tip.</summary>
    public Chain Bones { get; }

    internal Side Side { get; }

    /// <summary>The control that carries the limb's root; it moves, and doesn't turn.</summary>
    public Control Root { get; }

    /// <summary>The control that the tip reaches while IK has the limb.</summary>
    public Control Goal { get; }

    /// <summary>The control that the bend faces while IK has the limb.</summary>
    public Control Pole { get; }

    /// <summary>The controls that turn the joints while FK has the limb, from root to tip.</summary>
    public IReadOnlyList<Control> Turns { get; }

    /// <summary>The switch: at 0 IK has the limb, at 1 FK. It is on the goal, the root and the last turn.</summary>
    public Switch Fk { get; }

    /// <summary>The copy that is solved.</summary>
    public Copy IkCopy { get; }

    /// <summary>The copy that the turns drive.</summary>
    public Copy FkCopy { get; }

    /// <summary>The sentence that solves the copy, to say more of it or otherwise.</summary>
    public TwoBone Solver { get; }

    /// <summary>The group that holds both copies and follows the root.</summary>
    public Group Parts { get; }
}
