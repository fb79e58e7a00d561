using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// A drive by channels: channels = (world(parent) · placement)⁻¹ · world(source) · offset, written to T and R, and to S if asked.
/// The offset is the one at rest, or none: then the node lands on its source.
/// </summary>
/// <remarks>
/// What T·R·S can't hold (shear) is projected as <see cref="Affine3d.Frame"/> says. Continuous but where a scale on the way reaches zero.
/// </remarks>
internal sealed class ChannelDrive(RigNode source, bool keepsOffset, bool writesScale) : IFrameWriter
{
    public RigNode Source => source;

    public Trs ChannelsOf(RigNode node, PoseFrames frames)
    {
        var local = frames.StandOf(node).Inverse() * InWorld(node, frames);
        return writesScale ? frames.ProjectWithScale(node, local) : frames.Project(node, local);
    }

    public Affine3d? FrameOf(RigNode node, PoseFrames frames) => InWorld(node, frames);

    private Affine3d InWorld(RigNode node, PoseFrames frames) => frames.WorldOf(source) * RestOffset.Between(source, node, keepsOffset, frames.Rest);
}
