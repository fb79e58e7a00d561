using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What moves the nodes of one side, held against what moves their counterparts.</summary>
internal sealed class SidedWriters
{
    private readonly RigModel model;
    private readonly SidePairs pairs;
    private readonly Dictionary<RigNode, SidedWriter?> writers = [];
    private readonly Dictionary<(RigNode?, string), RigElement> settings = [];

    public SidedWriters(CheckedRig rig)
    {
        (model, pairs) = (rig.Model, rig.Pairs);
        foreach (var (node, writer) in SidedWriter.Of(rig))
            writers[node] = writers.ContainsKey(node) ? null : writer;
        foreach (var given in model.Switches.Where(given => !given.Name.IsOpen))
            settings[(given.Control, given.Name.ToString())] = given;
        foreach (var option in model.Options.Where(option => !option.Name.IsOpen))
            settings[(option.Choice.Control, $"{option.Choice.Name}: {option.Name}")] = option;
    }

    // Where a side has none at all, other rules say so.
    public SideDifference? Between(RigNode left, RigNode right)
    {
        if (!writers.TryGetValue(left, out var one) || !writers.TryGetValue(right, out var other) || one is null || other is null)
            return null;
        if (one.Way != other.Way)
            return one.IsSolver && other.IsSolver ? new SideDifference($"the left one {one.Way}, the right one {other.Way}", one.Place, other.Place) : null;
        if (Sources(one, other, left, right) is { } source)
            return source;
        return one.Weights.Count == other.Weights.Count && one.IsWhole && other.IsWhole ? Weights(one, other) : null;
    }

    private SideDifference? Sources(SidedWriter one, SidedWriter other, RigNode left, RigNode right)
    {
        // A source of the wrong side is another rule's finding, and so is what this side lacks; nodes in the middle may share the sides out.
        if (one.Sources.Count != other.Sources.Count || (!one.IsSolver && (IsCrossed(one, left) || IsCrossed(other, right))))
            return null;
        for (var i = 0; i < one.Sources.Count; i++)
        {
            var (role, node) = one.Sources[i];
            var expected = node is null ? null : pairs.CounterpartOf(node);
            var found = other.Sources[i].Node;
            if (expected is not null && found is not null && (one.IsSolver ? found != expected : !Takes(other, expected)))
                return new SideDifference($"{role} is {node!.Title} on the left and {found.Title} on the right", one.Place, other.Place);
        }

        return null;
    }

    private static bool Takes(SidedWriter writer, RigNode node)
    {
        foreach (var source in writer.Sources)
        {
            if (source.Node == node)
                return true;
        }

        return false;
    }

    private bool IsCrossed(SidedWriter writer, RigNode node)
    {
        foreach (var source in writer.Sources)
        {
            if (source.Node is not null && pairs.SideOf(source.Node) is { } side && side != pairs.SideOf(node))
                return true;
        }

        return false;
    }

    private SideDifference? Weights(SidedWriter one, SidedWriter other)
    {
        for (var i = 0; i < one.Weights.Count; i++)
        {
            var at = one.Sources[i].Node is { } source ? other.Sources.ToList().FindIndex(theirs => theirs.Node == pairs.MirrorOf(source)) : -1;
            if (at < 0 || one.Weights[i].With(MirrorOf) is not { } expected || other.Weights[at].Switches.Except(expected.Switches).Any())
                return null;
            if (!expected.Equals(other.Weights[at]))
                return new SideDifference($"{one.Sources[i].Node!.Title} weighs {Written(one.Weights[i])} on the left, and {other.Sources[at].Node!.Title} {Written(other.Weights[at])} on the right", one.Place, other.Place);
        }

        return null;
    }

    private int? MirrorOf(int variable)
    {
        var (control, name) = model.SwitchOf(variable) is { IsUnknown: false } given ? (given.Control, pairs.MirrorOf(given.Name))
            : model.OptionOf(variable) is { } option && pairs.MirrorOf(option.Choice.Name) is { } choice ? (option.Choice.Control, $"{choice}: {option.Name}")
            : (null, null);
        return control is not null && name is not null && pairs.MirrorOf(control) is { } mirrored && settings.TryGetValue((mirrored, name), out var found) ? found.Id : null;
    }

    private string Written(WeightPolynomial weight) => weight.Print(id => model.SwitchOf(id)?.Title ?? model.OptionOf(id)?.Title ?? "a switch");
}
