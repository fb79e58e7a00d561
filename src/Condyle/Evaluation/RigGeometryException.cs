using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle;

/// <summary>A rig whose numbers can't be worked out: its message says which node or chain is to blame and what to do.</summary>
public sealed class RigGeometryException : ArgumentException
{
    internal RigGeometryException(string message, RigElement? about = null)
        : this([new GeometryFault(message, about)])
    {
    }

    internal RigGeometryException(IReadOnlyList<GeometryFault> faults)
        : base(string.Join(Environment.NewLine, faults.Select(fault => fault.Message))) => Faults = faults;

    internal IReadOnlyList<GeometryFault> Faults { get; }
}
