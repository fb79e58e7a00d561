using Condyle.Analyzers.Tests.Recipes;
using Condyle.CodeFixes.Refactorings;

namespace Condyle.CodeFixes.Tests.Refactorings;

/// <summary>A limb in primitives is said by the recipe where that makes the same rig, and what the code goes on to use is the recipe's.</summary>
public class SayAsRecipeTests
{
    private const string Parts = """
                var parts = rig.Group($"leg_{side}_group").Under(systems).PlacedAt(hold);
                rig.Drive(parts).ByMatrix(hold);

                var ik = bones.Copy("ik").Under(parts);
        """;

    private const string Turned = """
                var fk = bones.Copy("fk").Under(parts);
                var above = hold;
                foreach (var joint in bones)
                {
                    var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint).Lock(Channels.Move);
                    rig.Drive(fk.Of(joint)).ByChannels(turn);
                    above = turn;
                }

        """;

    private const string Labels = """

                rig.Label($"ik_leg_label_{side}", "IK").Under(hold).ShownBy(amount.Inverse);
                rig.Label($"fk_leg_label_{side}", "FK").Under(hold).ShownBy(amount);
        """;

    private const string Plain = """
            foreach (var side in Side.Both)
            {
                var bones = rig.Chain(joints.Hip[side], joints.Ankle[side]);
                var hold = rig.Control($"leg_root_{side}").Under(root).PlacedAt(bones.Root).Lock(Channels.Turn);

        """ + Parts + """

                var goal = rig.Control($"leg_goal_{side}").Under(root).PlacedAt(bones.Tip);
                var pole = rig.Control($"leg_pole_{side}").Under(root).PlacedAt(ik.PolePoint(distance: 0.4f)).Lock(Channels.Turn);
                rig.TwoBone(ik).Reach(goal).Face(pole);

        """ + Turned + """

                var amount = goal.Switch("fk").AlsoOn(hold).AlsoOn(above);
                rig.$$Blend(bones).From(ik, amount.Inverse).From(fk, amount);
        """;

    [Fact]
    public Task What_nothing_else_uses_becomes_one_sentence() => Offers(
        Plain + Labels + "\n    }",
        """
            foreach (var side in Side.Both)
            {
                var bones = rig.Chain(joints.Hip[side], joints.Ankle[side]);
                rig.Limb(bones, "leg", side, under: root, systems, space: root);
            }
        """);

    [Fact]
    public Task What_else_is_used_are_the_recipes_handles() => Offers(
        Plain + """

                goal.Lock(Channels.TurnX);
                rig.Control($"idle_{side}").Under(hold).PlacedAt(pole); // beside the knee
            }
        """,
        """
            foreach (var side in Side.Both)
            {
                var bones = rig.Chain(joints.Hip[side], joints.Ankle[side]);
                var leg = rig.Limb(bones, "leg", side, under: root, systems, space: root, new LimbOptions { HasLabels = false });
                leg.Goal.Lock(Channels.TurnX);
                rig.Control($"idle_{side}").Under(leg.Root).PlacedAt(leg.Pole); // beside the knee
            }
        """);

    [Fact]
    public Task What_differs_from_the_defaults_is_an_option_and_a_list_of_turns_the_limbs() => Offers(
        """
            var bones = rig.Chain(joints.Hip.Left, joints.Ankle.Left);
            var hold = rig.Control("leg_root_left").Under(root).PlacedAt(bones.Root).Lock(Channels.Turn);
            var parts = rig.Group("leg_left_group").Under(systems).PlacedAt(hold);
            rig.Drive(parts).ByMatrix(hold);
            var ik = bones.Copy("ik").Under(parts);
            var foot = rig.Control("foot_left").Under(root).PlacedAt(rig.Spot(bones.Tip, Vector3.Zero));
            var pole = rig.Control("knee_pole_left").Under(root).PlacedAt(ik.PolePoint(0.5f)).Lock(Channels.Turn);
            rig.TwoBone(ik).Reach(foot).Face(pole).Softening(0.02f).Stretching(foot.Switch("stretch"), most: 1.2f).TurningPlane(foot.Dial("bend", -90, 90, unit: DialUnit.Degrees));
            var fk = bones.Copy("fk").Under(parts);
            var turns = new List<Control>();
            foreach (var joint in bones)
            {
                var turn = rig.Control($"turn_{joint}").Under(turns.Count == 0 ? hold : turns[^1]).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(fk.Of(joint)).ByChannels(turn);
                turns.Add(turn);
            }

            var amount = foot.Switch("by_hand", atRest: 1).AlsoOn(hold).AlsoOn(turns[^1]);
            $$rig.Blend(bones).From(ik, amount.Inverse).From(fk, amount);
            turns[1].LimitTurn(Axis.X, -10, 120);
            rig.Label("by_hand_label_left", "by hand").ShownBy(1);
        """,
        """
            var bones = rig.Chain(joints.Hip.Left, joints.Ankle.Left);
            var leg = rig.Limb(bones, "leg", Side.Left, under: root, systems, space: root, new LimbOptions { Goal = "foot", Pole = "knee_pole", PoleDistance = 0.5f, Switch = "by_hand", StartsInFk = true, Stretches = true, MostStretch = 1.2f, Softness = 0.02f, TurnsPlane = true, GoalAlongWorld = true, HasLabels = false });
            leg.Turns[1].LimitTurn(Axis.X, -10, 120);
            rig.Label("by_hand_label_left", "by hand").ShownBy(1);
        """);

    [Theory]
    [InlineData(".Lock(Channels.Turn);\n", ".Lock(Channels.Move);\n")]
    [InlineData("leg_root_", "leg_start_")]
    [InlineData("PlacedAt(bones.Tip);", "PlacedAt(bones.Tip).Shaped(ControlShape.Box);")]
    [InlineData("PlacedAt(bones.Tip);", "PlacedAt(rig.Spot(bones.Tip, Vector3.UnitY));")]
    [InlineData("Under(systems)", "Under(root)")]
    [InlineData("$\"leg_pole_{side}\").Under(root)", "$\"leg_pole_{side}\").Under(goal)")]
    [InlineData("From(fk, amount)", "From(fk, 1)")]
    [InlineData("rig.Drive(fk.Of(joint))", "rig.Control($\"beside_{joint}\").Under(turn); rig.Drive(fk.Of(joint))")]
    public async Task What_the_recipe_would_make_otherwise_is_not_offered(string said, string otherwise)
    {
        var body = Plain.Replace(said, otherwise, StringComparison.Ordinal);
        Assert.NotEqual(Plain, body);
        await OnARig.OffersNothing<SayAsRecipeRefactoring>(Written.Files(body + "\n    }"));
    }

    [Theory]
    [InlineData("Last = turn;")]
    [InlineData("All.Add(turn);")]
    [InlineData("All.Insert(0, turn);")]
    [InlineData("count++;")]
    [InlineData("--count;")]
    [InlineData("Console.WriteLine(joint);")]
    public Task What_does_something_else_as_well_is_not_offered(string beside) => OnARig.OffersNothing<SayAsRecipeRefactoring>(Written.Files(
        Plain.Replace("above = turn;", "above = turn; " + beside, StringComparison.Ordinal) + "\n    }",
        "private int count; public Control Last { get; set; } public List<Control> All { get; } = [];"));

    [Theory]
    [InlineData("Told($\"leg_root_{side}\")", "private string Told(string name) => Last = name;")]
    [InlineData("$\"{new Tally()}leg_root_{side}\"", "private sealed class Tally { public static int Made; public Tally() => Made++; public override string ToString() => \"\"; }")]
    public async Task A_call_that_may_do_something_besides_is_not_offered(string name, string member)
    {
        var body = Plain.Replace("$\"leg_root_{side}\"", name, StringComparison.Ordinal);
        Assert.NotEqual(Plain, body);
        await OnARig.OffersNothing<SayAsRecipeRefactoring>(Written.Files(body + "\n    }", $"public string Last {{ get; set; }} = \"\"; {member}"));
    }

    [Fact]
    public async Task A_call_that_gives_a_text_and_does_nothing_else_is_folded()
    {
        var body = Plain.Replace("$\"leg_root_{side}\"", "string.Concat(\"leg_root_\", side)", StringComparison.Ordinal);
        Assert.NotEqual(Plain, body);
        Assert.Equal(await Changed(Plain), await Changed(body));
    }

    [Theory]
    [InlineData("PlacedAt(hold);", "PlacedAt(hold)")]
    [InlineData("var goal =", "var goal")]
    [InlineData("above = turn;", "above = turn. ;")]
    public Task Half_typed_code_is_left_alone(string whole, string half) => OnARig.OffersNothing<SayAsRecipeRefactoring>(
        Written.Files(Plain.Replace(whole, half, StringComparison.Ordinal) + "\n    }"), isWhole: false);

    [Fact]
    public Task Comments_stay() => Offers(
        Plain.Replace("ByMatrix(hold);", "ByMatrix(hold); // a group", StringComparison.Ordinal).Replace("Under(root).PlacedAt(bones.Root)", "Under(root) // the hips'\n            .PlacedAt(bones.Root)", StringComparison.Ordinal)
            .Replace("above = turn;", "above = turn; /* so that they hang together */", StringComparison.Ordinal) + Labels + "\n    }",
        """
            foreach (var side in Side.Both)
            {
                var bones = rig.Chain(joints.Hip[side], joints.Ankle[side]);
                // the hips'
                /* so that they hang together */
                rig.Limb(bones, "leg", side, under: root, systems, space: root);
                // a group
            }
        """);

    private static Task<string> Changed(string body) => OnARig.Changed<SayAsRecipeRefactoring>(body + "\n    }", code => Written.Files(code), "Say it as a recipe");

    private static async Task Offers(string body, string after) =>
        Assert.Equal(after, await OnARig.Changed<SayAsRecipeRefactoring>(body, code => Written.Files(code), "Say it as a recipe"), ignoreLineEndingDifferences: true);
}
