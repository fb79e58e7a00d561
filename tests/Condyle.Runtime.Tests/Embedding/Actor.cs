namespace Condyle.Runtime.Tests.Embedding;

/// <summary>Motion capture, and clips of an older skeleton, onto the controls.</summary>
internal static class Actor
{
    private static readonly JointMap Names = new JointMap()
        .With("leftUpperArm", "shoulder_left").With("leftLowerArm", "elbow_left").With("leftHand", "wrist_left");

    public static MotionMatchResult Wave(CompiledRig rig, string path) => MotionMatch.Run(rig, JointMotion.FromBvh(path), Names);

    public static MotionMatchResult Old(CompiledRig rig) => MotionMatch.Run(
        rig, JointMotion.FromGltf("old_worker.glb", "walk"), new JointMap().With("old_shoulder_left", "shoulder_left"), new MotionMatchSettings { Rest = RestPolicy.KeepTurns });
}
