using Condyle.Host;
using Condyle.Runtime;

namespace Quayside.Clips;

/// <summary>What the dock worker does all day.</summary>
public sealed class StevedoreClips : IClipsFor<Stevedore>
{
    /// <inheritdoc/>
    public IEnumerable<Clip> Clips() => [LiftCrate.Clip()];
}
