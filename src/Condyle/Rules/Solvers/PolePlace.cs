using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>Where a pole is best placed: at its chain's own pole point.</summary>
internal static class PolePlace
{
    /// <summary>The repair that places it there; none where the chain has no pole point, or the pole can't be placed elsewhere alone.</summary>
    public static IReadOnlyList<Repair> For(RigNode pole, RigSolver solver, CheckedRig rig)
    {
        var chain = rig.SolvedChains.FirstOrDefault(solved => solved.By == solver);
        return chain is { Joints.Count: > 2 } && Bend.Of(chain.Root, chain.Middle, chain.Tip) is not null
            ? Placing.Of(pole, solver, (solver.Id, 0), $".{nameof(Copy.PolePoint)}({Away(chain)}f)", "the chain's pole point", rig)
            : [];
    }

    // As far as a bone is long, in whole centimetres.
    private static string Away(SolvedChain chain) => Invariant.Short(Math.Max(0.01, Math.Round(chain.Length / (chain.Joints.Count - 1), 2)));
}
