namespace Condyle.Runtime;

/// <summary>A switch of a compiled rig.</summary>
/// <param name="Index">Its place in <see cref="CompiledRig.Switches"/>, by which an instance sets it.</param>
/// <param name="Name">The control that it was made on and its own name, for instance <c>hand_left.fk</c>.</param>
/// <param name="AlsoKnownAs">The same for each further control that it is shown on.</param>
/// <param name="AtRest">Its default, from 0 to 1.</param>
public sealed record CompiledSwitch(int Index, string Name, IReadOnlyList<string> AlsoKnownAs, float AtRest);
