using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>Why a rig's numbers can't be worked out.</summary>
/// <param name="Message">In a rigger's words, with what to do.</param>
/// <param name="About">The element whose numbers can't be; none where something isn't known, or where several need each other.</param>
internal sealed record GeometryFault(string Message, RigElement? About);
