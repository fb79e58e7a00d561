namespace Condyle.Runtime.Kernels;

/// <summary>All that changes while a rig is evaluated: flat arrays, which the batches of a schedule address by index.</summary>
internal sealed class Pose(int channelSlots, int worldSlots, int switches, int weights)
{
    /// <summary>Translation channels: the controls first, then the exported joints, then whatever else is written.</summary>
    public Vectors Moves { get; } = new(channelSlots);

    public Rotations Turns { get; } = new(channelSlots);

    public Vectors Scales { get; } = new(channelSlots);

    /// <summary>World frames: the world's own first, then those that never change, then the others in the order of the schedule.</summary>
    public Affines Worlds { get; } = new(worldSlots);

    public float[] Switches { get; } = new float[switches];

    public float[] Weights { get; } = new float[weights];

    public Pose Copy()
    {
        var copy = new Pose(Moves.Count, Worlds.Count, Switches.Length, Weights.Length);
        copy.CopyFrom(this);
        return copy;
    }

    public void CopyFrom(Pose other)
    {
        Moves.CopyFrom(other.Moves);
        Turns.CopyFrom(other.Turns);
        Scales.CopyFrom(other.Scales);
        Worlds.CopyFrom(other.Worlds);
        other.Switches.CopyTo(Switches, 0);
        other.Weights.CopyTo(Weights, 0);
    }
}
