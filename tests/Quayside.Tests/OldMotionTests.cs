using System.Numerics;
using Condyle.Runtime;

namespace Quayside.Tests;

/// <summary>A clip that was baked goes back onto the dock worker's controls, and does again what it did.</summary>
[Collection("stevedore")]
public sealed class OldMotionTests(BakedStevedore stevedore)
{
    [Theory]
    [InlineData(LimbCopy.Turned)]
    [InlineData(LimbCopy.Solved)]
    public void The_lift_comes_back_from_its_joints(LimbCopy limbs)
    {
        var rig = stevedore.Rig;
        var result = MotionMatch.Run(rig, JointMotion.FromGltf(stevedore.File, "lift_crate"), settings: new MotionMatchSettings { Limbs = limbs });
        Assert.Empty(result.NotInMotion);
        Assert.True(result.Largest.Metres.Value < 2e-4 && result.Largest.Degrees.Value < 0.05, $"{result.Largest}\n{string.Join("\n", result.Notes)}");

        var (before, after) = (new ClipPlayer(rig, stevedore.Clip("lift_crate")), new ClipPlayer(rig, result.Clip));
        var (was, now) = (rig.NewInstance(), rig.NewInstance());
        for (var frame = 0; frame <= 120; frame += 8)
        {
            before.Pose(was, frame / 30f);
            after.Pose(now, frame / 30f);
            was.Evaluate();
            now.Evaluate();
            foreach (var joint in rig.Joints)
            {
                var apart = Vector3.Distance(was.JointWorld(joint.Index).Translation, now.JointWorld(joint.Index).Translation);
                Assert.True(apart < 3e-4f, $"'{joint.Name}' is {apart * 1000} mm off in frame {frame}\n{string.Join("\n", result.Notes)}");
            }
        }
    }

    [Fact]
    public void A_hand_changes_its_space_on_the_way_and_the_lift_stays_as_it_was()
    {
        var choices = new Clip("spaces", 4).Choice("hand_left.space", 0, "world").Choice("hand_left.space", 2, "chest");
        var result = MotionMatch.Run(stevedore.Rig, JointMotion.FromGltf(stevedore.File, "lift_crate"), settings: new MotionMatchSettings { Limbs = LimbCopy.Solved, Choices = choices });
        Assert.True(result.Largest.Metres.Value < 2e-4 && result.Largest.Degrees.Value < 0.05, $"{result.Largest}\n{string.Join("\n", result.Notes)}");

        var (player, live, hand) = (new ClipPlayer(stevedore.Rig, result.Clip), stevedore.Rig.NewInstance(), stevedore.Rig.ControlIndex("hand_left"));
        Vector3 HandAt(float time)
        {
            player.Pose(live, time);
            return live.ControlMove(hand);
        }

        Assert.True(Vector3.Distance(HandAt(1.9f), HandAt(2.1f)) > 0.05f, "the hand's own keys don't tell one space from the other");
    }
}
