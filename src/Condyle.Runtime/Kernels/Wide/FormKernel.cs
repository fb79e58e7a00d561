using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>From one form of a world frame to the other.</summary>
internal static class FormKernel
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Axes(ReadOnlySpan<int> slots, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var worlds = pose.Worlds.Registers;
        foreach (var slot in slots)
            worlds[slot] = frames[slot].Axes;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Unscaled(ReadOnlySpan<int> slots, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var worlds = pose.Worlds.Registers;
        foreach (var slot in slots)
            frames[slot] = new() { Origin = worlds[slot].Origin, Turn = worlds[slot].Turn };
    }
}
