namespace Condyle.Runtime.Tests.Embedding;

/// <summary>Motion capture, and clips of an older skeleton, onto the controls.</summary>
internal static class Actor
{
    private static readonly JointMap Names = new JointMap()
        .With("LeftArm", "shoulder_left").With("LeftForeArm", "elbow_left").With("LeftHand", "wrist_left");

    public static MotionMatchResult Wave(CompiledRig rig, string path) => MotionMatch.Run(rig, JointMotion.FromBvh(path), Names);

    public static MotionMatchResult Old(CompiledRig rig) => MotionMatch.Run(
        rig, JointMotion.FromGltf("old_worker.glb", "walk"), new JointMap().With("upperarm_l", "shoulder_left"), new MotionMatchSettings { Rest = RestPolicy.KeepTurns });
}
