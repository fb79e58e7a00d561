using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// What a rig means, in double precision: world(node) = world(parent) · placement(node) · T · R · S, each worked out once, on demand.
/// It is the measure of the fast evaluator, and answers rules that need numbers.
/// </summary>
internal static class ReferenceEvaluator
{
    /// <summary>Above this weight a label shows.</summary>
    public const double Shown = 0.5;

    /// <summary>Evaluates a rig in a pose.</summary>
    /// <exception cref="RigGeometryException">Nodes need each other in a loop, whose path the message prints, or a fact isn't known.</exception>
    public static ReferencePose Evaluate(RigModel model, RestPose rest, Pose pose)
    {
        var frames = new PoseFrames(model, rest, pose);
        var worlds = model.Nodes.ToDictionary(node => node.Id, frames.WorldOf);
        var joints = model.Nodes.Where(node => node.IsExported).ToDictionary(node => node.Id, frames.ChannelsOf);
        var labels = model.Labels.ToDictionary(label => label.Id, label => IsShown(label, frames));
        return new ReferencePose(worlds, joints, frames.Shears, labels, frames.Morphs());
    }

    private static bool IsShown(RigLabel label, PoseFrames frames) =>
        !label.ShownBy.TryKnown(out var weight) ? throw new RigGeometryException($"The weight of {label.Title} isn't known.")
        : weight is null || frames.ValueOf(weight) > Shown;
}
