using Condyle.Runtime.Compilation;

namespace Condyle.Runtime;

/// <summary>Turns a rig into a schedule of batches over flat arrays.</summary>
public static class RigCompiler
{
    /// <summary>Compiles a rig: orders its nodes, drops what reaches neither an exported joint nor a label, folds what never changes, and shares equal weights.</summary>
    /// <param name="rig">A rig that was built.</param>
    /// <returns>The compiled rig; it makes instances.</returns>
    /// <exception cref="RigCompileException">Nodes wait for each other in a loop, or something that the evaluation needs is missing or unknown.</exception>
    public static CompiledRig Compile(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        try
        {
            var parts = RigParts.Of(rig.Model);
            return new CompiledRig(rig.Name, parts, RigLayout.Of(rig.Model), rig.Model);
        }
        catch (RigGeometryException fault)
        {
            throw new RigCompileException(rig.Name, fault);
        }
    }
}
