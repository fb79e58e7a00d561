using System.Numerics;
using Condyle.Runtime.Tests.Baking;
using Condyle.Runtime.Tests.Evaluation;
using Condyle.Runtime.Tests.Gltf;

namespace Condyle.Runtime.Tests.Capture;

/// <summary>Which dials a motion is said to need: those that bring a joint nearer which the controls can't, and no others.</summary>
public sealed class NeededDialTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Of two dials the motion has turned one: that one is told, with the nearest of the values that mend it, and none is once it is keyed.</summary>
    [Fact]
    public void A_dial_that_the_motion_needs_is_told()
    {
        var rig = DefinedRig.Compile(rig =>
        {
            var frame = rig.Skeleton("winch").Root("frame");
            var (drum, flag) = (frame.Child("drum", at: new(0, 1, 0)), frame.Child("flag", at: new(0, 2, 0)));
            var winch = rig.Control("winch").PlacedAt(frame);
            rig.Drive(frame).ByChannels(winch);
            rig.Response(winch.Dial("crank", from: -720, to: 3600, unit: DialUnit.Degrees)).Key(0, 0).Key(360, 360).Continued().OntoTurn(drum, Axis.X);
            rig.Response(winch.Dial("hoisted", 0, 1)).Key(0, 0).Key(1, 0.3f).OntoMove(flag, Axis.Y);
        });
        var motion = Baked(rig, new Clip("wind", 1).Turn("winch", 0).Turn("winch", 1, 0, 30).Dial("winch.crank", (0, 0), (1, 50)));
        var result = MotionMatch.Run(rig, motion);
        var needed = Assert.Single(result.NeededDials);
        Assert.Equal(("winch.crank", "drum", 1), (needed.Dial, needed.Joint, needed.At));
        Assert.Equal(50, needed.Value, 0.05f);
        Assert.Equal(50, result.Largest.Degrees.Value, 0.1);

        result = MotionMatch.Run(rig, motion, settings: new MotionMatchSettings { Choices = new Clip("dials", 1).Dial("winch.crank", (0, 0), (1, 50)) });
        Assert.Empty(result.NeededDials);
        Assert.InRange(result.Largest.Degrees.Value, 0, 0.1);
    }

    /// <summary>The arm's control holds the arm where the dial would have turned it, so the feather is off in the world with the dial and without.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(0.6f)]
    public void A_dial_that_turns_a_limb_and_what_hangs_from_it_is_told(float fold)
    {
        var rig = DefinedRig.Compile(rig =>
        {
            var trunk = rig.Skeleton("bird").Root("trunk");
            var body = rig.Control("body").PlacedAt(trunk);
            rig.Drive(trunk).ByChannels(body);
            foreach (var side in Side.Both)
            {
                var arm = trunk.Child($"arm_{side}", at: new(side.Sign * 0.1f, 0, 0), turned: Quaternion.Normalize(new(0.1f, 0.3f * side.Sign, -0.2f, 0.9f)));
                var feather = arm.Child($"feather_{side}", at: new(0, 0, 0.2f));
                var folds = rig.Group($"fold_{side}_group").Under(body).PlacedAt(arm);
                var turn = rig.Control($"turn_arm_{side}").Under(folds).PlacedAt(arm).Lock(Channels.Move);
                rig.Drive(arm).ByChannels(turn);
                var dial = turn.Dial("fold", 0, 1, unit: DialUnit.Share);
                rig.Response(dial).Key(0, 0).Key(1, 80).OntoTurn(folds, Axis.X);
                rig.Response(dial).Key(0, 0).Key(1, 70).OntoTurn(feather, Axis.X);
            }
        });
        var motion = Baked(rig, new Clip("perch", 1).Dial("turn_arm_left.fold", (0, 0), (1, fold)));
        var result = MotionMatch.Run(rig, motion);
        Assert.Equal(70 * fold, result.Largest.Degrees.Value, 0.1);
        var needed = Assert.Single(result.NeededDials);
        Assert.Equal(("turn_arm_left.fold", "feather_left", 1), (needed.Dial, needed.Joint, needed.At));
        Assert.Equal(fold, needed.Value, 0.01f);

        result = MotionMatch.Run(rig, motion, settings: new MotionMatchSettings { Choices = new Clip("dials", 1).Dial(needed.Dial, (0, 0), (1, needed.Value)) });
        Assert.Empty(result.NeededDials);
        Assert.InRange(result.Largest.Degrees.Value, 0, 0.1);
    }

    /// <summary>All bones of a rope are as much too short, and its end is off by all of them.</summary>
    [Fact]
    public void Of_the_joints_that_a_dial_mends_the_one_that_is_furthest_off_is_told()
    {
        var rig = DefinedRig.Compile(rig =>
        {
            var post = rig.Skeleton("rope").Root("post");
            rig.Drive(post).ByChannels(rig.Control("post_control").PlacedAt(post));
            var length = rig.Control("winch").Dial("paid_out", from: 0, to: 3, unit: DialUnit.Metres);
            var above = post;
            foreach (var name in new[] { "upper", "middle", "hook" })
            {
                above = above.Child(name, at: new(0, -1, 0));
                rig.Response(length).Key(0, 0).Key(3, -1).OntoMove(above, Axis.Y);
            }
        });
        var result = MotionMatch.Run(rig, Baked(rig, new Clip("lower", 2).Dial("winch.paid_out", (0, 0), (1, 1.5f), (2, 0))));
        Assert.Equal("hook", result.Largest.Metres.Joint);
        var needed = Assert.Single(result.NeededDials);
        Assert.Equal(("winch.paid_out", "hook", result.Largest.Metres.At), (needed.Dial, needed.Joint, needed.At));
        Assert.Equal(1.5f, needed.Value, 0.001f);
    }

    /// <summary>At another time than the joint above, and by less: what that one is off hides it in the world.</summary>
    [Fact]
    public void What_a_joint_is_off_by_itself_is_told_though_the_joint_above_is_further_off()
    {
        var rig = DefinedRig.Compile(rig =>
        {
            var jib = rig.Skeleton("crane").Root("jib");
            var lamp = jib.Child("lamp", at: new(0, 0, 2));
            var house = rig.Control("house");
            rig.Response(house.Dial("luff", 0, 90, unit: DialUnit.Degrees)).Key(0, 0).Key(90, 90).OntoTurn(jib, Axis.X);
            rig.Response(house.Dial("tilt", 0, 90, unit: DialUnit.Degrees)).Key(0, 0).Key(90, 90).OntoTurn(lamp, Axis.X);
        });
        var needed = MotionMatch.Run(rig, Baked(rig, new Clip("signal", 2).Dial("house.luff", (0, 0), (1, 60), (2, 0)).Dial("house.tilt", (1, 0), (2, 20)))).NeededDials;
        Assert.Equal([("house.luff", 1f), ("house.tilt", 2f)], needed.Select(dial => (dial.Dial, dial.At)));
        Assert.Equal([60f, 20f], needed.Select(dial => MathF.Round(dial.Value, 1)));
    }

    [Fact]
    public void A_dial_is_told_for_a_joint_whose_joint_above_the_motion_does_not_have()
    {
        var rig = DefinedRig.Compile(rig =>
        {
            var jib = rig.Skeleton("crane").Root("jib");
            jib.Child("lamp", at: new(0, 0, 2));
            rig.Response(rig.Control("house").Dial("luff", 0, 90, unit: DialUnit.Degrees)).Key(0, 0).Key(90, 90).OntoTurn(jib, Axis.X);
        });
        var motion = Baked(rig, new Clip("raise", 1).Dial("house.luff", (0, 0), (1, 60)));
        var needed = Assert.Single(MotionMatch.Run(rig, motion, new JointMap().Without("jib")).NeededDials);
        Assert.Equal(("house.luff", "lamp"), (needed.Dial, needed.Joint));
    }

    /// <summary>Seen from the arm that the dial turns it looks nearer, and it stays where it is.</summary>
    [Fact]
    public void A_dial_that_moves_the_joint_above_alone_is_not_told()
    {
        var rig = DefinedRig.Compile(rig =>
        {
            var arm = rig.Skeleton("signal").Root("arm");
            var lamp = arm.Child("lamp", at: new(0, 0, 1));
            var folds = rig.Group("fold_group").PlacedAt(arm);
            rig.Drive(arm).ByChannels(rig.Control("turn_arm").Under(folds).PlacedAt(arm).Lock(Channels.Move));
            rig.Drive(lamp).ByChannels(rig.Control("hold").PlacedAt(lamp).Lock(Channels.Turn));
            rig.Response(rig.Control("house").Dial("luff", -90, 90, unit: DialUnit.Degrees)).Key(-90, -90).Key(90, 90).OntoTurn(folds, Axis.X);
        });
        var free = DefinedRig.Compile(rig =>
        {
            var arm = rig.Skeleton("signal").Root("arm");
            var lamp = arm.Child("lamp", at: new(0, 0, 1));
            rig.Drive(arm).ByChannels(rig.Control("turn_arm").PlacedAt(arm));
            rig.Drive(lamp).ByChannels(rig.Control("hold").PlacedAt(lamp));
        });
        var result = MotionMatch.Run(rig, Baked(free, new Clip("swing", 1).Turn("hold", 0).Turn("hold", 1, x: 40)));
        Assert.Equal(("lamp", 40), (result.Largest.Degrees.Joint, Math.Round(result.Largest.Degrees.Value)));
        Assert.Empty(result.NeededDials);
    }

    private JointMotion Baked(CompiledRig rig, Clip clip)
    {
        var baked = folder[$"{clip.Name}.gltf"];
        RigBaker.Run(rig, folder.Write("delivered.gltf", DeliveredFile.Of(rig).ToJsonString()), [clip], baked);
        return JointMotion.FromGltf(baked);
    }
}
