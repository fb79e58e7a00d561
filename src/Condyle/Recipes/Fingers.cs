namespace Condyle;

/// <summary>What <see cref="RigDraft.Fingers(Joint, JointSet[], string, Side, Control, Group, FingersOptions?, string, int)"/> has built.</summary>
public sealed class Fingers
{
    internal Fingers(Dial curl, Dial? spread, IReadOnlyList<IReadOnlyList<Control>> turns, IReadOnlyList<IReadOnlyList<Group>> curled, Group parts)
    {
        (Curl, Spread, Turns, Curled, Parts) = (curl, spread, turns, curled, parts);
    }

    /// <summary>The dial on the hand that curls all fingers: 0 flat, 1 a fist.</summary>
    public Dial Curl { get; }

    /// <summary>The dial on the hand that spreads them; none where they don't.</summary>
    public Dial? Spread { get; }

    /// <summary>The controls that turn the joints, finger by finger.</summary>
    public IReadOnlyList<IReadOnlyList<Control>> Turns { get; }

    /// <summary>The groups in front of those controls, which the dials turn.</summary>
    public IReadOnlyList<IReadOnlyList<Group>> Curled { get; }

    /// <summary>The group that holds all of it and follows the wrist.</summary>
    public Group Parts { get; }
}
