namespace Condyle.Runtime;

/// <summary>A dial of a compiled rig.</summary>
/// <param name="Index">Its place in <see cref="CompiledRig.Dials"/>, by which an instance sets it.</param>
/// <param name="Name">The control that it was made on and its own name, for instance <c>hand_left.curl</c>.</param>
/// <param name="AlsoKnownAs">The same for each further control that it is shown on.</param>
/// <param name="Unit">What its numbers count.</param>
/// <param name="From">The least value.</param>
/// <param name="To">The greatest value.</param>
/// <param name="AtRest">Its default.</param>
public sealed record CompiledDial(int Index, string Name, IReadOnlyList<string> AlsoKnownAs, DialUnit Unit, float From, float To, float AtRest);
