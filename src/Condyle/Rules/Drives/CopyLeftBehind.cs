using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY3007: a copy must go where its chain is carried, or it stays behind when the character moves.</summary>
internal sealed class CopyLeftBehind : RuleOfMoves
{
    public override string Id => "CDY3007";

    public override string Title => "Copy that follows nothing while the character moves";

    public override Severity Severity => Severity.Warning;

    protected override IEnumerable<Finding> Check(RigModel model, Moves moves, Conventions conventions)
    {
        if (moves.AreOpen)
            return [];
        var carriers = new Carriers(moves);
        var used = new HashSet<RigCopy>(model.Blends.SelectMany(blend => blend.Sources).Select(source => source.Copy).OfType<RigCopy>());
        return model.Copies
            .Where(copy => used.Contains(copy) && IsCarried(copy, moves) && carriers.StandsStill(copy.Joints[0]))
            .Select(copy => (Copy: copy, Carrier: carriers.NearestMoved(copy.Chain.Joints![0]), Holder: copy.Joints[0].Parent.TryKnown(out var parent) ? parent : null))
            .Where(left => left.Carrier is not null)
            .GroupBy(left => (RigElement?)left.Holder ?? left.Copy)
            .Select(left => FindingOf([.. left.Select(each => each.Copy)], left.First().Holder, left.First().Carrier!));
    }

    /// <summary>Whether the copy's first joint stands where what it hangs under carries it.</summary>
    private static bool IsCarried(RigCopy copy, Moves moves) =>
        copy is { IsUnknown: false, Joints.Count: > 0, Chain.Joints: not null } && moves.Of(copy.Joints[0]).All(move => move.Sentence is RigSolver || move.What == Moved.OnTop || (move.Written & Channels.Move) == Channels.None);

    private Finding FindingOf(IReadOnlyList<RigCopy> copies, RigNode? holder, RigNode carrier)
    {
        var tags = string.Join(" and ", copies.Select(copy => $"'{copy.Tag}'").Distinct());
        var (copy, stay, hang) = copies.Count == 1 ? ("copy", "stays", "it hangs") : ("copies", "stay", "they hang");
        var chain = copies[0].Chain.Title;
        var where = holder is null ? $"{hang} under nothing" : $"nothing moves {holder.Title}, under which {hang}";
        var place = holder is null or { IsExported: true } ? copies[0].Place : holder.Place;
        return new Finding(
            this,
            (RigElement?)holder ?? copies[0],
            $"The {copy} {tags} of {chain} {stay} behind when {carrier.Title} moves, which carries that chain: {where}. So the chain is pulled back to where it rested. {(holder is { Kind: NodeKind.Group } ? $"Drive {holder.Title} by a node that goes with {carrier.Title}." : $"Hang the {copy} under a group that goes with {carrier.Title}.")}",
            place)
        {
            ActsOn = holder,
            Related = [.. copies.SelectMany(each => new[] { each.Place, each.Joints[0].ParentPlace }).Where(other => other != place && other != PlaceId.None).Distinct()],
        };
    }

    /// <summary>What carries nodes, each looked at once.</summary>
    private sealed class Carriers(Moves moves)
    {
        private readonly Dictionary<int, bool> still = [];
        private readonly Dictionary<int, RigNode?> nearest = [];

        /// <summary>Whether for certain neither anything that a node hangs under is moved nor may an animator move it.</summary>
        public bool StandsStill(RigNode node) => Climb(node, still, above => MayMove(above) ? false : null, atTop: true, open: false);

        /// <summary>The nearest joint above a joint that something moves for certain.</summary>
        public RigNode? NearestMoved(RigNode joint) => Climb(joint, nearest, above => moves.Certainly(above) ? above : null, atTop: null, open: null);

        private bool MayMove(RigNode node) =>
            node.IsUnknown || moves.Of(node).Count > 0 || (node.Kind == NodeKind.Control && !(node.Locked.TryKnown(out var locked) && locked == Channels.All));

        private static T Climb<T>(RigNode node, Dictionary<int, T> known, Func<RigNode, object?> answer, T atTop, T open)
        {
            var way = new HashSet<int>();
            var at = node;
            T found;
            while (true)
            {
                if (known.TryGetValue(at.Id, out found!))
                    break;
                if (!way.Add(at.Id) || !at.Parent.TryKnown(out var above))
                {
                    found = open;
                    break;
                }

                if (above is null)
                {
                    found = atTop;
                    break;
                }

                if (answer(above) is T here)
                {
                    found = here;
                    break;
                }

                at = above;
            }

            foreach (var passed in way)
                known[passed] = found;
            return found;
        }
    }
}
