using Condyle.Model;

namespace Condyle.Rules;

/// <summary>A sentence that moves a node: what it does in words, the nodes that it takes, what these are to it, and with which weights.</summary>
internal sealed record SidedWriter(string Way, PlaceId Place, IReadOnlyList<(string Role, RigNode? Node)> Sources)
{
    public IReadOnlyList<WeightPolynomial> Weights { get; init; } = [];

    /// <summary>Whether its weights are known to add up to one.</summary>
    public bool IsWhole { get; init; }

    public bool IsSolver { get; init; }

    /// <summary>All sentences of a rig that move nodes, each at the first node that it moves.</summary>
    public static IEnumerable<(RigNode Node, SidedWriter Writer)> Of(CheckedRig rig)
    {
        var model = rig.Model;
        foreach (var drive in model.Drives)
        {
            if (drive.Target is null || drive.Sources.Count == 0)
                continue;
            var last = drive.Sources[drive.Sources.Count - 1];
            yield return (drive.Target, new(last.Way == DriveWay.Matrix ? "follows by matrix" : "follows by channels", last.Place, [("its source", last.Source)]));
        }

        foreach (var blend in model.Blends.Where(blend => !blend.SourcesAreOpen && blend.Sources.Count > 1))
        {
            var first = blend.Node ?? blend.Chain?.Joints?.FirstOrDefault();
            var weights = blend.Sources.Select(source => source.Weight.TryKnown(out var weight) ? weight : null).ToList();
            if (first is not null && weights.TrueForAll(weight => weight is not null))
            {
                yield return (first, new($"is blended from {blend.Sources.Count} sources", blend.Place, [.. blend.Sources.Select(source => ("a source", source.Node ?? source.Copy?.Joints.FirstOrDefault()))])
                {
                    IsWhole = rig.Sums.IsOne(blend),
                    Weights = [.. weights.Select(weight => weight!)],
                });
            }
        }

        var crossed = new HashSet<RigElement>(rig.Once(SourceOnTheOtherSide.Crossed).Select(each => each.Sentence)); // which CDY3004 says
        foreach (var solver in model.TwoBones.Cast<RigSolver>().Concat(model.ManyBones))
        {
            if (!crossed.Contains(solver) && solver.Copy?.Joints.FirstOrDefault() is { } first && solver.Goal.TryKnown(out var goal) && solver.Pole.TryKnown(out var pole))
                yield return (first, new($"is solved by {(solver is RigTwoBone ? "two-bone" : "many-bone")} IK{(pole is null ? " without a pole" : "")}", solver.Place, [("its goal", goal), ("its pole", pole)]) { IsSolver = true });
        }

        foreach (var curve in model.Curves.Where(curve => !curve.NodesAreOpen && curve.Copy?.Joints.Count > 0))
            yield return (curve.Copy!.Joints[0], new($"is laid along a curve through {curve.Nodes.Count} nodes", curve.Place, [.. curve.Nodes.Select(node => ("a node of its curve", node))]));
        foreach (var aim in model.Aims.Where(aim => aim.Node is not null && !aim.Target.IsOpen))
            yield return (aim.Node!, new("aims", aim.Place, [("its target", aim.Target.TryKnown(out var target) ? target : null)]));
        foreach (var space in model.Spaces.Where(space => space.Control is not null && !space.ParentsAreOpen))
            yield return (space.Control!, new($"rides one of {space.Parents.Count} nodes", space.Place, [.. space.Parents.Select(parent => ("a node that it rides", parent.Node))]));
    }
}
