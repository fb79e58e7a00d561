using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY7004: a pole beside the line from root to goal says to which side a limb bends; one on the line doesn't.</summary>
internal sealed class PoleOnLine : EvaluatedRule
{
    /// <summary>A pole nearer to the line than this share of the bones' length: the smallest move takes it to the other side.</summary>
    private const double Near = 0.01;

    public override string Id => "CDY7004";

    public override string Title => "Pole on the line from root to goal";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "place the pole at the chain's pole point";

    public override IEnumerable<Finding> Check(CheckedRig rig) => rig.Model.IsPart ? [] :
        from found in rig.Once(In)
        select new Finding(
            this,
            found.Solver,
            $"Pole '{found.Pole.Name}' rests {Lengths.Of(found.Distance)} from the line between the root of {found.Solver.Copy!.Title} and its goal: the smallest move takes it to the other side, and the limb flips over. Place it to the side of the bend, as at .PolePoint(...).",
            found.Solver.Place)
        {
            ActsOn = found.Pole,
            Related = [found.Pole.Place],
            Repairs = PolePlace.For(found.Pole, found.Solver, rig),
        };

    /// <summary>The solvers with a pole on the line at rest, and how far from it.</summary>
    public static IEnumerable<(RigSolver Solver, RigNode Pole, double Distance)> In(CheckedRig rig)
    {
        foreach (var chain in rig.SolvedChains)
        {
            if (chain.By is not RigSolver solver || chain.Joints.Count < 3
                || !solver.Pole.TryKnown(out var pole) || pole is null || !rig.Rest.TryWorldOf(pole, out var poleWorld)
                || !solver.Goal.TryKnown(out var goal) || goal is null || !rig.Rest.TryWorldOf(goal, out var goalWorld)
                || (goalWorld.Origin - chain.Root).Direction is not { } line)
                continue;
            var distance = (poleWorld.Origin - chain.Root).Across(line).Length;
            if (distance < Near * chain.Length)
                yield return (solver, pole, distance);
        }
    }
}
