using System.Numerics;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>
/// A leg whose foot rolls over heel, ball and toe by one dial in degrees: below zero the toes go up about the heel, then the heel goes up about the ball, and beyond
/// <see cref="BallDegrees"/> the whole foot about the tip of the toes. Only public sentences; the joints' frames are random.
/// </summary>
internal sealed class FootRollRig(int seed) : IRigDefinition
{
    public const float BallDegrees = 35;

    public void Define(RigDraft rig)
    {
        var choices = new RandomChoices(seed);
        var frames = new Quaternion[6];
        for (var i = 0; i < frames.Length; i++)
            frames[i] = choices.Turn(MathF.PI);
        var pelvis = choices.Vector(0.2f);
        Vector3[] at = [new(0.1f, 0.9f, 0), new(0.1f, 0.48f, 0.03f), new(0.1f, 0.08f, -0.02f), new(0.11f, 0.02f, 0.1f), new(0.11f, 0, 0.17f), new(0.1f, 0, -0.07f)];
        var hip = rig.Skeleton("leg").Root("hip", JointRole.Deform, at[0] + pelvis, frames[0]);
        Joint Below(Joint above, int from, string name, int to) => above.Child(
            name, JointRole.Deform, Vector3.Transform(at[to] - at[from], Quaternion.Inverse(frames[from])), Quaternion.Inverse(frames[from]) * frames[to]);
        var knee = Below(hip, 0, "knee", 1);
        var ankle = Below(knee, 1, "ankle", 2);
        var toes = Below(ankle, 2, "toes", 3);
        var tip = Below(toes, 3, "toe_tip", 4);
        Below(ankle, 2, "heel", 5);

        // Each pivot hangs under the one that comes after it in the roll; the ankle hangs under the ball, the toes do not.
        var foot = rig.Control("foot").PlacedAt(rig.Spot(ankle, at[3] - at[2] - new Vector3(0, at[3].Y, 0)));
        var heelPivot = rig.Group("heel_group").Under(foot).PlacedAt(rig.Spot(ankle, at[5] - at[2]));
        var toePivot = rig.Group("toe_tip_group").Under(heelPivot).PlacedAt(rig.Spot(tip, Vector3.Zero));
        var ballPivot = rig.Group("ball_group").Under(toePivot).PlacedAt(rig.Spot(toes, Vector3.Zero));
        var goal = rig.Group("ankle_group").Under(ballPivot).PlacedAt(ankle);
        var flatToes = rig.Control("turn_toes").Under(toePivot).PlacedAt(toes).Lock(Channels.Move);

        var roll = foot.Dial("roll", -60, 90, unit: DialUnit.Degrees);
        rig.Response(roll).Key(-60, -60).Key(0, 0).OntoTurn(heelPivot, Axis.X);
        rig.Response(roll).Key(0, 0).Key(BallDegrees, BallDegrees).OntoTurn(ballPivot, Axis.X);
        rig.Response(roll).Key(BallDegrees, 0).Key(90, 90 - BallDegrees).OntoTurn(toePivot, Axis.X);

        var leg = rig.Chain(hip, ankle);
        var ik = leg.Copy("ik").Under(rig.Control("hips").PlacedAt(hip));
        rig.TwoBone(ik).Reach(goal).Face(rig.Control("knee_pole").PlacedAt(ik.PolePoint(0.5f)));
        rig.Blend(leg).From(ik, 1f);
        rig.Drive(toes).ByChannels(flatToes);
    }
}
