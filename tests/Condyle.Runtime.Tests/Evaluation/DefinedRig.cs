namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>A rig that a test writes in place.</summary>
internal sealed class DefinedRig(Action<RigDraft> define) : IRigDefinition
{
    public void Define(RigDraft rig) => define(rig);

    public static CompiledRig Compile(Action<RigDraft> define) => RigCompiler.Compile(Rig.Examine(new DefinedRig(define)));
}
