using Modelling.Output;

namespace Modelling;

/// <summary>The models of the Quayside scene.</summary>
public static class Scene
{
    /// <summary>All files, the same bytes on every machine.</summary>
    public static IReadOnlyList<ModelFile> Files() => [.. Stevedore.Model(), .. Gull.Model(), .. Crane.Model()];
}
