using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>The customary spaces: what they make could be written out, and a reading knows as much of it as of what is.</summary>
public class SpacesTests
{
    private const string Before = """
        var chest = rig.Control("turn_chest").Under(root).PlacedAt(joints.Chest);
        rig.Drive(joints.Chest).ByChannels(chest);
        var head = rig.Head(joints.Head, under: chest, space: root);

        """;

    private const string Legs = """
        foreach (var side in Side.Both)
        {
            var leg = rig.Limb(rig.Chain(joints.Hip[side], joints.Ankle[side]), "leg", side, under: root, systems, space: root);

        """;

    [Fact]
    public Task They_make_what_could_be_written_out() => Written.AreTheSame(
        Before + Legs + """
                rig.Spaces(leg, new BodySpaces { World = root, Chest = chest, Head = head.Turn });
            }

            rig.Spaces(head, new BodySpaces { World = root, Chest = joints.Chest, Head = head.Turn });
            """,
        Before + Legs + """
                rig.Space(leg.Goal).In("world", root).In("chest", chest).In("head", head.Turn);
                rig.Space(leg.Pole).In("world", root).In("goal", leg.Goal);
                var thigh = rig.Group($"level_hip_{side}_group").Under(leg.Root).PlacedAt(joints.Hip[side]);
                rig.Drive(thigh).ByChannels(root).KeepingOffset().Writing(Channels.Turn);
                rig.Space(leg.Turns[0]).In("body", leg.Root).In("world", thigh);
            }

            rig.Space(head.Look).In("world", root).In("chest", joints.Chest);
            var level = rig.Group("level_head_group").Under(chest).PlacedAt(joints.Head);
            rig.Drive(level).ByChannels(root).KeepingOffset().Writing(Channels.Turn);
            rig.Space(head.Turn).In("body", chest).In("world", level);
            """);

    [Fact]
    public Task Their_options_make_what_could_be_written_out() => Written.AreTheSame(
        Before + Legs + """
                var spaces = new BodySpaces { World = root, Hips = root, Chest = chest };
                var options = new SpacesOptions { First = BodySpace.Chest, PoleRides = false, StaysLevel = false, Chest = "torso" };
                var toe = rig.Control($"tool_{side}").Under(root).PlacedAt(joints.Toes[side]);
                rig.Drive(joints.Toes[side]).ByChannels(toe).Writing(Channels.Turn);
                rig.Spaces(leg, spaces, options).Goal.In("crate", joints.Head);
                rig.Spaces(toe, spaces with { Chest = null, Head = chest }, new SpacesOptions { World = "all", Head = "face", Hips = "root" });
            }
            """,
        Before + Legs + """
                var toe = rig.Control($"tool_{side}").Under(root).PlacedAt(joints.Toes[side]);
                rig.Drive(joints.Toes[side]).ByChannels(toe).Writing(Channels.Turn);
                rig.Space(leg.Goal).In("torso", chest).In("world", root).In("hips", root).In("crate", joints.Head);
                rig.Space(toe).In("all", root).In("root", root).In("face", chest);
            }
            """);

    [Theory]
    [InlineData("new BodySpaces { World = root }", "", "There is nothing to ride but the world. Give the hips or the chest as well.")]
    [InlineData("new BodySpaces { World = root, Head = head.Turn }", "", "There is nothing to ride but the world. Give the hips or the chest as well.")]
    [InlineData("new BodySpaces { World = root, Chest = chest, Head = head.Turn }", ", new SpacesOptions { First = BodySpace.Head }", "The first space is Head, which isn't there to ride.")]
    [InlineData("new BodySpaces { World = root, Chest = chest }", ", new SpacesOptions { First = BodySpace.Head }", "The first space is Head, which isn't there to ride.")]
    [InlineData("(BodySpaces)null!", "", "Give them new BodySpaces { World = … }")]
    public void What_cannot_be_ridden_is_refused(string spaces, string options, string told) =>
        Assert.Contains(told, Assert.ThrowsAny<Exception>(() => Written.Run(Written.Files(Before + $"rig.Spaces(head, {spaces}{options});"))).ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("new BodySpaces { World = root, Chest = Console.ReadLine()!.Length > 3 ? chest : null }", "")]
    [InlineData("new BodySpaces { World = root, Chest = chest }", ", new SpacesOptions { StaysLevel = Console.ReadLine()!.Length > 3 }")]
    [InlineData("System.Text.Json.JsonSerializer.Deserialize<BodySpaces>(\"{}\")!", "")]
    public async Task What_they_would_have_to_guess_is_left_open_and_said(string spaces, string options)
    {
        foreach (var riding in new[] { "head", "head.Look" })
        {
            var found = await FrontEnds.Read(Written.Files(Before + $"rig.Spaces({riding}, {spaces}{options});"));
            Assert.NotEmpty(found);
            Assert.All(found, finding => Assert.Equal("CDY9002", finding.Id));
        }
    }
}
