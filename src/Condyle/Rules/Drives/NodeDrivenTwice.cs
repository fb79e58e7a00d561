using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY3002: of two sentences that write the same of a node, only the one begun last moves it.</summary>
internal sealed class NodeDrivenTwice : Rule
{
    /// <summary>What sentences can share a node by: moves by axis, the rotation whole.</summary>
    private static readonly Channels[] Written = [Channels.MoveX, Channels.MoveY, Channels.MoveZ, Channels.Turn];

    public override string Id => "CDY3002";

    public override string Title => "Node driven twice";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var taken = rig.Once(Taken);
        if (taken.Count == 0)
            return [];
        // Where code runs twice, names that must be given once say so.
        return taken.Where(nodes => !rig.Repeated.MadeBoth(nodes[0].Lost.Sentence, nodes[0].Last.Sentence)).Select(FindingOf);
    }

    /// <summary>The sentences that take a node from another.</summary>
    public static IEnumerable<RigElement> Takers(CheckedRig rig) => rig.Once(Taken).Select(nodes => nodes[0].Last.Sentence);

    // The nodes that one sentence takes from another, by the two.
    private static IEnumerable<List<(Move Lost, Move Last)>> Taken(CheckedRig rig)
    {
        var taken = new Dictionary<(RigElement Lost, RigElement Last), List<(Move Lost, Move Last)>>();
        foreach (var node in rig.Model.Nodes)
        {
            var all = rig.Moves.Of(node);
            if (all.Count < 2)
                continue;
            foreach (var (lost, last) in LostOf(node, all, rig.Sums))
            {
                if (!taken.TryGetValue((lost.Sentence, last.Sentence), out var nodes))
                    taken[(lost.Sentence, last.Sentence)] = nodes = [];
                nodes.Add((lost, last));
            }
        }

        return taken.Values;
    }

    private static IEnumerable<(Move Lost, Move Last)> LostOf(RigNode node, IReadOnlyList<Move> moves, BlendSums sums)
    {
        foreach (var each in moves.GroupBy(move => move.What))
        {
            // Responses add up; a matrix onto an exported joint is a slip of its own, and so are weights that don't add up.
            if (each.Key == Moved.OnTop || (each.Key == Moved.Placement && node.IsExported))
                continue;
            // What is begun later takes the channels that it writes.
            var takers = new Dictionary<Channels, Move>();
            foreach (var move in each.Reverse())
            {
                var written = Written.Where(channels => (move.Written & channels) != Channels.None).ToList();
                if (written.Count > 0 && written.TrueForAll(channels => takers.TryGetValue(channels, out var later) && Takes(later, move, sums)))
                    yield return (move, takers[written[0]]);
                foreach (var channels in written)
                    takers[channels] = move;
            }
        }
    }

    private static bool Takes(Move later, Move move, BlendSums sums) => later.IsSaidWith(move) && IsWeighted(later, sums) && IsWeighted(move, sums);

    // Where a blend's weights don't add up, that is its slip.
    private static bool IsWeighted(Move move, BlendSums sums) => move.Sentence is not RigBlend blend || sums.IsOne(blend);

    private Finding FindingOf(List<(Move Lost, Move Last)> nodes)
    {
        var (lost, last) = nodes[0];
        var (are, them, does) = nodes.Count == 1 ? ("is", "it", "the node") : ("are", "them", "the nodes");
        return new Finding(
            this,
            last.Sentence,
            $"{Wording.Joined([.. nodes.Select(each => each.Last.Node.Title)])} {are} driven twice: {last.Title} is said last and has {them}, so {lost.Title} doesn't move {does} at all. Keep the one that is meant.",
            last.Place)
        {
            ActsOn = last.Node,
            Related = [.. new[] { lost.Place, lost.Sentence.Place, last.Sentence.Place }.Where(place => place != last.Place).Distinct()],
        };
    }
}
