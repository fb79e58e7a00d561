using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Matching;

/// <summary>An arm whose collar follows its goal: the collar stops following when FK has the arm, and takes up by its control what that would change.</summary>
public class FollowingCollarTests
{
    [Theory]
    [InlineData(0.25f)]
    [InlineData(1)]
    public void The_switch_flips_both_ways_without_a_jump(float follows)
    {
        for (var seed = 0; seed < 40; seed++)
        {
            var rig = RigCompiler.Compile(Rig.Build(new Recipes.Biped(seed)));
            var (instance, choices) = (rig.NewInstance(), new RandomChoices(seed));
            foreach (var side in Side.Both)
            {
                var (limb, hand, fk) = (rig.LimbIndex($"elbow_{side}"), rig.ControlIndex($"hand_{side}"), rig.SwitchIndex($"hand_{side}.fk"));
                instance.SetSwitch(rig.SwitchIndex($"turn_collar_{side}.follows"), follows);
                instance.SetMove(hand, choices.Vector(0.15f));
                instance.SetTurn(hand, choices.Turn(0.6f));

                var solved = Shown.Of(instance);
                var toTurns = instance.MatchTurns(limb);
                instance.SetSwitch(fk, 1);
                Assert.True(toTurns.Holds, $"{seed} {side} to FK: {string.Join(" ", toTurns.Notes)}");
                AssertSame(solved, instance, $"{seed} {side} to FK");

                instance.SetTurn(rig.ControlIndex($"turn_elbow_{side}"), choices.Turn(0.3f) * instance.ControlTurn(rig.ControlIndex($"turn_elbow_{side}")));
                var turned = Shown.Of(instance);
                var toGoal = instance.MatchGoal(limb);
                instance.SetSwitch(fk, 0);
                var (metres, degrees) = turned.Against(Shown.Of(instance), rig.Limbs[limb].Joints);
                Assert.True(Math.Abs(metres - toGoal.Metres) < 1e-4 && Math.Abs(degrees - toGoal.Degrees) < 0.1, $"{seed} {side} to IK: {metres} m, {degrees}° and not {toGoal}");
                Assert.DoesNotContain(toGoal.Notes, note => note.Kind == MatchNoteKind.RootMoved);
            }
        }
    }

    private static void AssertSame(Shown before, RigInstance instance, string what)
    {
        var (metres, degrees) = before.Against(Shown.Of(instance));
        Assert.True(metres < 2e-5 && degrees < 0.01, $"{what}: {metres} m, {degrees}°");
    }
}
