namespace Condyle;

/// <summary>A rig as code. The class is what the analyzer reads as it is typed, and what <see cref="Rig.Build"/> runs.</summary>
public interface IRigDefinition
{
    /// <summary>Says what the rig is made of.</summary>
    /// <param name="rig">The draft to fill in. It can't be used once this method has returned.</param>
    void Define(RigDraft rig);
}
