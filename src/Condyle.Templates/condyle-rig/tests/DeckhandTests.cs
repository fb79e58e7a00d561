using System.Numerics;
using Condyle;
using Condyle.Runtime;

namespace Harbour._1.Tests;

public class DeckhandTests
{
    private static readonly CompiledRig Compiled = RigCompiler.Compile(Rig.Build(new Deckhand()));

    [Fact]
    public void No_rule_finds_anything() => Assert.Empty(Rig.Examine(new Deckhand()).Findings);

    [Fact]
    public void What_is_baked_is_what_moves() =>
        Assert.All(new DeckhandClips().Clips(), clip => Assert.True(Bake.Run(Compiled, clip).Report.Holds, clip.Name));

    [Theory]
    [InlineData("left", -0.2f)]
    [InlineData("right", 0.2f)]
    public void A_hand_goes_along_with_its_control(string side, float inwards)
    {
        var deckhand = Compiled.NewInstance();
        var atRest = Wrist(deckhand, side);
        var step = new Vector3(inwards, -0.1f, 0.15f);
        deckhand.SetMove(Compiled.ControlIndex($"hand_{side}"), step);
        Assert.Equal(0, Vector3.Distance(atRest + step, Wrist(deckhand, side)), 0.0001);
    }

    [Theory]
    [InlineData("left")]
    [InlineData("right")]
    public void An_arm_goes_over_to_its_joints_without_a_jump(string side)
    {
        var deckhand = Compiled.NewInstance();
        deckhand.SetMove(Compiled.ControlIndex($"hand_{side}"), new(0, -0.2f, 0.2f));
        var before = Wrist(deckhand, side);
        Assert.True(deckhand.MatchTurns(Compiled.LimbIndex($"elbow_{side}")).Holds);
        deckhand.SetSwitch(Compiled.SwitchIndex($"hand_{side}.fk"), 1);
        Assert.Equal(0, Vector3.Distance(before, Wrist(deckhand, side)), 0.0001);
    }

    private static Vector3 Wrist(RigInstance deckhand, string side)
    {
        deckhand.Evaluate();
        return deckhand.JointWorld(Compiled.JointIndex($"wrist_{side}")).Translation;
    }
}
