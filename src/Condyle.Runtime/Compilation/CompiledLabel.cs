namespace Condyle.Runtime;

/// <summary>A label of a compiled rig.</summary>
/// <param name="Index">Its place in <see cref="CompiledRig.Labels"/>, by which an instance is asked for it.</param>
/// <param name="Name">Its name.</param>
/// <param name="Text">What it shows.</param>
public sealed record CompiledLabel(int Index, string Name, string Text);
