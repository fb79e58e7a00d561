using Condyle.Runtime;

namespace Condyle.Host;

/// <summary>What the engines of a project take. A program finds every public class that implements this and has a constructor without parameters; <c>bake --profile NAME</c> takes one of them.</summary>
/// <example><code>
/// public sealed class HarbourProfiles : IEngineProfiles
/// {
///     public IEnumerable&lt;EngineProfile&gt; Profiles() =>
///     [
///         new("game")
///         {
///             UnitsPerMetre = 100,
///             Up = Axis.Z,
///             Bake = new() { FramesPerSecond = 30, RootMotion = RootMotion.OntoRoot("pelvis"), Keys = new(0.0005, 0.1) },
///             Levels = [new("near"), new("far") { LeavesOut = ["thumb_*", "index_*"] }],
///         },
///     ];
/// }
/// </code></example>
public interface IEngineProfiles
{
    /// <summary>The profiles, each with a name of its own.</summary>
    /// <returns>The profiles.</returns>
    IEnumerable<EngineProfile> Profiles();
}
