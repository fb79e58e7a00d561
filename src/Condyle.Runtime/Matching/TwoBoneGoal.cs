using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

/// <summary>The way back through <see cref="TwoBoneReach"/>: how far away the goal must be, and by which weight the bones lengthen, for the tip to come to a distance.</summary>
internal static class TwoBoneGoal
{
    /// <summary>Bones that differ by less than this share have the same length: a pose in floats is no nearer.</summary>
    private const double Same = 1e-6;

    /// <summary>So many times the soft part beyond it, e^−20 of it is left.</summary>
    private const double SoftEnd = 20;

    /// <summary>
    /// By this share a goal goes beyond where a limb is straight or folded, so that it stays so whatever a float makes of it:
    /// the height of the middle joint goes with the root of what is missing.
    /// </summary>
    private const double Beyond = 4e-6;

    private const int Halvings = 80;

    /// <param name="task">The solver.</param>
    /// <param name="tip">How far the tip should be from the root.</param>
    /// <param name="bones">How long each bone should be.</param>
    /// <param name="isFree">Whether the weight can be chosen.</param>
    public static (double Goal, double Stretch) For(TwoBoneTask task, double tip, (double First, double Second) bones, bool isFree)
    {
        var longer = task.Unsolved.Length > 0 ? (bones.First + bones.Second) / task.Unsolved.Length : 1;
        var stretch = isFree ? StretchFor(task, tip, longer) : task.Stretch;
        var goal = GoalAt(task, tip, stretch);
        var isFlat = TwoBoneTriangle.Solve(bones.First, bones.Second, tip).Height < LimbMatch.AllowedMetres / 4;
        return (!isFlat ? goal
            : tip > Math.Max(bones.First, bones.Second) ? Math.Max(goal, task.Unsolved.Length * (1 + Beyond))
            : goal * (1 - Beyond), stretch);
    }

    private static double StretchFor(TwoBoneTask task, double tip, double longer)
    {
        var isLonger = longer > 1 + Same;
        var unstretched = isLonger ? tip / longer : tip;
        var goal = GoalAt(task, unstretched, 0);
        var most = task.ReachOf(goal, 1).Factor - 1; // what the whole weight would lengthen there
        return !isLonger ? (most > Same ? 0 : task.Stretch)
            : most > Same ? Math.Min(1, (longer - 1) / most)
            : unstretched > task.Unsolved.Length * (1 - Same) ? 1
            : task.Stretch;
    }

    /// <summary>The nearest goal for which the tip comes to the distance; beyond what it reaches, one that it reaches for.</summary>
    private static double GoalAt(TwoBoneTask task, double tip, double stretch)
    {
        if (tip <= TipAt(0) || TipAt(tip) == tip || (task.Options.Softness == 0 && stretch == 0))
            return tip;
        var (near, far) = (0.0, (task.Unsolved.Length * task.Options.Most) + (SoftEnd * task.Options.Softness * task.Unsolved.Length));
        if (TipAt(far) < tip)
            return Math.Max(tip, far);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (near + far) / 2;
            (near, far) = TipAt(middle) < tip ? (middle, far) : (near, middle);
        }

        return far;

        double TipAt(double goal) => task.ReachOf(goal, stretch) is var reach ? reach.Distance * reach.Factor : 0;
    }
}
