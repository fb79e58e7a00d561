namespace Condyle.Runtime;

/// <summary>A choice of a compiled rig.</summary>
/// <param name="Index">Its place in <see cref="CompiledRig.Choices"/>, by which an instance sets it.</param>
/// <param name="Name">The control that it was made on and its own name, for instance <c>hand_left.space</c>.</param>
/// <param name="AlsoKnownAs">The same for each further control that it is shown on.</param>
/// <param name="Options">The options in order; the first is picked at rest.</param>
public sealed record CompiledChoice(int Index, string Name, IReadOnlyList<string> AlsoKnownAs, IReadOnlyList<string> Options);
