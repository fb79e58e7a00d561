using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// What carries a control that rides one of several nodes: the average of world(node) · offset over the nodes, by the weights of their options, where the offset is
/// that of the control's place at rest: world(node at rest)⁻¹ · world(control at rest). The control's channels stand on it. What the options leave of one goes to its own parent.
/// </summary>
/// <remarks>
/// Where one option is picked, that is its node's frame whole, with scale and shear, as if the control hung there (<see cref="FrameAverage.OfWhole"/>).
/// Not continuous over the weights where two nodes have turned half a turn apart.
/// </remarks>
internal sealed class SpaceBlend : IPlacementWriter
{
    private SpaceBlend(IReadOnlyList<(RigNode Node, WeightPolynomial Weight)> parents, WeightPolynomial rest) => (Parents, Rest) = (parents, rest);

    /// <summary>The nodes that it rides, each with the weight of its option.</summary>
    public IReadOnlyList<(RigNode Node, WeightPolynomial Weight)> Parents { get; }

    /// <summary>What the options leave for the control's own parent.</summary>
    public WeightPolynomial Rest { get; }

    /// <exception cref="RigGeometryException">Something isn't known.</exception>
    public static SpaceBlend Of(RigSpace space)
    {
        if (space.ParentsAreOpen || space.Choice is not { } choice || choice.OptionsAreOpen)
            throw new RigGeometryException($"The nodes of {space.Title} or their options aren't known.");
        var parents = new List<(RigNode Node, WeightPolynomial Weight)>();
        foreach (var option in choice.Options)
        {
            // Where an option is given two nodes, the one said last has it.
            if (space.Parents.FindLast(parent => parent.Option == option) is { } parent)
                parents.Add((parent.Node is { IsUnknown: false } node ? node : throw Unknown(space), Facts.Known(choice.WeightOf(option), $"The weight of {option.Title}")));
        }

        if (space.Parents.Exists(parent => parent.Option is null))
            throw Unknown(space);
        return new(parents, parents.Aggregate(WeightPolynomial.One, (rest, parent) => rest + parent.Weight.Times(-1)));
    }

    public Affine3d PlacementOf(RigNode node, PoseFrames frames)
    {
        var own = frames.ParentOf(node);
        var (each, weights) = (new List<Affine3d>(), new List<double>());
        foreach (var (parent, weight) in Parents)
        {
            each.Add(frames.WorldOf(parent) * RestOffset.Between(parent, node, keeps: true, frames.Rest));
            weights.Add(Math.Max(0, frames.ValueOf(weight)));
        }

        if (!Rest.Equals(WeightPolynomial.Zero))
        {
            each.Add(own * frames.Rest.PlacementOf(node));
            weights.Add(Math.Max(0, frames.ValueOf(Rest)));
        }

        var sum = weights.Sum();
        return own.Inverse() * FrameAverage.OfWhole(each, [.. weights.Select(weight => weight / sum)]);
    }

    private static RigGeometryException Unknown(RigSpace space) => new($"A node of {space.Title} or its option isn't known.");
}
