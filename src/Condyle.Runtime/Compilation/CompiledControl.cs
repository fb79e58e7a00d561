namespace Condyle.Runtime;

/// <summary>A control of a compiled rig.</summary>
/// <param name="Index">Its place in <see cref="CompiledRig.Controls"/>, by which an instance sets it.</param>
/// <param name="Name">Its name.</param>
/// <param name="Locked">The channels that an animator may not change.</param>
/// <param name="Limits">The ranges of its other channels; a channel that is not listed is unbounded.</param>
public sealed record CompiledControl(int Index, string Name, Channels Locked, IReadOnlyList<CompiledLimit> Limits);
