using System.Numerics;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>A drum that a dial turns several times, as the page of sentences has it.</summary>
public class DrumTests
{
    private static readonly CompiledRig Rig = DefinedRig.Compile(rig =>
    {
        var frame = rig.Skeleton("winch").Root("frame");
        var (drum, hook) = (frame.Child("drum", at: new(0, 1, 0)), frame.Child("hook", at: new(0, 0.8f, 0.2f)));
        var crank = rig.Control("winch").Dial("crank", from: -720, to: 3600, unit: DialUnit.Degrees);
        rig.Response(crank).Key(0, 0).Key(360, 360).Continued().OntoTurn(drum, Axis.X);
        rig.Response(crank).Key(0, 0).Key(360, -0.5f).Continued().OntoMove(hook, Axis.Y);
    });

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(810)]
    [InlineData(-450)]
    [InlineData(3555)]
    public void It_turns_as_far_as_the_dial_says_and_the_rope_with_it(float degrees)
    {
        var live = Rig.NewInstance();
        live.SetDial(Rig.DialIndex("winch.crank"), degrees);
        live.Evaluate();
        var turned = Vector3.TransformNormal(Vector3.UnitY, live.JointWorld(Rig.JointIndex("drum")));
        var (sine, cosine) = Math.SinCos(degrees * Math.PI / 180);
        Assert.True(Vector3.Distance(turned, new Vector3(0, (float)cosine, (float)sine)) < 1e-4, $"{turned}");
        Assert.Equal(0.8 - (0.5 * degrees / 360), live.JointWorld(Rig.JointIndex("hook")).Translation.Y, 4);
    }

    [Fact]
    public void Played_it_goes_the_whole_way_round_and_never_back()
    {
        var (live, player) = (Rig.NewInstance(), new ClipPlayer(Rig, new Clip("wind", 4).Dial("winch.crank", (0, 0), (4, 1080))));
        var (turned, before) = (0.0, Quaternion.Identity);
        for (var frame = 1; frame <= 120; frame++)
        {
            player.Pose(live, frame / 30f);
            live.Evaluate();
            var now = live.JointRotation(Rig.JointIndex("drum"));
            var step = now * Quaternion.Conjugate(before);
            turned += 2 * Math.Atan2(step.X * Math.Sign(step.W), Math.Abs(step.W)) * 180 / Math.PI;
            before = now;
        }

        Assert.Equal(1080, turned, 0);
    }
}
