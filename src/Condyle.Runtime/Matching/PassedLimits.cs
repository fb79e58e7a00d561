namespace Condyle.Runtime.Matching;

/// <summary>Which controls a clip takes beyond their limits. Nothing holds them back where a clip is made, so whoever sends one is told; of those that move nothing just then, as the turns of a limb that IK has, nothing.</summary>
internal static class PassedLimits
{
    private const int LooksPerSecond = 30;

    /// <summary>A line for each such control, with the time where it was first seen.</summary>
    public static IReadOnlyList<string> Of(CompiledRig rig, Clip clip)
    {
        var (player, live, passed) = (new ClipPlayer(rig, clip), rig.NewInstance(), new MatchNotes());
        var shown = new ShownMotion(rig);
        var untold = rig.Controls.Where(control => control.Limits.Count > 0).ToList();
        for (var look = 0; look <= clip.Seconds * LooksPerSecond && untold.Count > 0; look++)
        {
            var time = (float)look / LooksPerSecond;
            player.Pose(live, time);
            var isTaken = false;
            untold.RemoveAll(control =>
            {
                List<MatchNote> notes = [];
                new ControlLocks(control, notes).Look(live.ControlMove(control.Index), live.ControlTurn(control.Index));
                if (notes.Count == 0)
                    return false;
                if (!isTaken)
                    shown.Take(live);
                isTaken = true;
                if (!shown.Moves(live, control.Index))
                    return false;
                passed.Take(notes, time);
                return true;
            });
        }

        return passed.All;
    }
}
