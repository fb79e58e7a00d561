namespace Condyle;

/// <summary>A rig whose numbers can't be worked out: its message says which node or chain is to blame and what to do.</summary>
public sealed class RigGeometryException : ArgumentException
{
    internal RigGeometryException(string message)
        : base(message)
    {
    }

    internal RigGeometryException(IReadOnlyList<string> faults)
        : this(string.Join(Environment.NewLine, faults))
    {
    }
}
