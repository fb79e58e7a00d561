using System.Numerics;
using Condyle.Evaluation;
using Condyle.Runtime.Matching;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>A small crane's arm nine metres from the origin, whose pole stands on the line from its root through its goal in every pose: it faces nothing, and the bend is carried along.</summary>
public class PoleOnTheLineTests
{
    private const int Crane = 0, Hook = 1, Pole = 2;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Rounding_is_not_taken_for_a_side(bool hasManyBones)
    {
        var rig = DefinedRig.Compile(draft => Define(draft, hasManyBones));
        var (live, choices, joints) = (rig.NewInstance(), new RandomChoices(5), rig.LimbTable.Model.Nodes.Where(node => node.IsExported).ToList());
        for (var pose = 0; pose < 200; pose++)
        {
            live.SetTurn(Crane, choices.Turn(0.7f));
            live.SetMove(Crane, choices.Vector(0.5f));
            live.SetMove(Hook, new(-0.015625f, 0, 0));
            live.SetMove(Pole, new(0, 0, -0.125f));
            live.Evaluate();
            var should = new LivePose(rig.LimbTable, live).Frames;
            foreach (var (joint, node) in joints.Index())
            {
                var off = ((Vector3d)live.JointWorld(joint).Translation - should.WorldOf(node).Origin).Length;
                Assert.True(off < 1e-4, $"joint {joint} is {off} m off in pose {pose}");
            }
        }
    }

    private static void Define(RigDraft rig, bool hasManyBones)
    {
        var foot = rig.Skeleton("crane").Root("foot", at: new(6, 1, -7));
        var top = foot.Child("elbow", at: new(0.0625f, 0.015625f, 0.0078125f)).Child("tip", at: new(0.0625f, -0.015625f, -0.0078125f));
        var crane = rig.Control("crane_arm").PlacedAt(foot);
        var hook = rig.Control("hook").Under(crane).PlacedAt(top);
        var pole = rig.Control("pole").Under(crane).PlacedAt(rig.Spot(foot, new Vector3(0.25f, 0, 0.125f)));
        var chain = rig.Chain(foot, top);
        var copy = chain.Copy("ik").Under(crane);
        if (hasManyBones)
            rig.ManyBone(copy).Reach(hook).Face(pole);
        else
            rig.TwoBone(copy).Reach(hook).Face(pole);
        foreach (var joint in chain)
            rig.Drive(joint).ByChannels(copy.Of(joint));
    }
}
