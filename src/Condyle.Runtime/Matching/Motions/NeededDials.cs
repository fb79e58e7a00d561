using Condyle.Evaluation;
using Condyle.Runtime.Baking;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>
/// Finds the dials that a match leaves at their defaults and that the motion seems to need: a match sets controls alone, and where a joint is furthest off by itself, turning the dial would bring it nearer.
/// </summary>
internal sealed class NeededDials(CompiledRig rig, Retargeting wanted, int[] from)
{
    /// <summary>What is off by less isn't worth a dial.</summary>
    private const double LeastMetres = 1e-4, LeastDegrees = 0.05;

    /// <summary>Where this share of the largest is met, it is as far off.</summary>
    private const double AsFar = 0.999;

    private readonly RigInstance live = rig.NewInstance();
    private readonly OwnOff own = new(rig, from);
    private readonly Comparison off = new(rig);

    /// <summary>Takes down how far the joints are off by themselves that the motion has. One that stands right in the world isn't off, whatever the joint above it is.</summary>
    /// <param name="evaluated">The rig as the clip poses it.</param>
    /// <param name="joint">The joint's index.</param>
    /// <param name="inWorld">How far it is off in the world.</param>
    /// <param name="should">Where the joints should be.</param>
    /// <param name="time">When.</param>
    public void Take(RigInstance evaluated, int joint, Off inWorld, Affine3d[] should, float time)
    {
        if (from[joint] >= 0 && own.Of(evaluated, should, joint) is var byItself)
            off.Take(joint, new Off(Math.Min(byItself.Metres, inWorld.Metres), Math.Min(byItself.Degrees, inWorld.Degrees)), time);
    }

    /// <param name="player">The clip.</param>
    /// <param name="inWorld">How far each joint is off in the world: of those that a dial brings nearer, the one that is furthest off is told.</param>
    /// <param name="cancellation">Stops it between joints.</param>
    public IReadOnlyList<NeededDial> Find(ClipPlayer player, Comparison inWorld, CancellationToken cancellation)
    {
        List<CompiledDial> idle = [.. rig.Dials.Where(dial => !dial.AlsoKnownAs.Append(dial.Name).Any(player.Clip.Dials.ContainsKey))];
        var found = new SortedDictionary<int, NeededDial>();
        foreach (var miss in rig.Joints.SelectMany(joint => Misses(joint.Index)).OrderByDescending(miss => miss.Weighed(inWorld)))
        {
            cancellation.ThrowIfCancellationRequested();
            if (found.Count == idle.Count)
                break;
            var at = MomentOf(miss, inWorld, player);
            var should = wanted.At(at);
            player.Pose(live, at);
            foreach (var dial in idle.Where(dial => !found.ContainsKey(dial.Index)))
            {
                var mend = new DialMend(live, dial, own, miss, should);
                if (mend.BringsNearer())
                    found.Add(dial.Index, new NeededDial(dial.Name, miss.Peak.Joint, at, mend.Nearest()));
                live.SetDial(dial.Index, dial.AtRest);
            }
        }

        return [.. found.Values];
    }

    /// <summary>When the joint is furthest off in the world, which is told of it besides, unless it is further off by itself at another time.</summary>
    private float MomentOf(Miss miss, Comparison inWorld, ClipPlayer player)
    {
        var at = miss.PeakOf(inWorld).At;
        player.Pose(live, at);
        live.Evaluate();
        return miss.Of(own.Of(live, wanted.At(at), miss.Joint)) >= miss.Peak.Value * AsFar ? at : miss.Peak.At;
    }

    private IEnumerable<Miss> Misses(int joint)
    {
        var (metres, degrees) = off.Of(joint);
        if (metres.Value > LeastMetres)
            yield return new Miss(joint, metres, Turns: false);
        if (degrees.Value > LeastDegrees)
            yield return new Miss(joint, degrees, Turns: true);
    }
}
