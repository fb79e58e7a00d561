using Condyle.Evaluation;
using Condyle.Runtime.Baking;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>
/// Finds the dials that a match leaves at their defaults and that the motion seems to need: a match sets controls alone, and where a joint is furthest off, turning the dial would bring it nearer.
/// </summary>
internal sealed class NeededDials(CompiledRig rig, ClipPlayer player, Retargeting wanted)
{
    /// <summary>What is off by less isn't worth a dial.</summary>
    private const double LeastMetres = 1e-4, LeastDegrees = 0.05;

    /// <summary>Nearer means that so much is left at most: a joint that only stirs isn't brought anywhere.</summary>
    private const double Left = 0.9;

    /// <summary>Change that is rounding, in metres or degrees.</summary>
    private const double Rounding = 1e-6;

    /// <summary>How far a dial is turned towards its ends. No round parts: a drum that turns several times would stand as it stood.</summary>
    private static readonly float[] Ways = [0.97f, 0.53f, 0.26f, 0.11f, 0.03f];

    private readonly RigInstance live = rig.NewInstance();

    /// <param name="off">How far the joints are off that the motion has.</param>
    /// <param name="cancellation">Stops it between moments.</param>
    public IReadOnlyList<NeededDial> Find(IReadOnlyCollection<Deviation> off, CancellationToken cancellation)
    {
        List<Miss> misses = [
            .. off.Where(joint => joint.Metres.Value > LeastMetres).Select(joint => new Miss(rig.JointIndex(joint.Metres.Joint), joint.Metres, Turns: false)),
            .. off.Where(joint => joint.Degrees.Value > LeastDegrees).Select(joint => new Miss(rig.JointIndex(joint.Degrees.Joint), joint.Degrees, Turns: true))];
        List<CompiledDial> idle = [.. rig.Dials.Where(dial => !dial.AlsoKnownAs.Append(dial.Name).Any(player.Clip.Dials.ContainsKey))];
        if (idle.Count == 0)
            return [];
        var found = new SortedDictionary<int, NeededDial>();
        foreach (var moment in misses.GroupBy(miss => miss.Peak.At).OrderBy(moment => moment.Key))
        {
            cancellation.ThrowIfCancellationRequested();
            player.Pose(live, moment.Key);
            var should = wanted.At(moment.Key);
            foreach (var dial in idle.Where(dial => !found.ContainsKey(dial.Index)))
            {
                if (Nearer(dial, [.. moment], should) is { } miss)
                    found.Add(dial.Index, new NeededDial(dial.Name, miss.Peak.Joint, moment.Key));
                live.SetDial(dial.Index, dial.AtRest);
            }
        }

        return [.. found.Values];
    }

    private Miss? Nearer(CompiledDial dial, IReadOnlyList<Miss> misses, Affine3d[] should)
    {
        foreach (var way in Ways)
        {
            var stirs = false;
            foreach (var end in new[] { dial.From, dial.To })
            {
                live.SetDial(dial.Index, dial.AtRest + ((end - dial.AtRest) * way));
                live.Evaluate();
                foreach (var miss in misses)
                {
                    var off = miss.Of(Off.Between(live.Place(miss.Joint), Place.Of(should[miss.Joint])));
                    if (off < miss.Peak.Value * Left)
                        return miss;
                    stirs |= Math.Abs(off - miss.Peak.Value) > Rounding;
                }
            }

            if (!stirs)
                break;
        }

        return null;
    }

    /// <summary>Where a joint is furthest off.</summary>
    private sealed record Miss(int Joint, Peak Peak, bool Turns)
    {
        public double Of(Off off) => Turns ? off.Degrees : off.Metres;
    }
}
