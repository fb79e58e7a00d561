using Condyle.Analyzers.Tests.Reading;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>The limb: what it makes could be written out, and a reading knows as much of it as of what is.</summary>
public class LimbTests
{
    private const string Bones = """
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);

        """;

    [Theory]
    [InlineData("rig.Limb(rig.Chain(joints.Hip.Left, joints.Ankle.Left), \"leg\", null!, root, systems, root);", "Give it Side.Left or Side.Right.")]
    [InlineData("Limb leg = null!; rig.FootRoll(leg, joints.Toes.Left, Vector3.Zero, Vector3.UnitZ);", "Give it what Limb has built.")]
    [InlineData("Limb arm = null!; rig.Collar(arm, joints.Collar.Left, root);", "Give it what Limb has built.")]
    [InlineData("rig.Limb(rig.Chain(joints.Hip.Left, joints.Ankle.Left), \"\", Side.Left, root, systems, root);", "A limb was given no name")]
    [InlineData("rig.Tail(rig.Chain(joints.Hip.Left, joints.Ankle.Left), \"\", Side.Left, root);", "A tail was given no name")]
    [InlineData("rig.Spine(rig.Chain(joints.Pelvis, joints.Chest), \"\", systems, root);", "A spine was given no name")]
    [InlineData("rig.Fingers(joints.Wrist.Left, [new(joints.Wrist.Left)], \"\", Side.Left, root, systems);", "A hand was given no name")]
    [InlineData("rig.Fingers(joints.Wrist.Left, [], \"fingers\", Side.Left, root, systems);", "The hand 'fingers' has no finger.")]
    [InlineData("rig.Twist(new JointSet(null!));", "A set of joints was given null.")]
    [InlineData("rig.Control(\"idle\").PlacedAt(new JointSet(joints.Head)[1]);", "A set of joints has none at 1, only 1 in all.")]
    public void What_cannot_be_is_refused_and_not_passed_over(string code, string told) =>
        Assert.Contains(told, Assert.ThrowsAny<Exception>(() => Written.Run(Written.Files(code))).ToString(), StringComparison.Ordinal);

    [Fact]
    public Task It_makes_what_could_be_written_out() => Written.AreTheSame(
        Bones + """
            rig.Limb(leg, "leg", side, under: root, systems, space: root);
        }
        """,
        Bones + """
            var hold = rig.Control($"leg_root_{side}").Under(root).PlacedAt(leg.Root).Lock(Channels.Turn);
            var parts = rig.Group($"leg_{side}_group").Under(systems).PlacedAt(hold);
            rig.Drive(parts).ByMatrix(hold);
            var ik = leg.Copy("ik").Under(parts);
            var goal = rig.Control($"leg_goal_{side}").Under(root).PlacedAt(leg.Tip);
            var pole = rig.Control($"leg_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f)).Lock(Channels.Turn);
            rig.TwoBone(ik).Reach(goal).Face(pole);
            var fk = leg.Copy("fk").Under(parts);
            var above = hold;
            foreach (var joint in leg)
            {
                var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(fk.Of(joint)).ByChannels(turn);
                above = turn;
            }

            var amount = goal.Switch("fk").AlsoOn(hold).AlsoOn(above);
            rig.Blend(leg).From(ik, amount.Inverse).From(fk, amount);
            rig.Label($"ik_leg_label_{side}", "IK").Under(hold).ShownBy(amount.Inverse);
            rig.Label($"fk_leg_label_{side}", "FK").Under(hold).ShownBy(amount);
        }
        """);

    [Fact]
    public Task Its_options_make_what_could_be_written_out() => Written.AreTheSame(
        Bones + """
            var common = new LimbOptions { Goal = "foot", Pole = "knee_pole", HasLabels = false };
            var limb = rig.Limb(leg, "leg", side, root, systems, root, common with { Stretches = true, MostStretch = 1.2f, Softness = 0.02f, TurnsPlane = true, PoleDistance = 0.5f, Switch = "by_hand", StartsInFk = true, GoalAlongWorld = true });
            limb.Turns[1].LimitTurn(Axis.X, -10, 120);
            limb.Goal.Lock(Channels.Scale);
        }
        """,
        Bones + """
            var hold = rig.Control($"leg_root_{side}").Under(root).PlacedAt(leg.Root).Lock(Channels.Turn);
            var parts = rig.Group($"leg_{side}_group").Under(systems).PlacedAt(hold);
            rig.Drive(parts).ByMatrix(hold);
            var ik = leg.Copy("ik").Under(parts);
            var goal = rig.Control($"foot_{side}").Under(root).PlacedAt(rig.Spot(leg.Tip, Vector3.Zero));
            var pole = rig.Control($"knee_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.5f)).Lock(Channels.Turn);
            rig.TwoBone(ik).Reach(goal).Face(pole).Softening(0.02f).Stretching(goal.Switch("stretch"), most: 1.2f).TurningPlane(goal.Dial("bend", -90, 90, unit: DialUnit.Degrees));
            var fk = leg.Copy("fk").Under(parts);
            var turns = new List<Control>();
            foreach (var joint in leg)
            {
                var turn = rig.Control($"turn_{joint}").Under(turns.Count == 0 ? hold : turns[^1]).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(fk.Of(joint)).ByChannels(turn);
                turns.Add(turn);
            }

            var amount = goal.Switch("by_hand", atRest: 1).AlsoOn(hold).AlsoOn(turns[^1]);
            rig.Blend(leg).From(ik, amount.Inverse).From(fk, amount);
            turns[1].LimitTurn(Axis.X, -10, 120);
            goal.Lock(Channels.Scale);
        }
        """);

    [Fact]
    public async Task What_is_wrong_with_what_it_is_given_is_found_at_its_call()
    {
        var finding = Assert.Single(await FrontEnds.Read(Written.Files("""
            foreach (var side in Side.Both)
                rig.Limb(rig.Chain(joints.Hip[side], joints.Toes[side]), "leg", side, root, systems, root);
            """)));
        Assert.Equal("CDY7001", finding.Id);
        Assert.Empty(finding.Properties);
        await FrontEnds.Agree(Written.Files("""
            foreach (var side in Side.Both)
                rig.Limb(rig.Chain(joints.Hip[side], joints.Toes[side]), "leg", side, root, systems, root);
            """));
    }

    [Fact]
    public async Task A_name_and_numbers_that_are_not_known_leave_the_rest_known()
    {
        var found = await FrontEnds.Read(Written.Files("""
            var name = Console.ReadLine()!;
            foreach (var side in Side.Both)
                rig.Limb(rig.Chain(joints.Hip[side], joints.Toes[side]), name, side, root, systems, root, new LimbOptions { PoleDistance = name.Length });
            """));
        Assert.Equal(["CDY7001"], found.Where(finding => finding.Id != "CDY9002").Select(finding => finding.Id).Distinct());
    }

    [Theory]
    [InlineData("rig.Limb(rig.Chain(joints.Hip.Left, Environment.TickCount > 9 ? joints.Ankle.Left : joints.Toes.Left), \"leg\", Side.Left, root, systems, root);")]
    [InlineData("rig.Limb(rig.Chain(joints.Hip.Left, joints.Ankle.Left), \"leg\", Side.Left, root, systems, root, new LimbOptions { Stretches = Console.ReadLine()!.Length > 3 });")]
    [InlineData("rig.Limb(rig.Chain(joints.Hip.Left, joints.Ankle.Left), \"leg\", Side.Left, root, systems, root, Options());")]
    public async Task What_it_would_have_to_guess_is_left_open_and_said(string sentence)
    {
        var files = Written.Files(sentence + " rig.Control(\"idle\").Under(root).PlacedAt(joints.Toes.Left);", "private static LimbOptions Options() => System.Text.Json.JsonSerializer.Deserialize<LimbOptions>(\"{}\")!;");
        var found = await FrontEnds.Read(files);
        Assert.All(found, finding => Assert.Equal("CDY9002", finding.Id));
        var read = Oracle.Read(CompiledCode.Compile(files), "TestRig");
        Assert.All(read.Paths, path => Assert.True(!path.Model.IsWhole || path.Model.Copies.Count == 2));
    }

    [Fact]
    public void An_option_that_is_read_both_ways_builds_both() =>
        Assert.Equal([1, 2], Oracle.Read(CompiledCode.Compile(Written.Files(
            "rig.Limb(rig.Chain(joints.Hip.Left, joints.Ankle.Left), \"leg\", Side.Left, root, systems, root, new LimbOptions { Stretches = Console.IsInputRedirected });")), "TestRig").Paths.Select(path => path.Model.Switches.Count).Order());
}
