using Condyle.Runtime.Matching;
using Condyle.Runtime.Tests.Evaluation;

namespace Condyle.Runtime.Tests.Matching;

public class PassedLimitsTests
{
    // A joint that one control has while the switch is at zero, and another one while it is at one; and a control that moves nothing but a morph target.
    private static readonly CompiledRig Rig = DefinedRig.Compile(rig =>
    {
        var joint = rig.Skeleton("hoist").Root("hook");
        var (near, far, lamp) = (rig.Control("near").LimitTurn(Axis.Y, -10, 10), rig.Control("far").LimitTurn(Axis.Y, -10, 10), rig.Control("lamp").LimitMove(Axis.Y, 0, 1).LimitTurn(Axis.X, -10, 10));
        var amount = near.Switch("far");
        rig.Blend(joint).From(near, amount.Inverse).From(far, amount);
        rig.Response(rig.Angle(lamp).About(Axis.X)).Key(0, 0).Key(90, 1).OntoMorph("glass", "glow");
    });

    [Theory]
    [InlineData(0, "near")]
    [InlineData(1, "far")]
    public void A_control_that_moves_nothing_just_then_is_left_out(float far, string told)
    {
        var clip = new Clip("c", 1).Switch("near.far", 0, far).TurnAbout("near", Axis.Y, (0, 20)).TurnAbout("far", Axis.Y, (0, 20));
        Assert.Equal([$"0 s: '{told}' turns 20° about Y, and its limits are -10° and 10°."], PassedLimits.Of(Rig, clip));
    }

    [Fact]
    public void It_is_told_once_it_moves_something() => Assert.Equal(
        ["0 s: 'near' turns 20° about Y, and its limits are -10° and 10°.", "0.53 s: 'far' turns 20° about Y, and its limits are -10° and 10°."],
        PassedLimits.Of(Rig, new Clip("c", 1).Switch("near.far", (0.5f, 0), (1, 1)).TurnAbout("near", Axis.Y, (0, 20)).TurnAbout("far", Axis.Y, (0, 20))));

    [Fact]
    public void What_only_a_morph_target_shows_counts() => Assert.Equal(
        ["0 s: 'lamp' turns 20° about X, and its limits are -10° and 10°."],
        PassedLimits.Of(Rig, new Clip("c", 1).Turn("lamp", at: 0, x: 20).Move("lamp", at: 0, y: 0.5f)));
}
