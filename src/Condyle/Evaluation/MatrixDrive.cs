using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// A drive by matrix: placement = world(parent)⁻¹ · world(source) · offset, whole, with scale and shear. The node's channels stay free on top of it.
/// </summary>
internal sealed class MatrixDrive(RigNode source, bool keepsOffset) : IPlacementWriter
{
    public RigNode Source => source;

    public Affine3d PlacementOf(RigNode node, PoseFrames frames) =>
        frames.ParentOf(node).Inverse() * frames.WorldOf(source) * RestOffset.Between(source, node, keepsOffset, frames.Rest);
}
