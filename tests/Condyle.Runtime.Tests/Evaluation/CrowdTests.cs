using Condyle.Tests.Shared;
using CsCheck;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>Rigs that are evaluated side by side come out as they do alone, bit for bit.</summary>
public class CrowdTests
{
    [Theory]
    [InlineData(8)]
    [InlineData(16)]
    public void Each_member_comes_out_as_it_does_alone(int width) => Gen.Int.Sample(
        seed =>
        {
            var rig = RigCompiler.Compile(Rig.Examine(new RandomRig(seed)));
            var crowd = new RigCrowd(rig, width + 3, width);
            for (var member = 0; member < crowd.Count; member++)
                new RandomPose(rig, seed + member).Set(crowd[member]);
            crowd.Evaluate();
            for (var member = 0; member < crowd.Count; member++)
            {
                var alone = rig.NewInstance();
                new RandomPose(rig, seed + member).Set(alone);
                alone.Evaluate();
                AssertSame(alone, crowd[member]);
            }
        },
        iter: 60);

    [Theory]
    [InlineData(100)]
    [InlineData(1000)]
    public void Neither_the_number_of_threads_nor_that_of_members_changes_anything(int members)
    {
        // A thousand are more than a cache holds, and are evaluated another way.
        var rig = RigCompiler.Compile(Rig.Build(new LimbRig(4)));
        var (one, two) = (rig.NewCrowd(members), rig.NewCrowd(members));
        for (var member = 0; member < members; member++)
        {
            new RandomPose(rig, member).Set(one[member]);
            new RandomPose(rig, member).Set(two[member]);
        }

        one.Evaluate();
        two.Evaluate(threads: 2);
        for (var member = 0; member < members; member++)
        {
            var alone = rig.NewInstance();
            new RandomPose(rig, member).Set(alone);
            alone.Evaluate();
            AssertSame(alone, one[member]);
            AssertSame(alone, two[member]);
        }
    }

    [Theory]
    [InlineData(40)]
    [InlineData(1000)]
    public void Evaluating_a_crowd_allocates_nothing(int members)
    {
        var crowd = RigCompiler.Compile(Rig.Build(new LimbRig(4))).NewCrowd(members);
        crowd.Evaluate();
        Assert.Contains(0, Enumerable.Range(0, 5).Select(_ =>
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            for (var i = 0; i < 20; i++)
                crowd.Evaluate();
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }));
    }

    [Fact]
    public void A_member_can_be_reset_alone()
    {
        var rig = RigCompiler.Compile(Rig.Build(new LimbRig(4)));
        var crowd = rig.NewCrowd(3);
        for (var member = 0; member < 3; member++)
            new RandomPose(rig, member).Set(crowd[member]);
        crowd[1].Reset();
        crowd.Evaluate();
        AssertSame(rig.NewInstance(), crowd[1]);
        Assert.NotEqual(rig.NewInstance().JointWorld(2), crowd[0].JointWorld(2));
        Assert.NotEqual(rig.NewInstance().JointWorld(2), crowd[2].JointWorld(2));
    }

    [Fact]
    public void A_member_is_not_evaluated_alone_and_says_so()
    {
        var crowd = RigCompiler.Compile(Rig.Build(new LimbRig(4))).NewCrowd(1);
        Assert.Contains("Call the crowd's Evaluate", Assert.Throws<InvalidOperationException>(() => crowd[0].Evaluate()).Message);
        Assert.Contains("1 members", Assert.Throws<ArgumentOutOfRangeException>(() => crowd[1]).Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => crowd.Rig.NewCrowd(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => crowd.Evaluate(0));
    }

    private static void AssertSame(RigInstance expected, RigInstance actual)
    {
        for (var joint = 0; joint < expected.Rig.Joints.Count; joint++)
        {
            Assert.Equal(expected.JointWorld(joint), actual.JointWorld(joint));
            Assert.Equal(expected.JointTranslation(joint), actual.JointTranslation(joint));
            Assert.Equal(expected.JointRotation(joint), actual.JointRotation(joint));
            Assert.Equal(expected.JointScale(joint), actual.JointScale(joint));
        }
    }
}
