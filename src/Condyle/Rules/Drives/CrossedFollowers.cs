using Condyle.Model;

namespace Condyle.Rules;

/// <summary>Solvers, aims, twists, curves and falloffs that take the other side's node for this side's.</summary>
internal sealed class CrossedFollowers
{
    private readonly CheckedRig rig;
    private readonly SidePairs pairs;
    private readonly List<Followed> all;
    private readonly Lazy<(HashSet<(RigNode, FollowWay, RigNode)> Each, HashSet<(RigNode, FollowWay, Side?)> Sides, HashSet<(FollowWay, RigNode)> Sources)> taken;

    private CrossedFollowers(CheckedRig rig)
    {
        (this.rig, pairs) = (rig, rig.Pairs);
        all = [.. Solved(rig.Model), .. Turned(rig.Model)];
        taken = new(() => (
            [.. all.Select(each => (each.Follower, each.Way, each.Source))],
            [.. all.Select(each => (each.Follower, each.Way, pairs.SideOf(each.Source)))],
            [.. all.Select(each => (each.Way, each.Source))]));
    }

    public static IEnumerable<CrossedSource> In(CheckedRig rig)
    {
        var followers = new CrossedFollowers(rig);
        return followers.all.Select(followers.Crossed).OfType<CrossedSource>();
    }

    private CrossedSource? Crossed(Followed each)
    {
        var (follower, source) = (each.Follower, each.Source);
        return pairs.SideOf(follower) is { } mine && pairs.SideOf(source) is { } theirs && mine != theirs && pairs.CounterpartOf(source) is { } meant && meant != each.Beside
            && NameOnTheOtherSide.Contradiction(source, rig.Conventions) is null && IsMistaken(each, mine, meant)
            ? new(each.Sentence, each.Way, follower, mine, source, meant) { Given = (each.Said.Event, each.Argument), Place = each.Said.Place }
            : null;
    }

    private bool IsMistaken(Followed each, Side mine, RigNode meant)
    {
        var (follower, way, source) = (each.Follower, each.Way, each.Source);
        if (way == FollowWay.Twisted)
            return true; // a roll is shared out along one bone
        // Who goes by something of its own side as well goes by the other side's on purpose; and hands point at each other.
        if (way == FollowWay.Curved ? taken.Value.Each.Contains((follower, way, meant)) : taken.Value.Sides.Contains((follower, way, mine)))
            return false;
        var other = pairs.CounterpartOf(follower);
        if ((way == FollowWay.Aimed || way == FollowWay.Rolled) && other is not null && Stand.Of(source)?.At is RigNode at && at == Stand.Of(other)?.At)
            return false;
        // What stands at the joint above, or at its own, is nothing to aim at: toes that point at the other foot do so on purpose.
        if (way == FollowWay.Aimed && Stand.Of(meant)?.At is RigNode stands && (stands == follower || (follower.Parent.TryKnown(out var above) && stands == above)))
            return false;
        return pairs.IsNamedAfter(source, follower) || Limbs.AreOne(other, source, pairs) || BothTake(each, meant);
    }

    // One side was copied to make the other, and the name stayed: this side's is there for nothing.
    private bool BothTake(Followed each, RigNode meant) =>
        rig.Model.IsWhole && pairs.CounterpartOf(each.Follower) is { } other && taken.Value.Each.Contains((other, each.Way, each.Source)) && !taken.Value.Sources.Contains((each.Way, meant));

    private static IEnumerable<Followed> Solved(RigModel model)
    {
        foreach (var solver in model.TwoBones.Cast<RigSolver>().Concat(model.ManyBones))
        {
            if (solver.Copy is not { IsUnknown: false, Chain.Joints: { Count: > 0 } joints })
                continue;
            if (solver.Reached is { } reached && Known(solver.Goal) is { } goal)
                yield return new(solver, FollowWay.Reaching, reached, joints[joints.Count - 1], goal);
            if (solver.Faced is { } faced && Known(solver.Pole) is { } pole)
                yield return new(solver, FollowWay.Facing, faced, joints[joints.Count / 2], pole);
        }

        foreach (var curve in model.Curves)
        {
            if (curve is not { NodesAreOpen: false, Copy: { IsUnknown: false, Chain.Joints: { Count: > 0 } joints } })
                continue;
            for (var i = 0; i < curve.Nodes.Count; i++)
            {
                if (curve.Nodes[i] is { IsUnknown: false } node)
                    yield return new(curve, FollowWay.Curved, curve.Led[i], joints[joints.Count - 1], node);
            }
        }
    }

    private static IEnumerable<Followed> Turned(RigModel model)
    {
        foreach (var aim in model.Aims)
        {
            if (aim.Node is not { IsUnknown: false } node)
                continue;
            if (aim.Pointed is { } pointed && Known(aim.Target) is { } target)
                yield return new(aim, FollowWay.Aimed, pointed, node.Original ?? node, target);
            if (aim.Rolled is { } rolled && aim.Up.TryKnown(out var up) && up is { Node.IsUnknown: false })
                yield return new(aim, FollowWay.Rolled, rolled, node.Original ?? node, up.Node);
        }

        foreach (var twist in model.Twists)
        {
            if (twist is not { Spanned: { } spanned, Joints: [{ IsUnknown: false } first, ..] } || !twist.Ends.TryKnown(out var ends) || ends is not { Start.IsUnknown: false, End.IsUnknown: false })
                continue;
            yield return new(twist, FollowWay.Twisted, spanned, first, ends.Start) { Beside = ends.End };
            yield return new(twist, FollowWay.Twisted, spanned, first, ends.End) { Beside = ends.Start, Argument = 1 };
        }

        foreach (var falloff in model.Falloffs)
        {
            if (falloff is { Sourced: { } sourced, Joints: [.., { IsUnknown: false } last] } && Known(falloff.Source) is { } source)
                yield return new(falloff, FollowWay.Sharing, sourced, last.Original ?? last, source);
        }
    }

    private static RigNode? Known(Fact<RigNode?> node) => node.TryKnown(out var known) && known is { IsUnknown: false } ? known : null;

    /// <summary>A node that a sentence makes another follow, where that was said, and the node that it takes beside it.</summary>
    private sealed record Followed(RigElement Sentence, FollowWay Way, (int Event, PlaceId Place) Said, RigNode Follower, RigNode Source)
    {
        public int Argument { get; init; }

        public RigNode? Beside { get; init; }
    }
}
