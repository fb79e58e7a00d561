namespace Condyle.Runtime.Kernels;

/// <summary>All that changes while a rig is evaluated: flat arrays, which the batches of a schedule address by index.</summary>
internal sealed class Buffers(BufferSizes sizes)
{
    /// <summary>Translation channels: the controls first, then the exported joints, then whatever else is written.</summary>
    public Vectors Moves { get; } = new(sizes.Channels);

    public Rotations Turns { get; } = new(sizes.Channels);

    public Vectors Scales { get; } = new(sizes.Channels);

    /// <summary>World frames: the world's own first, then those that never change, then the others in the order of the schedule.</summary>
    public Affines Worlds { get; } = new(sizes.Worlds);

    public float[] Switches { get; } = new float[sizes.Switches];

    public float[] Weights { get; } = new float[sizes.Weights];

    /// <summary>Where a blend gathers its sources; it holds nothing between two blends.</summary>
    public Mix Mix { get; } = new(sizes.BlendSources);

    /// <summary>The frame that the channels of a slot make.</summary>
    public Affine ChannelFrame(int slot) => Affine.Of(Moves[slot], Turns[slot], Scales[slot]);

    public Buffers Copy()
    {
        var copy = new Buffers(sizes);
        copy.CopyFrom(this);
        return copy;
    }

    public void CopyFrom(Buffers other)
    {
        Moves.CopyFrom(other.Moves);
        Turns.CopyFrom(other.Turns);
        Scales.CopyFrom(other.Scales);
        Worlds.CopyFrom(other.Worlds);
        other.Switches.CopyTo(Switches, 0);
        other.Weights.CopyTo(Weights, 0);
    }
}

/// <summary>How much room a rig's pose needs.</summary>
internal readonly record struct BufferSizes(int Channels, int Worlds, int Switches, int Weights, int BlendSources);
