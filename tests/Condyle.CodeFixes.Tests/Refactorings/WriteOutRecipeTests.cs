using Condyle.Analyzers.Tests.Recipes;
using Condyle.CodeFixes.Refactorings;

namespace Condyle.CodeFixes.Tests.Refactorings;

/// <summary>Every recipe can be written out where it stands: what comes of it makes the same rig and knows no recipe.</summary>
public class WriteOutRecipeTests
{
    private const string Chest = """
        var chest = rig.Control("turn_chest").Under(root).PlacedAt(joints.Chest);
        rig.Drive(joints.Chest).ByChannels(chest);

        """;

    private const string Leg = """
        foreach (var side in Side.Both)
        {
            var leg = rig.Limb(rig.Chain(joints.Hip[side], joints.Ankle[side]), "leg", side, under: root, systems, space: root, new LimbOptions { Goal = "foot" });

        """;

    private const string Members = """
        private static JointSet Finger(Joint wrist, string name, Side side, float z)
        {
            var first = wrist.Child($"{name}_1_{side}", at: new(side.Sign * 0.08f, 0, z));
            return new(first, first.Child($"{name}_2_{side}", at: new(side.Sign * 0.04f, 0, 0)));
        }
        """;

    [Fact]
    public async Task A_limb_is_written_out_for_both_sides_of_a_loop()
    {
        var after = await WrittenOut("""
            foreach (var side in Side.Both)
            {
                var bones = rig.Chain(joints.Hip[side], joints.Ankle[side]);
                var leg = rig.$$Limb(bones, "leg", side, under: root, systems, space: root, new LimbOptions { Goal = "foot", Stretches = true });
                leg.Turns[1].LimitTurn(Axis.X, -10, 140);
                foreach (var turn in leg.Turns)
                    turn.OnLayer("legs");
            }
            """);
        Assert.Equal(
            """
            foreach (var side in Side.Both)
            {
                var bones = rig.Chain(joints.Hip[side], joints.Ankle[side]);
                var legRoot = rig.Control($"leg_root_{side}").Under(root).PlacedAt(bones.Root).Lock(Channels.Turn);
                var legGroup = rig.Group($"leg_{side}_group").Under(systems).PlacedAt(legRoot);
                rig.Drive(legGroup).ByMatrix(legRoot);
                var ikCopy = bones.Copy("ik").Under(legGroup);
                var foot = rig.Control($"foot_{side}").Under(root).PlacedAt(bones.Tip);
                var legPole = rig.Control($"leg_pole_{side}").Under(root).PlacedAt(ikCopy.PolePoint(0.4f)).Lock(Channels.Turn);
                rig.TwoBone(ikCopy).Reach(foot).Face(legPole).Stretching(foot.Switch("stretch"));
                var fkCopy = bones.Copy("fk").Under(legGroup);
                var turnHip = rig.Control($"turn_hip_{side}").Under(legRoot).PlacedAt(bones.Root).Lock(Channels.Move);
                rig.Drive(fkCopy.Of(bones.Root)).ByChannels(turnHip);
                var turnKnee = rig.Control($"turn_knee_{side}").Under(turnHip).PlacedAt(bones[1]).Lock(Channels.Move);
                rig.Drive(fkCopy.Of(bones[1])).ByChannels(turnKnee);
                var turnAnkle = rig.Control($"turn_ankle_{side}").Under(turnKnee).PlacedAt(bones.Tip).Lock(Channels.Move);
                rig.Drive(fkCopy.Of(bones.Tip)).ByChannels(turnAnkle);
                var fk = foot.Switch("fk").AlsoOn(legRoot).AlsoOn(turnAnkle);
                rig.Blend(bones).From(ikCopy, fk.Inverse).From(fkCopy, fk);
                rig.Label($"ik_leg_label_{side}", "IK").Under(legRoot).ShownBy(fk.Inverse);
                rig.Label($"fk_leg_label_{side}", "FK").Under(legRoot).ShownBy(fk);
                turnKnee.LimitTurn(Axis.X, -10, 140);
                foreach (var turn in new[] { turnHip, turnKnee, turnAnkle })
                    turn.OnLayer("legs");
            }
            """, after, ignoreLineEndingDifferences: true);
    }

    [Theory]
    [InlineData(Chest + """
        foreach (var side in Side.Both)
        {
            var arm = rig.Limb(rig.Chain(joints.Shoulder[side], joints.Wrist[side]), "arm", side, under: chest, systems, space: root, new LimbOptions { Goal = "hand" });
            rig.$$Collar(arm, joints.Collar[side], under: chest).Turn.LimitTurn(Axis.X, -10, 20);
        }
        """)]
    [InlineData(Chest + """
        var arm = rig.$$Limb(rig.Chain(joints.Shoulder.Left, joints.Wrist.Left), "arm", Side.Left, under: chest, systems, space: root);
        arm.Goal.Lock(Channels.Scale);
        rig.Control("idle").Under(arm.Turns[^1]).PlacedAt(arm.Bones.Tip);
        """)]
    [InlineData("""
        rig.$$Limb(rig.Chain(joints.Hip.Left, joints.Ankle.Left), "leg", Side.Left, under: root, systems, space: root, new LimbOptions { GoalAlongWorld = true });
        """)]
    [InlineData(Leg + """
            var foot = rig.$$FootRoll(leg, joints.Toes[side], heel: new(0, -0.07f, -0.05f), tip: new(0, -0.01f, 0.07f), new FootRollOptions { BallDegrees = 30 });
            foot.Toes.LimitTurn(Axis.X, -60, 30);
        }
        """)]
    [InlineData(Leg + """
            rig.$$Spaces(leg, new BodySpaces { World = root, Chest = joints.Chest }, new SpacesOptions { First = BodySpace.Chest });
        }
        """)]
    [InlineData(Chest + """
        var spaces = new BodySpaces { World = root, Chest = chest };
        var head = rig.Head(joints.Head, chest, root);
        rig.$$Spaces(head, spaces);
        """)]
    [InlineData(Chest + "rig.$$Head(joints.Head, under: chest, space: root, new HeadOptions { LookDistance = 2 });")]
    [InlineData(Chest + """
        rig.Drive(joints.Head).ByChannels(rig.Control("turn_head").Under(chest).PlacedAt(joints.Head));
        JointPair eyes = new(joints.Head.Child("eye_left", at: new(0.03f, 0.1f, 0.08f)), joints.Head.Child("eye_right", at: new(-0.03f, 0.1f, 0.08f)));
        var made = rig.$$Eyes(eyes.Left, eyes.Right, joints.Head, systems, space: root);
        made.Look.Lock(Channels.Scale);
        """)]
    [InlineData("""
        var first = joints.Pelvis.Child("tail_1", at: new(0, 0, -0.1f));
        rig.$$Tail(rig.Chain(first, first.Child("tail_2", at: new(0, 0, -0.1f)).Child("tail_3", at: new(0, 0, -0.1f))), "tail", under: root, new TailOptions { FirstShare = 0.2f }).Bend.LimitTurn(Axis.X, -90, 90);
        """)]
    [InlineData("""
        foreach (var side in Side.Both)
        {
            var wrist = joints.Wrist[side];
            var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(wrist);
            rig.Drive(wrist).ByChannels(hand);
            rig.$$Fingers(wrist, [Finger(wrist, "thumb", side, 0.05f), Finger(wrist, "index", side, 0.03f), Finger(wrist, "ring", side, -0.03f)], "fingers", side, hand, systems);
        }
        """)]
    [InlineData(Chest + """
        var spaces = new BodySpaces { World = root, Chest = chest };
        var tool = rig.Control("tool").Under(root).PlacedAt(joints.Chest);
        rig.$$Spaces(tool, spaces).In("crate", joints.Pelvis);
        """)]
    [InlineData("""
        foreach (var side in Side.Both)
            rig.$$Limb(rig.Chain(joints.Hip[side], joints.Ankle[side]), "leg", side, root, systems, root);
        """)]
    public Task A_recipe_is_written_out_as_the_same_rig(string body) => WrittenOut(body);

    [Theory]
    [InlineData("rig.$$Spine(rig.Chain(joints.Pelvis, joints.Head), \"spine\", systems, world).Turns[2].LimitTurn(Axis.X, -40, 30);")]
    [InlineData("rig.$$Spine(rig.Chain(joints.Pelvis, joints.Head), \"spine\", systems, world, new SpineOptions { Curves = true, Stretches = true });")]
    public Task A_spine_is_written_out_as_the_same_rig(string body) => WrittenOut(body, body => Written.FilesOnTheWorld(body));

    [Fact]
    public Task A_whole_biped_is_written_out_as_the_same_rig() => WrittenOut("""
        var named = new BipedJoints
        {
            Pelvis = joints.Pelvis, Chest = joints.Chest, Head = joints.Head, Collar = joints.Collar, Shoulder = joints.Shoulder, Wrist = joints.Wrist,
            Hip = joints.Hip, Ankle = joints.Ankle, Toes = joints.Toes,
        };
        var biped = rig.$$Biped(named);
        biped[Side.Left].Arm.Goal.Lock(Channels.Scale);
        """, body => Written.FilesOnTheSkeleton(body));

    [Fact]
    public async Task Comments_within_the_call_stay_before_it()
    {
        var after = await WrittenOut(Leg.Replace("\"leg\", side,", "\"leg\", // thigh and shin\n        side, /* each */", StringComparison.Ordinal).Replace("rig.Limb", "rig.$$Limb", StringComparison.Ordinal) + """
            leg.Goal.Lock(Channels.Scale); // as delivered
        }
        """);
        Assert.StartsWith(
            """
            foreach (var side in Side.Both)
            {
                // thigh and shin
                /* each */
                var bones = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            """, after, StringComparison.Ordinal);
        Assert.EndsWith("    foot.Lock(Channels.Scale); // as delivered\n}", after, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("var count = 0; var leg = rig.$$Limb(rig.Chain(joints.Hip.Left, joints.Ankle.Left), count++ == 0 ? \"leg\" : \"tail\", Side.Left, root, systems, root); Console.WriteLine(count);", "")]
    [InlineData("string name; var leg = rig.$$Limb(rig.Chain(joints.Hip.Left, joints.Ankle.Left), name = \"leg\", Side.Left, root, systems, root);", "")]
    [InlineData(Leg + """
            Use(leg);
        }
        """, "private static void Use(Limb leg) => leg.Goal.Lock(Channels.Scale);")]
    [InlineData("var name = Console.ReadLine()!; var leg = rig.$$Limb(rig.Chain(joints.Hip.Left, joints.Ankle.Left), name, Side.Left, root, systems, root);", "")]
    [InlineData("rig.$$Control(\"idle\").Under(root).PlacedAt(joints.Toes.Left);", "")]
    [InlineData("foreach (var name in new[] { \"one\", \"other\" }) rig.$$Tail(rig.Chain(joints.Hip.Left, joints.Ankle.Left), name, root);", "")]
    public async Task What_could_not_be_written_out_whole_is_not_offered(string body, string members)
    {
        var marked = body.Contains("$$", StringComparison.Ordinal) ? body : body.Replace("rig.Limb", "rig.$$Limb", StringComparison.Ordinal);
        await OnARig.OffersNothing<WriteOutRecipeRefactoring>(Written.Files(marked, members));
    }

    private static Task<string> WrittenOut(string body) => WrittenOut(body, code => Written.Files(code, Members));

    private static async Task<string> WrittenOut(string body, Func<string, (string, string)[]> filesOf)
    {
        var after = await OnARig.Changed<WriteOutRecipeRefactoring>(body, filesOf, "Write out the recipe");
        Assert.DoesNotContain($"rig.{body.Split("$$")[1].Split('(')[0]}(", after, StringComparison.Ordinal);
        return after;
    }
}
