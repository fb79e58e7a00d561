using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What moves the nodes of one side, held against what moves their counterparts.</summary>
internal sealed class SidedWriters
{
    private readonly RigModel model;
    private readonly SidePairs pairs;
    private readonly ILookup<RigNode, SidedWriter> writers;
    private readonly Dictionary<(RigNode?, string), RigElement> settings = [];

    public SidedWriters(RigModel model, SidePairs pairs)
    {
        (this.model, this.pairs) = (model, pairs);
        writers = SidedWriter.Of(model).ToLookup(each => each.Node, each => each.Writer);
        foreach (var given in model.Switches.Where(given => !given.Name.IsOpen))
            settings[(given.Control, given.Name.ToString())] = given;
        foreach (var option in model.Options.Where(option => !option.Name.IsOpen))
            settings[(option.Choice.Control, $"{option.Choice.Name}: {option.Name}")] = option;
    }

    // Where a side has none at all, other rules say so.
    public SideDifference? Between(RigNode left, RigNode right)
    {
        if (!writers.Contains(left) || !writers.Contains(right))
            return null;
        var (ours, theirs) = (writers[left].ToList(), writers[right].ToList());
        if (ours.Count != 1 || theirs.Count != 1)
            return null;
        var (one, other) = (ours[0], theirs[0]);
        if (one.Way != other.Way)
            return one.IsSolver && other.IsSolver ? new SideDifference($"the left one {one.Way}, the right one {other.Way}", one.Place, other.Place) : null;
        if (Sources(one, other, left, right) is { } source)
            return source;
        return one.Weights.Count == other.Weights.Count && Sum(one).Equals(WeightPolynomial.One) && Sum(other).Equals(WeightPolynomial.One) ? Weights(one, other) : null;
    }

    private SideDifference? Sources(SidedWriter one, SidedWriter other, RigNode left, RigNode right)
    {
        // A source of the wrong side is another rule's finding, and so is what this side lacks; nodes in the middle may share the sides out.
        if (one.Sources.Count != other.Sources.Count || (!one.IsSolver && (IsCrossed(one, left) || IsCrossed(other, right))))
            return null;
        var theirs = new HashSet<RigNode?>(other.Sources.Select(source => source.Node));
        for (var i = 0; i < one.Sources.Count; i++)
        {
            var (role, node) = one.Sources[i];
            var expected = node is null ? null : pairs.CounterpartOf(node);
            var found = other.Sources[i].Node;
            if (expected is not null && found is not null && (one.IsSolver ? found != expected : !theirs.Contains(expected)))
                return new SideDifference($"{role} is {node!.Title} on the left and {found.Title} on the right", one.Place, other.Place);
        }

        return null;
    }

    private bool IsCrossed(SidedWriter writer, RigNode node) => writer.Sources.Any(source => source.Node is not null && pairs.SideOf(source.Node) is { } side && side != pairs.SideOf(node));

    private SideDifference? Weights(SidedWriter one, SidedWriter other)
    {
        for (var i = 0; i < one.Weights.Count; i++)
        {
            var at = one.Sources[i].Node is { } source ? other.Sources.ToList().FindIndex(theirs => theirs.Node == pairs.MirrorOf(source)) : -1;
            if (at < 0 || Mirrored(one.Weights[i]) is not { } expected || other.Weights[at].Switches.Except(expected.Switches).Any())
                return null;
            if (!expected.Equals(other.Weights[at]))
                return new SideDifference($"{one.Sources[i].Node!.Title} weighs {Written(one.Weights[i])} on the left, and {other.Sources[at].Node!.Title} {Written(other.Weights[at])} on the right", one.Place, other.Place);
        }

        return null;
    }

    private WeightPolynomial? Mirrored(WeightPolynomial weight)
    {
        var sum = WeightPolynomial.Zero;
        foreach (var term in weight.Terms)
        {
            var product = WeightPolynomial.Constant(term.Coefficient);
            foreach (var factor in term.Factors)
            {
                if (MirrorOf(factor) is not { } other)
                    return null;
                product *= WeightPolynomial.Variable(other);
            }

            sum += product;
        }

        return sum;
    }

    private int? MirrorOf(int variable)
    {
        var (control, name) = model.SwitchOf(variable) is { IsUnknown: false } given ? (given.Control, pairs.MirrorOf(given.Name))
            : model.OptionOf(variable) is { } option && pairs.MirrorOf(option.Choice.Name) is { } choice ? (option.Choice.Control, $"{choice}: {option.Name}")
            : (null, null);
        return control is not null && name is not null && pairs.MirrorOf(control) is { } mirrored && settings.TryGetValue((mirrored, name), out var found) ? found.Id : null;
    }

    private string Written(WeightPolynomial weight) => weight.Print(id => model.SwitchOf(id)?.Title ?? model.OptionOf(id)?.Title ?? "a switch");

    private static WeightPolynomial Sum(SidedWriter writer) => writer.Weights.Aggregate(WeightPolynomial.Zero, (sum, weight) => sum + weight);
}
