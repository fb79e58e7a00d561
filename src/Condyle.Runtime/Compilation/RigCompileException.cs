namespace Condyle.Runtime;

/// <summary>A rig that can't be put into an order of evaluation, or in which something is missing that the evaluation needs. The message names the nodes and says what to do.</summary>
public sealed class RigCompileException : Exception
{
    internal RigCompileException(string rig, RigGeometryException fault)
        : base($"The rig '{rig}' can't be compiled: {fault.Message}", fault)
    {
    }
}
