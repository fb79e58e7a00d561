using Condyle.Evaluation;

namespace Condyle.Runtime.Compilation;

/// <summary>
/// A frame as a constant offset, in double precision, from the nearest node above it that moves, or from the world where nothing above it does:
/// nodes that stand still are folded away.
/// </summary>
internal readonly record struct Anchor(PlannedNode? Root, Affine3d Offset)
{
    /// <summary>Whether it has neither scale nor shear, whatever the rig does.</summary>
    public bool IsRigid => Root is null or { IsRigid: true } && Rigidity.Of(Offset);

    public Anchor Below(Affine3d offset) => this with { Offset = Offset * offset };
}
