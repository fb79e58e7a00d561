using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

/// <summary>Measures how far the joints of one copy are from the frames that the other has.</summary>
internal static class Compare
{
    public const double DegreesPerRadian = 180 / Math.PI;

    public static IReadOnlyList<JointMatch> Each(LimbPlan limb, IReadOnlyList<Affine3d> wanted, Func<LimbJoint, Affine3d> found) =>
        [.. limb.Joints.Zip(wanted, (joint, frame) => Of(joint, frame, found(joint).Frame))];

    /// <summary>The angle between two frames, in degrees.</summary>
    public static double Angle(Affine3d found, Affine3d wanted) => Quaterniond.Angle(found.Rotation, wanted.Rotation) * DegreesPerRadian;

    private static JointMatch Of(LimbJoint joint, Affine3d wanted, Affine3d found) => new(
        joint.Index, LimbTable.NameOf(joint.Original), (found.Origin - wanted.Origin).Length, Angle(found, wanted));
}
