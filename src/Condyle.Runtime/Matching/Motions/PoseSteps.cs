using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Runtime.Matching.Fitting;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>Sets the controls by which some exported joints are posed.</summary>
internal interface IPoseStep
{
    /// <param name="pose">The pose, whose controls are set.</param>
    /// <param name="wanted">Where the exported joints should be.</param>
    void Put(LivePose pose, IReadOnlyList<Affine3d> wanted);
}

/// <summary>Puts a node that a control carries where an exported joint should be.</summary>
/// <param name="Joint">The joint's index.</param>
/// <param name="Handle">The node and its control: the joint itself, or its copy that controls turn.</param>
/// <param name="Turns">Whether the control turns the node.</param>
/// <param name="Moves">Whether it moves it too.</param>
/// <param name="Sight">What of the joint points at the node instead, as a direction in the joint's own frame, and as long as the node is away at rest.</param>
internal sealed record PoseStep(int Joint, Handle Handle, bool Turns, bool Moves, Vector3d? Sight = null) : IPoseStep
{
    public void Put(LivePose pose, IReadOnlyList<Affine3d> wanted)
    {
        var frame = wanted[Joint];
        if (Sight is { } sight)
            pose.Move(Handle, frame.Origin + frame.Rotation.Rotate(sight));
        else if (Turns && Moves)
            pose.Place(Handle, frame);
        else if (Turns)
            pose.Turn(Handle, frame.Rotation);
        else
            pose.Move(Handle, frame.Origin);
    }
}

/// <summary>Lays a curve so that the exported joints along it come to where they should be.</summary>
/// <param name="Through">The controls that the curve goes through and that nothing else has needed.</param>
/// <param name="Stretch">The switch by which the chain stretches.</param>
/// <param name="Joints">The joints, and whether the curve turns them too.</param>
internal sealed record CurveStep(IReadOnlyList<Handle> Through, RigSwitch? Stretch, IReadOnlyList<(int Index, RigNode Node, bool Turns)> Joints) : IPoseStep
{
    public void Put(LivePose pose, IReadOnlyList<Affine3d> wanted)
    {
        new CurveFit(pose, Through, Stretch, [.. Joints.Select(joint => new FitTarget(joint.Node, wanted[joint.Index], joint.Turns))]).Run();
        pose.Notes.AddRange(Through.SelectMany(pose.PassedLimits));
    }
}
