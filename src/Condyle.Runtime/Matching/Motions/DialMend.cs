using Condyle.Evaluation;
using Condyle.Runtime.Baking;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>What a dial does for a joint that is off.</summary>
internal sealed class DialMend
{
    /// <summary>Nearer means that so much is left at most: a joint that only stirs isn't brought anywhere.</summary>
    private const double Left = 0.9;

    /// <summary>Values that leave the joint off by no more than this share of what it was are as near.</summary>
    private const double AsNear = 0.01;

    /// <summary>Change that is rounding, in metres and degrees.</summary>
    private const double Rounding = 1e-6;

    /// <summary>Into so many steps the way from a dial's default to one of its ends is parted.</summary>
    private const int Steps = 200;

    /// <summary>Two steps of which a third was taken away so often are less than a float's last digit.</summary>
    private const int Parts = 40;

    /// <summary>How far a dial is turned towards its ends. No round parts: a drum that turns several times would stand as it stood.</summary>
    private static readonly float[] Ways = [0.97f, 0.53f, 0.26f, 0.11f, 0.03f];

    private readonly RigInstance live;
    private readonly CompiledDial dial;
    private readonly OwnOff own;
    private readonly Miss miss;
    private readonly Affine3d[] should;
    private readonly double before;
    private readonly Place stood;

    /// <param name="live">The rig as it is posed when the joint is furthest off. The dial is turned, and not turned back.</param>
    /// <param name="dial">The dial.</param>
    /// <param name="own">How far joints are off by themselves.</param>
    /// <param name="miss">The joint.</param>
    /// <param name="should">Where the joints should be by then.</param>
    public DialMend(RigInstance live, CompiledDial dial, OwnOff own, Miss miss, Affine3d[] should)
    {
        (this.live, this.dial, this.own, this.miss, this.should) = (live, dial, own, miss, should);
        before = OffAt(dial.AtRest);
        stood = live.Place(miss.Joint);
    }

    private IEnumerable<float> Ends => new[] { dial.From, dial.To }.Where(end => end != dial.AtRest);

    /// <summary>Whether the joint comes nearer when the dial is turned some part of the way towards one of its ends.</summary>
    /// <remarks>A joint that stays where it is isn't brought anywhere, though it may look so from a joint above that goes.</remarks>
    public bool BringsNearer()
    {
        foreach (var way in Ways)
        {
            var stirs = false;
            foreach (var end in Ends)
            {
                var off = OffAt(dial.AtRest + ((end - dial.AtRest) * way));
                if (Off.Between(live.Place(miss.Joint), stood) is { Metres: <= Rounding, Degrees: <= Rounding })
                    continue;
                if (off < before * Left)
                    return true;
                stirs = true;
            }

            if (!stirs)
                break;
        }

        return false;
    }

    /// <summary>The value at which the joint is nearest; where several are as near, as of a drum that turns several times, the one next to the default.</summary>
    public float Nearest()
    {
        List<(double Value, double Off)> found = [.. Ends.Select(NearestTowards).Select(value => (value, OffAt(value)))];
        var least = found.Min(value => value.Off);
        return (float)found.Where(value => value.Off <= least + (before * AsNear)).MinBy(value => Math.Abs(value.Value - dial.AtRest)).Value;
    }

    /// <summary>The first value on the way to an end from which the joint goes away again.</summary>
    private double NearestTowards(float end)
    {
        var step = ((double)end - dial.AtRest) / Steps;
        var (nearest, least) = (0, before);
        for (var next = 1; next <= Steps; next++)
        {
            var off = OffAt(dial.AtRest + (next * step));
            if (off < least - Rounding)
                (nearest, least) = (next, off);
            else if (off > least + Rounding && least < before * Left)
                break;
        }

        var (near, far) = (dial.AtRest + (Math.Max(nearest - 1, 0) * step), dial.AtRest + (Math.Min(nearest + 1, Steps) * step));
        for (var part = 0; part < Parts; part++)
        {
            var third = (far - near) / 3;
            (near, far) = OffAt(near + third) <= OffAt(far - third) ? (near, far - third) : (near + third, far);
        }

        return (near + far) / 2;
    }

    private double OffAt(double value)
    {
        live.SetDial(dial.Index, (float)value);
        live.Evaluate();
        return miss.Of(own.Of(live, should, miss.Joint));
    }
}
