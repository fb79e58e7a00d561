using Condyle.Model;

namespace Condyle.Evaluation;

internal static class ChainLength
{
    /// <summary>The length of a copy's bones together, in metres at rest.</summary>
    public static double AtRest(RigCopy copy, RestPose rest) =>
        copy.Joints.Skip(1).Select((next, i) => (rest.WorldOf(next).Origin - rest.WorldOf(copy.Joints[i]).Origin).Length).Sum();
}
