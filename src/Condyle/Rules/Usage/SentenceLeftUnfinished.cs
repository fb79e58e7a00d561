using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY9003: a sentence that was begun says what it is for.</summary>
internal sealed class SentenceLeftUnfinished : ModelRule
{
    public override string Id => "CDY9003";

    public override string Title => "Sentence left unfinished";

    public override Severity Severity => Severity.Error;

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions) =>
        from missing in Unfinished(model)
        where !missing.Sentence.IsUnknown && !model.IsPart // whoever calls it may finish it
        select new Finding(this, missing.Sentence, $"{Wording.First(missing.Sentence.Title)} {missing.What}. Finish it with {missing.With}, or remove it.", missing.Sentence.Place) { ActsOn = missing.On };

    private static IEnumerable<(RigElement Sentence, RigNode? On, string What, string With)> Unfinished(RigModel model)
    {
        foreach (var drive in model.Drives.Where(drive => drive.Sources.Count == 0 && !drive.KeepsOffset.IsOpen))
            yield return (drive, drive.Target, "has no source: the node follows nothing", "'ByChannels' or 'ByMatrix'");
        foreach (var blend in model.Blends.Where(blend => blend.Sources.Count == 0 && !blend.SourcesAreOpen))
            yield return (blend, blend.Node, "has no sources: it stays in its rest pose", "'From'");
        foreach (var solver in model.TwoBones.Concat<RigSolver>(model.ManyBones).Where(solver => solver.Goal.TryKnown(out var goal) && goal is null))
            yield return (solver, null, "has no goal: it reaches for nothing", "'Reach'");
        foreach (var curve in model.Curves.Where(curve => curve.Nodes.Count < 2 && !curve.NodesAreOpen))
            yield return (curve, null, curve.Nodes.Count == 0 ? "goes through no node" : "goes through one node, and a curve needs two", "'Through'");
        foreach (var aim in model.Aims.Where(aim => aim.Target.TryKnown(out var target) && target is null))
            yield return (aim, aim.Node, "has no target: it points at nothing", "'At'");
        foreach (var twist in model.Twists.Where(twist => twist.Ends.TryKnown(out var ends) && ends is null))
            yield return (twist, null, "has no ends: there is no roll to share", "'Between'");
        foreach (var falloff in model.Falloffs.Where(falloff => falloff.Source.TryKnown(out var source) && source is null))
            yield return (falloff, null, "has no source: there is no turn to share", "'From'");
        foreach (var space in model.Spaces.Where(space => space.Parents.Count == 0 && !space.ParentsAreOpen))
            yield return (space, space.Control, "has no parents: there is nothing to choose from", "a parent for each option");
        foreach (var response in model.Responses.Where(response => !response.KeysAreOpen && !response.TargetsAreOpen))
        {
            if (response.Keys.Count == 0)
                yield return (response, null, "has no keys: there is no curve", "'Key'");
            else if (response.Targets.Count == 0)
                yield return (response, null, "sets nothing", "'OntoTurn', 'OntoMove', 'OntoScale' or 'OntoMorph'");
        }

        foreach (var measure in model.Measures.Where(measure => measure.Axis.TryKnown(out var axis) && axis is null))
            yield return (measure, measure.Node, "has no axis: there is no angle to tell", "'About'");
    }
}
