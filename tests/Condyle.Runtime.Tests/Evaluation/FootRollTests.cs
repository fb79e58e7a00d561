using System.Numerics;
using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>A foot that rolls, made of groups, responses and a goal: each point of the sole stays on the ground while the foot rolls about it.</summary>
public class FootRollTests
{
    private const double Fixed = 1e-5;

    [Fact]
    public void Heel_ball_and_toe_stay_where_they_are_while_the_foot_rolls_about_them()
    {
        for (var seed = 0; seed < 50; seed++)
        {
            var rig = Rig.Examine(new FootRollRig(seed));
            var instance = RigCompiler.Compile(rig).NewInstance();
            Stand(instance, seed);
            Dictionary<string, (Vector3 Live, Vector3d Exact)> At(float roll)
            {
                instance.SetDial(0, roll);
                instance.Evaluate();
                var exact = Exact(rig.Model, instance);
                return instance.Rig.Joints.ToDictionary(
                    joint => joint.Name,
                    joint => (instance.JointWorld(joint.Index).Translation, exact.WorldOf(rig.Model.Nodes.Single(node => node.IsExported && node.Name.ToString() == joint.Name)).Origin));
            }

            var flat = At(0);
            var onTheBall = At(FootRollRig.BallDegrees);
            foreach (var (roll, pivot, since) in new[] { (-40f, "heel", flat), (-5, "heel", flat), (12, "toes", flat), (12, "toe_tip", flat), (FootRollRig.BallDegrees, "toes", flat), (50, "toe_tip", onTheBall), (80, "toe_tip", flat) })
            {
                var rolled = At(roll);
                Assert.True(Vector3.Distance(since[pivot].Live, rolled[pivot].Live) <= Fixed, $"{seed}: at {roll}° the {pivot} goes {Vector3.Distance(since[pivot].Live, rolled[pivot].Live)} m.");
                Assert.True((since[pivot].Exact - rolled[pivot].Exact).Length <= Fixed / 100, $"{seed}: at {roll}° the {pivot} of the reference goes {(since[pivot].Exact - rolled[pivot].Exact).Length} m.");
                Assert.True(Vector3.Distance(flat["ankle"].Live, rolled["ankle"].Live) > 0.003f, $"{seed}: at {roll}° the ankle stands still.");
            }

            // What rolls is the foot: the heel goes up over the ball, the toes over the heel.
            Assert.True(At(25)["heel"].Live.Y > flat["heel"].Live.Y + 0.02f);
            Assert.True(At(-25)["toe_tip"].Live.Y > flat["toe_tip"].Live.Y + 0.02f);
        }
    }

    /// <summary>The hips come down so that the leg is bent, and the foot stands somewhere on the ground, turned about the vertical.</summary>
    private static void Stand(RigInstance instance, int seed)
    {
        var choices = new RandomChoices(seed ^ 31);
        var foot = instance.Rig.ControlIndex("foot");
        instance.SetMove(foot, new(choices.Between(-0.05f, 0.05f), 0, choices.Between(-0.1f, 0.1f)));
        instance.SetTurn(foot, Quaternion.CreateFromAxisAngle(Vector3.UnitY, choices.Between(-0.6f, 0.6f)));
        var hips = instance.Rig.ControlIndex("hips");
        var back = Quaternion.Conjugate(instance.Rig.Joints[0].RestRotation);
        instance.SetMove(hips, Vector3.Transform(new(0, -0.15f, 0), back));
    }

    private static ReferencePose Exact(RigModel model, RigInstance instance)
    {
        var pose = new Pose();
        foreach (var (index, control) in model.Nodes.Where(node => node.Kind == NodeKind.Control).Index())
            pose.Set(control.Id, new Trs(instance.ControlMove(index), (Quaterniond)instance.ControlTurn(index), instance.ControlScale(index)));
        pose.SetDial(model.Dials[0].Id, instance.InputAt(model.Dials[0]));
        return ReferenceEvaluator.Evaluate(model, RestPose.Of(model), pose);
    }
}
