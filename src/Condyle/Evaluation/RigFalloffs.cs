using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>All falloffs of a rig, by the joints that take shares; on a joint they come on top of each other in the order in which they were begun.</summary>
internal sealed class RigFalloffs
{
    private readonly Dictionary<int, List<FalloffShare>> shares = [];

    private RigFalloffs()
    {
    }

    public IReadOnlyCollection<List<FalloffShare>> All => shares.Values;

    public IReadOnlyList<FalloffShare> On(RigNode node) => shares.TryGetValue(node.Id, out var found) ? found : [];

    /// <exception cref="RigGeometryException">Something isn't known, or shares can't be scaled to their total.</exception>
    public static RigFalloffs Of(RigModel model, RestPose rest)
    {
        var falloffs = new RigFalloffs();
        foreach (var share in model.Falloffs.SelectMany(falloff => FalloffRest.Of(falloff, rest)))
        {
            if (!falloffs.shares.TryGetValue(share.Joint.Id, out var found))
                falloffs.shares[share.Joint.Id] = found = [];
            found.Add(share);
        }

        return falloffs;
    }
}
