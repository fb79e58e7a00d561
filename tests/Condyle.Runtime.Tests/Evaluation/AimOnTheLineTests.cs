using System.Numerics;
using Condyle.Evaluation;
using Condyle.Runtime.Matching;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>A lamp that is drawn halfway between what it looks at and what is up for it, two metres from the origin and two centimetres from both: up lies on the line in every pose.</summary>
public class AimOnTheLineTests
{
    private static readonly CompiledRig Lamp = DefinedRig.Compile(rig =>
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new(1.1f, 0.9f, -1.7f), turned: Quaternion.CreateFromYawPitchRoll(0.4f, 1.1f, -0.7f));
        var arm = rig.Control("arm");
        var (ahead, behind) = (rig.Control("ahead").Under(arm).PlacedAt(rig.Spot(lamp, new Vector3(0.02f, 0.05f, 0))), rig.Control("behind").Under(arm).PlacedAt(rig.Spot(lamp, new Vector3(-0.02f, 0.05f, 0))));
        rig.Blend((Node)lamp).From(ahead, 0.5f).From(behind, 0.5f);
        rig.Aim(lamp).At(ahead).Up(behind);
    });

    [Fact]
    public void Rounding_is_not_taken_for_a_side()
    {
        var (live, choices, joint) = (Lamp.NewInstance(), new RandomChoices(5), Lamp.LimbTable.Model.Nodes.Single(node => node.IsExported));
        for (var pose = 0; pose < 500; pose++)
        {
            live.SetTurn(0, choices.Turn(0.7f));
            live.SetMove(0, choices.Vector(0.5f));
            live.Evaluate();
            var should = new LivePose(Lamp.LimbTable, live).Frames.WorldOf(joint).Rotation;
            var off = Quaterniond.Angle(((Quaterniond)live.JointRotation(0)).Normalized(), should) * 180 / Math.PI;
            Assert.True(off < 0.02, $"rolled by {off}° in pose {pose}");
        }
    }
}
