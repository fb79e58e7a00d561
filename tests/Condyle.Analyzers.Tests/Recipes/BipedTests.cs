using System.Text.RegularExpressions;
using Condyle.Analyzers.Tests.Reading;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Model;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>The whole biped: it is made of the other recipes, works with few joints and with many, and a reading knows as much of it as of what is written out.</summary>
public partial class BipedTests
{
    private const string Named = "Pelvis = joints.Pelvis, Chest = joints.Chest, Head = joints.Head, Shoulder = joints.Shoulder, Wrist = joints.Wrist, Hip = joints.Hip, Ankle = joints.Ankle";

    private const string More = """
        JointPair eyes = new(joints.Head.Child("eye_left", at: new(0.03f, 0.1f, 0.08f)), joints.Head.Child("eye_right", at: new(-0.03f, 0.1f, 0.08f)));
        JointSetPair Twists(JointPair above, string name) => new(new(above.Left.Child($"{name}_twist_left", JointRole.Twist, at: new(0.05f, 0, 0))), new(above.Right.Child($"{name}_twist_right", JointRole.Twist, at: new(-0.05f, 0, 0))));
        JointSetPair Finger(string name, float z) => new(Joints(Side.Left, name, z), Joints(Side.Right, name, z));
        JointSet Joints(Side side, string name, float z)
        {
            var first = joints.Wrist[side].Child($"{name}_1_{side}", at: new(side.Sign * 0.08f, 0, z));
            return new(first, first.Child($"{name}_2_{side}", at: new(side.Sign * 0.04f, 0, 0)));
        }

        """;

    private const string WithMore = "Eyes = eyes, Collar = joints.Collar, Toes = joints.Toes, Fingers = [Finger(\"thumb\", 0.03f), Finger(\"index\", 0.02f), Finger(\"ring\", -0.02f)], "
        + "ShoulderTwists = Twists(joints.Shoulder, \"shoulder\"), ElbowTwists = Twists(joints.Elbow, \"elbow\"), HipTwists = Twists(joints.Hip, \"hip\"), KneeTwists = Twists(joints.Knee, \"knee\")";

    private const string Torso = """
        var systems = rig.Group("systems_group");
        var world = rig.Control("world");
        var offset = rig.Control("offset").Under(world);
        var spine = rig.Spine(rig.Chain(joints.Pelvis, joints.Chest), "spine", systems, offset);
        var spaces = new BodySpaces { World = offset, Hips = joints.Pelvis, Chest = joints.Chest, Head = joints.Head };

        """;

    [Fact]
    public async Task With_few_joints_it_is_made_of_what_could_be_written_out()
    {
        await IsTheSame(
            $"rig.Biped(new BipedJoints {{ {Named} }}, new BipedOptions {{ HasLimits = false }});",
            Torso + """
                rig.Spaces(rig.Head(joints.Head, spine.Turns[^1], offset), spaces);
                foreach (var side in Side.Both)
                {
                    var arm = rig.Limb(rig.Chain(joints.Shoulder[side], joints.Wrist[side]), "arm", side, spine.Turns[^1], systems, offset, new LimbOptions { Goal = "hand", Pole = "elbow_pole" });
                    var leg = rig.Limb(rig.Chain(joints.Hip[side], joints.Ankle[side]), "leg", side, spine.Hips, systems, offset, new LimbOptions { Goal = "foot", Pole = "knee_pole", GoalAlongWorld = true });
                    rig.Spaces(arm, spaces);
                    rig.Spaces(leg, spaces with { Chest = null, Head = null });
                }
                """);
    }

    [Fact]
    public async Task With_all_joints_and_options_it_is_made_of_what_could_be_written_out()
    {
        await IsTheSame(
            More + $$"""
                var like = new BipedOptions
                {
                    World = "all", Offset = "shift", HasSpaces = false, HasLimits = false, ShapeSize = 2, Heel = new(0, -0.05f, -0.04f), Tip = new(0, -0.01f, 0.1f),
                    Spine = new SpineOptions { Curves = true }, Head = new HeadOptions { Look = "gaze" }, Eyes = new EyesOptions { Height = 0.2f }, Collar = new CollarOptions { Follows = 0.5f },
                    Arm = new LimbOptions { Stretches = true }, Fingers = new FingersOptions { CurlDegrees = 70 }, Leg = new LimbOptions { Goal = "shoe" }, FootRoll = new FootRollOptions { HeelDegrees = 30 },
                };
                var biped = rig.Biped(new BipedJoints { {{Named.Replace("joints.Chest", "joints.Waist, Neck = joints.Chest", StringComparison.Ordinal)}}, {{WithMore}} }, like);
                biped[Side.Right].Arm.Goal.Lock(Channels.Scale);
                """,
            More + Torso.Replace("offset);\n", "offset, new SpineOptions { Curves = true });\n", StringComparison.Ordinal).Replace("\"world\"", "\"all\"", StringComparison.Ordinal).Replace("\"offset\"", "\"shift\"", StringComparison.Ordinal).Replace("joints.Chest", "joints.Waist", StringComparison.Ordinal) + """
                var neck = rig.Control("turn_chest").Under(joints.Waist).PlacedAt(joints.Chest).Lock(Channels.Move);
                rig.Drive(joints.Chest).ByChannels(neck);
                var head = rig.Head(joints.Head, neck, offset, new HeadOptions { Look = "gaze" });
                rig.Eyes(eyes.Left, eyes.Right, joints.Head, systems, head.Turn, new EyesOptions { Height = 0.2f });
                JointSetPair[] fingers = [Finger("thumb", 0.03f), Finger("index", 0.02f), Finger("ring", -0.02f)];
                var (shoulders, elbows, hips, knees) = (Twists(joints.Shoulder, "shoulder"), Twists(joints.Elbow, "elbow"), Twists(joints.Hip, "hip"), Twists(joints.Knee, "knee"));
                foreach (var side in Side.Both)
                {
                    var arm = rig.Limb(rig.Chain(joints.Shoulder[side], joints.Wrist[side]), "arm", side, joints.Waist, systems, offset, new LimbOptions { Goal = "hand", Pole = "elbow_pole", Stretches = true });
                    var leg = rig.Limb(rig.Chain(joints.Hip[side], joints.Ankle[side]), "leg", side, spine.Hips, systems, offset, new LimbOptions { Goal = "shoe", Pole = "knee_pole" });
                    rig.Collar(arm, joints.Collar[side], joints.Waist, new CollarOptions { Follows = 0.5f });
                    rig.FootRoll(leg, joints.Toes[side], new(0, -0.05f, -0.04f), new(0, -0.01f, 0.1f), new FootRollOptions { HeelDegrees = 30 });
                    rig.Fingers(joints.Wrist[side], [.. fingers.Select(finger => finger[side])], "fingers", side, arm.Goal, systems, new FingersOptions { CurlDegrees = 70 });
                    rig.Twist(shoulders[side]).Between(joints.Collar[side], joints.Shoulder[side]);
                    rig.Twist(elbows[side]).Between(joints.Elbow[side], joints.Wrist[side]);
                    rig.Twist(hips[side]).Between(joints.Pelvis, joints.Hip[side]);
                    rig.Twist(knees[side]).Between(joints.Knee[side], joints.Ankle[side]);
                    if (side == Side.Right)
                        arm.Goal.Lock(Channels.Scale);
                }
                """);
    }

    [Fact]
    public void Each_control_is_shown_by_a_shape_a_tint_and_a_layer_and_turns_are_limited()
    {
        var rig = Written.Run(Written.FilesOnTheSkeleton(More + $"rig.Biped(new BipedJoints {{ {Named}, {WithMore} }});"));
        var controls = rig.Model.Nodes.Where(node => node.Kind == NodeKind.Control).ToList();
        Assert.All(controls, control => Assert.True(
            control.Outline.TryKnown(out var outline) && outline is not null && control.Tint.TryKnown(out var tint) && tint is not null && control.Layer.ToString().Length > 0, control.Title));
        Limited("turn_waist", "X -20 to 45, Y -30 to 30, Z -25 to 25");
        Limited("turn_elbow_left", "Y -137 to 13");
        Limited("turn_elbow_right", "Y -13 to 137");
        Limited("turn_knee_left", "X -10 to 135");
        Limited("turn_knee_right", "X -10 to 135");
        Limited("turn_shoulder_left", "X -90 to 90, Y -130 to 45, Z -110 to 80");
        Limited("turn_shoulder_right", "X -90 to 90, Y -45 to 130, Z -80 to 110");

        void Limited(string name, string limits) =>
            Assert.Equal(limits, string.Join(", ", controls.Single(control => control.Name.ToString() == name).Limits.OrderBy(limit => limit.Axis.ToString()).Select(limit => $"{limit.Axis} {limit.From} to {limit.To}")));
    }

    [Fact]
    public async Task A_skeleton_that_rests_beyond_what_a_human_can_do_keeps_its_rest_within_the_limits()
    {
        const string Skeleton = """
            JointPair Below(JointPair above, string name, Vector3 by) => new(above.Left.Child(name + "_left", at: by), above.Right.Child(name + "_right", at: by with { X = -by.X }));
            var shoulder = Below(joints.Collar, "raised", new(0.1f, 0.02f, 0));
            var wrist = Below(Below(shoulder, "fore", new(0.01f, 0.26f, -0.02f)), "palm", new(0.01f, 0.26f, 0.02f));
            var hip = Below(new(joints.Pelvis, joints.Pelvis), "thigh", new(0.12f, -0.05f, 0.02f));
            var ankle = Below(Below(hip, "shin", new(0.01f, 0.04f, 0.42f)), "sole", new(0.01f, -0.07f, -0.41f));

            """;
        var files = Written.FilesOnTheSkeleton(Skeleton + "rig.Biped(new BipedJoints { Pelvis = joints.Pelvis, Chest = joints.Chest, Head = joints.Head, Shoulder = shoulder, Wrist = wrist, Hip = hip, Ankle = ankle });");
        Assert.Empty(await FrontEnds.Read(files));
        Assert.All(Written.Run(files).Model.Nodes.SelectMany(node => node.Limits), limit => Assert.True(limit.From.TryKnown(out var from) && limit.To.TryKnown(out var to) && from <= 0 && to >= 0));
    }

    [Fact]
    public async Task Limbs_that_are_straight_at_rest_bend_as_those_of_a_human()
    {
        const string Skeleton = """
            JointPair Below(JointPair above, string name, Vector3 by) => new(above.Left.Child(name + "_left", at: by), above.Right.Child(name + "_right", at: by with { X = -by.X }));
            var shoulder = Below(joints.Collar, "out", new(0.1f, 0.02f, 0));
            var wrist = Below(Below(shoulder, "fore", new(0.26f, 0, 0)), "palm", new(0.26f, 0, 0));
            var hip = Below(new(joints.Pelvis, joints.Pelvis), "thigh", new(0.12f, -0.05f, 0));
            var ankle = Below(Below(hip, "shin", new(0, -0.42f, 0)), "sole", new(0, -0.42f, 0));

            """;
        var files = Written.FilesOnTheSkeleton(Skeleton + "rig.Biped(new BipedJoints { Pelvis = joints.Pelvis, Chest = joints.Chest, Head = joints.Head, Shoulder = shoulder, Wrist = wrist, Hip = hip, Ankle = ankle });");
        Assert.Empty(await FrontEnds.Read(files));
        Assert.Empty(Written.Run(files).Findings);
        Oracle.AgreesOn(files);
    }

    [Theory]
    [InlineData("")]
    [InlineData("foreach (var side in Side.Both) biped[side].Arm.Bones.Bending(Vector3.UnitY);")]
    public async Task Arms_that_are_straight_along_Z_are_told_how_they_bend(string bending)
    {
        const string Skeleton = """
            JointPair Below(JointPair above, string name, Vector3 by) => new(above.Left.Child(name + "_left", at: by), above.Right.Child(name + "_right", at: by with { X = -by.X }));
            var shoulder = Below(joints.Collar, "out", new(0.1f, 0.02f, 0));
            var wrist = Below(Below(shoulder, "fore", new(0, 0, 0.26f)), "palm", new(0, 0, 0.26f));
            var biped = rig.Biped(new BipedJoints { Pelvis = joints.Pelvis, Chest = joints.Chest, Head = joints.Head, Shoulder = shoulder, Wrist = wrist, Hip = joints.Hip, Ankle = joints.Ankle });

            """;
        var files = Written.FilesOnTheSkeleton(Skeleton + bending);
        Assert.Equal(bending.Length == 0, Written.Run(files).Findings.Count > 0);
        Assert.Equal(bending.Length == 0, (await FrontEnds.Read(files)).Any());
    }

    [Fact]
    public async Task Its_spaces_take_further_nodes_to_ride()
    {
        var files = Written.FilesOnTheSkeleton($$"""
            var biped = rig.Biped(new BipedJoints { {{Named}} });
            var crate = rig.Control("crate").Under(biped.World);
            foreach (var side in Side.Both)
            {
                biped[side].ArmSpaces!.Goal.In("crate", crate);
                biped[side].LegSpaces!.Goal.In("crate", crate);
            }

            biped.HeadSpaces!.Look.In("crate", crate);
            """);
        Assert.Empty(await FrontEnds.Read(files));
        Oracle.AgreesOn(files);
        Assert.Equal(5, Written.Run(files).Model.Choices.Count(choice => choice.Options.Exists(option => option.Name.ToString() == "crate")));
    }

    [Fact]
    public void Without_spaces_it_has_none_to_add_to()
    {
        var files = Written.FilesOnTheSkeleton($$"""
            var biped = rig.Biped(new BipedJoints { {{Named}} }, new BipedOptions { HasSpaces = false });
            if (biped.HeadSpaces is null && biped[Side.Left] is { ArmSpaces: null, LegSpaces: null })
                rig.Group("none_group");
            """);
        Assert.Contains(Written.Run(files).Model.Nodes, node => node.Name.ToString() == "none_group");
        Oracle.AgreesOn(files);
    }

    [Theory]
    [InlineData("Fingers = [new(new(), new())]", "", "Finger 1 of the hand 'fingers' has no joint.")]
    [InlineData("Neck = joints.Hip.Left", "", "'head' is not below 'hip_left' in the skeleton.")]
    [InlineData("", ", new BipedOptions { Spine = new SpineOptions { Stretches = true } }", "Let it curve as well, by Curves = true, or leave Stretches out.")]
    [InlineData("", ", new BipedOptions { Head = new HeadOptions { LookDistance = 0 } }", "How far a head looks is 0. Give metres above zero.")]
    [InlineData("Eyes = joints.Collar", ", new BipedOptions { Eyes = new EyesOptions { LookDistance = -1 } }", "How far eyes look is -1. Give metres above zero.")]
    [InlineData("", ", new BipedOptions { ShapeSize = 0 }", "Give metres above zero.")]
    [InlineData("Collar = joints.Collar", ", new BipedOptions { Collar = new CollarOptions { Follows = float.NaN } }", "Where switch 'follows' on 'turn_collar_left' rests is no finite number: NaN.")]
    public async Task What_cannot_be_is_refused_whenever_it_runs(string joints, string options, string told)
    {
        var files = Written.FilesOnTheSkeleton($"rig.Biped(new BipedJoints {{ {Named}{(joints.Length > 0 ? ", " : "")}{joints} }}{options});");
        Assert.Contains(told, Assert.ThrowsAny<Exception>(() => Written.Run(files)).ToString(), StringComparison.Ordinal);
        Assert.Equal(["CDY9001"], (await FrontEnds.Read(files)).Select(finding => finding.Id));
    }

    [Theory]
    [InlineData("Fingers = null!", "A biped was given null for the joints of its fingers.")]
    [InlineData("Fingers = new JointSetPair[1]", "A biped was given null for the joints of its fingers.")]
    [InlineData("Toes = default(JointPair)", "This joint was never made")]
    public async Task Joints_that_were_never_made_are_refused_and_no_half_of_a_rig_is_built(string joints, string told)
    {
        var files = Written.FilesOnTheSkeleton($"rig.Biped(new BipedJoints {{ {Named}, {joints} }});");
        Assert.Contains(told, Assert.ThrowsAny<Exception>(() => Written.Run(files)).ToString(), StringComparison.Ordinal);
        Assert.All(await FrontEnds.Read(files), finding => Assert.StartsWith("CDY900", finding.Id, StringComparison.Ordinal));
    }

    [Fact]
    public Task Options_of_its_parts_that_are_null_are_those_that_nothing_was_said_of() =>
        IsTheSame(
            $"rig.Biped(new BipedJoints {{ {Named}, Collar = joints.Collar, Toes = joints.Toes }}, new BipedOptions {{ Spine = null!, Head = null!, Collar = null!, Arm = null!, Leg = null!, Fingers = null!, FootRoll = null! }});",
            $"rig.Biped(new BipedJoints {{ {Named}, Collar = joints.Collar, Toes = joints.Toes }});");

    [Theory]
    [InlineData("Toes = Console.ReadLine()!.Length > 3 ? joints.Toes : null", "")]
    [InlineData("Fingers = System.Text.Json.JsonSerializer.Deserialize<JointSetPair[]>(\"[]\")!", "")]
    [InlineData("Root = System.Text.Json.JsonSerializer.Deserialize<Joint?>(\"null\")", "")]
    [InlineData("Collar = joints.Collar", ", System.Text.Json.JsonSerializer.Deserialize<BipedOptions>(\"{}\")")]
    public async Task What_it_would_have_to_guess_is_left_open_and_said(string joints, string options)
    {
        var found = await FrontEnds.Read(Written.FilesOnTheSkeleton($"rig.Biped(new BipedJoints {{ {Named}, {joints} }}{options});"));
        Assert.NotEmpty(found);
        Assert.All(found, finding => Assert.Equal("CDY9002", finding.Id));
    }

    [Fact]
    public async Task Names_and_numbers_that_are_not_known_leave_the_rest_known()
    {
        var files = Written.FilesOnTheSkeleton($$"""
            var number = Console.ReadLine()!.Length;
            rig.Biped(new BipedJoints { {{Named}}, Toes = joints.Toes }, new BipedOptions { World = Console.ReadLine()!, Heel = new(0, -number, 0), ShapeSize = number, Arm = new LimbOptions { PoleDistance = number } });
            """);
        Assert.All(await FrontEnds.Read(files), finding => Assert.Equal("CDY9002", finding.Id));
        Assert.Equal(4, Assert.Single(Oracle.Read(CompiledCode.Compile(files), "TestRig").Paths).Model.Blends.Count(blend => blend.Chain is not null));
    }

    /// <summary>But for how controls are shown, and for chains, from which twist joints are taken out whether there are any or not.</summary>
    private static async Task IsTheSame(string recipe, string written)
    {
        var files = Written.FilesOnTheSkeleton(recipe);
        Assert.Equal(LinesOf(Written.FilesOnTheSkeleton(written)), LinesOf(files));
        Oracle.AgreesOn(files);
        Assert.Empty(await FrontEnds.Read(files));
    }

    private static IEnumerable<string> LinesOf((string, string)[] files) =>
        ModelText.Lines(Written.Run(files).Model, _ => null).Where(line => !line.StartsWith("chain ", StringComparison.Ordinal)).Select(line => Number().Replace(Look().Replace(line, ""), "#")).Order(StringComparer.Ordinal);

    [GeneratedRegex(@"#\d+")]
    private static partial Regex Number();

    [GeneratedRegex(" (limits|shape|tint|layer) .*$")]
    private static partial Regex Look();
}
