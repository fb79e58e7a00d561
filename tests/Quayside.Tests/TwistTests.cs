using System.Numerics;
using Condyle;
using Condyle.Runtime;

namespace Quayside.Tests;

/// <summary>Rolls are shared out along the bones by where their twist joints lie: up the forearm at a third and at two thirds, down the upper arm and the thigh at a half.</summary>
public sealed class TwistTests
{
    [Theory]
    [InlineData(60)]
    [InlineData(-80)]
    public void The_twist_joints_take_their_thirds_of_a_wrist_s_roll_and_none_of_its_bend(float degrees)
    {
        var rig = RigCompiler.Compile(Rig.Build(new Stevedore()));
        foreach (var side in Side.Both)
        {
            var (rest, live) = (rig.NewInstance(), rig.NewInstance());
            live.SetSwitch(rig.SwitchIndex($"hand_{side}.fk"), 1);
            var bend = Quaternion.CreateFromAxisAngle(Vector3.UnitX, 0.4f);
            live.SetTurn(rig.ControlIndex($"turn_wrist_{side}"), bend * Quaternion.CreateFromAxisAngle(Vector3.UnitY, degrees * MathF.PI / 180));
            rest.Evaluate();
            live.Evaluate();
            foreach (var (joint, share) in new[] { ($"elbow_twist_1_{side}", 1 / 3f), ($"elbow_twist_2_{side}", 2 / 3f), ($"elbow_{side}", 0f) })
            {
                var turned = Frame.Of(rest.JointWorld(rig.JointIndex(joint))).DegreesTo(Frame.Of(live.JointWorld(rig.JointIndex(joint))));
                Assert.Equal(MathF.Abs(degrees) * share, turned, 0.5);
            }
        }
    }

    [Theory]
    [InlineData("hand", "shoulder")]
    [InlineData("foot", "hip")]
    public void Half_way_down_an_upper_arm_and_a_thigh_half_of_the_roll_has_come(string goal, string root)
    {
        const float Roll = 50;
        var rig = RigCompiler.Compile(Rig.Build(new Stevedore()));
        foreach (var side in Side.Both)
        {
            var (rest, live) = (rig.NewInstance(), rig.NewInstance());
            live.SetSwitch(rig.SwitchIndex($"{goal}_{side}.fk"), 1);
            live.SetTurn(rig.ControlIndex($"turn_{root}_{side}"), Quaternion.CreateFromAxisAngle(Vector3.UnitY, Roll * MathF.PI / 180));
            rest.Evaluate();
            live.Evaluate();
            foreach (var (joint, share) in new[] { ($"{root}_{side}", 1f), ($"{root}_twist_{side}", 0.5f) })
                Assert.Equal(Roll * share, Frame.Of(rest.JointWorld(rig.JointIndex(joint))).DegreesTo(Frame.Of(live.JointWorld(rig.JointIndex(joint)))), 0.5);
        }
    }
}
