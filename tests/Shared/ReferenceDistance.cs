using System.Numerics;
using Condyle.Evaluation;
using Condyle.Runtime;
using Condyle.Runtime.Matching;

namespace Condyle.Tests.Shared;

/// <summary>How far the runtime's joints are from where the double reference has them for the same controls, each seen from the rig's first joint.</summary>
internal static class ReferenceDistance
{
    /// <summary>Every joint on every frame of a clip.</summary>
    public static IEnumerable<JointDistance> Over(CompiledRig rig, Clip clip, float framesPerSecond)
    {
        var (live, player) = (rig.NewInstance(), new ClipPlayer(rig, clip));
        var joints = rig.LimbTable.Model.Nodes.Where(node => node.IsExported).ToList();
        for (var frame = 0; frame <= (int)(clip.Seconds * framesPerSecond); frame++)
        {
            player.Pose(live, frame / framesPerSecond);
            live.Evaluate();
            var exact = new LivePose(rig.LimbTable, live).Frames;
            var (exactRoot, liveRoot) = (exact.WorldOf(joints[0]).Inverse(), FrameOf(live.JointWorld(0)).Inverse());
            foreach (var (index, joint) in joints.Index())
            {
                var (should, actual) = (exactRoot * exact.WorldOf(joint), liveRoot * FrameOf(live.JointWorld(index)));
                yield return new(rig.Joints[index].Name, frame / framesPerSecond, (actual.Origin - should.Origin).Length, Quaterniond.Angle(actual.Rotation, should.Rotation) * 180 / Math.PI);
            }
        }
    }

    private static Affine3d FrameOf(Matrix4x4 m) =>
        new(new(m.M11, m.M12, m.M13), new(m.M21, m.M22, m.M23), new(m.M31, m.M32, m.M33), new(m.M41, m.M42, m.M43));
}

/// <summary>One joint on one frame.</summary>
internal readonly record struct JointDistance(string Joint, float Seconds, double Metres, double Degrees);
