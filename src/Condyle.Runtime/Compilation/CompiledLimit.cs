namespace Condyle.Runtime;

/// <summary>The range of one of a control's channels that an animator may use. An instance does not enforce it: whoever poses decides.</summary>
/// <param name="Turns">True: the control turns about the axis. False: it moves along it.</param>
/// <param name="Axis">The axis of the control's own frame.</param>
/// <param name="From">The least value: degrees where it turns, metres where it moves.</param>
/// <param name="To">The greatest value: degrees where it turns, metres where it moves.</param>
public sealed record CompiledLimit(bool Turns, Axis Axis, float From, float To);
