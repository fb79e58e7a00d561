using Condyle.Host;
using Condyle.Runtime;

namespace Quayside.Clips;

/// <summary>What the crane does between two ships.</summary>
public sealed class CraneClips : IClipsFor<Crane>
{
    /// <inheritdoc/>
    public IEnumerable<Clip> Clips() => [Load.Clip()];
}
