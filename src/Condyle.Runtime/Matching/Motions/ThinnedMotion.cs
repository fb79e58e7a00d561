using Condyle.Runtime.Baking;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>
/// Leaves out keys of a matched clip within a tolerance that holds in the world: what one control may be off adds up down its chain, so it is halved until no joint is off by more.
/// Bringing keys back where a joint is off, as <see cref="KeyReducer"/> does for joints, left half as many keys again on a lift of four seconds: which controls a joint hangs on isn't known, so all get one.
/// </summary>
internal static class ThinnedMotion
{
    /// <summary>A thousandth of a tolerance is rounding; what isn't right by then keeps its keys.</summary>
    private const int MostHalvings = 10;

    /// <param name="rig">The rig.</param>
    /// <param name="times">The times that every control has keys at.</param>
    /// <param name="tolerance">How far a joint may be off.</param>
    /// <param name="make">Makes the clip with what each control may be off in its own channels; whole where it is none.</param>
    /// <param name="cancellation">Stops it between frames.</param>
    public static Clip Of(CompiledRig rig, float[] times, BakeTolerance tolerance, Func<BakeTolerance?, Clip> make, CancellationToken cancellation)
    {
        var whole = make(null);
        for (var (halving, share) = (0, tolerance); halving < MostHalvings; halving++, share = new(share.Metres / 2, share.Degrees / 2))
        {
            if (make(share) is var thin && Holds(rig, times, tolerance, whole, thin, cancellation))
                return thin;
        }

        return whole;
    }

    private static bool Holds(CompiledRig rig, float[] times, BakeTolerance tolerance, Clip whole, Clip thin, CancellationToken cancellation)
    {
        var (should, actual) = ((new ClipPlayer(rig, whole), rig.NewInstance()), (new ClipPlayer(rig, thin), rig.NewInstance()));
        foreach (var time in times)
        {
            cancellation.ThrowIfCancellationRequested();
            foreach (var (player, live) in new[] { should, actual })
            {
                player.Pose(live, time);
                live.Evaluate();
            }

            foreach (var joint in rig.Joints)
            {
                if (Off.Between(actual.Item2.Place(joint.Index), should.Item2.Place(joint.Index)) is var off && (off.Metres > tolerance.Metres || off.Degrees > tolerance.Degrees))
                    return false;
            }
        }

        return true;
    }
}
