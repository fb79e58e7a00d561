using Condyle.Runtime;

namespace Condyle.Host;

/// <summary>Clips of a rig. A program finds every public class that implements <see cref="IClipsFor{TRig}"/> and has a constructor without parameters.</summary>
public interface IRigClips
{
    /// <summary>The clips, each with a name of its own.</summary>
    /// <returns>The clips, in the order in which they go into the file.</returns>
    IEnumerable<Clip> Clips();
}

/// <summary>Says whose clips they are: <c>public sealed class StevedoreClips : IClipsFor&lt;Stevedore&gt;</c>.</summary>
/// <typeparam name="TRig">The rig's definition.</typeparam>
public interface IClipsFor<TRig> : IRigClips
    where TRig : IRigDefinition;
