using Condyle.Host;
using Condyle.Runtime;

namespace Quayside.Clips;

/// <summary>What the gull does when a crate comes down.</summary>
public sealed class GullClips : IClipsFor<Gull>
{
    /// <inheritdoc/>
    public IEnumerable<Clip> Clips() => [TakeOff.Clip()];
}
