using System.Numerics;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Matching;

public class MatchingTests
{
    // Of a limb bent by less than this, in metres, a float's last digit of the goal moves the middle joint by more than 0.01 mm; a straight one stays straight.
    private const float Bent = 0.003f;

    // What the distance from root to goal is off at the most, in metres: some digits of a float.
    private const float Digit = 1e-6f;

    [Fact]
    public void The_switch_flips_both_ways_without_a_jump()
    {
        for (var seed = 0; seed < 500; seed++)
        {
            var instance = RigCompiler.Compile(Rig.Build(new TwoLimbs(seed))).NewInstance();
            PoseBySolver(instance, seed);
            foreach (var limb in instance.Rig.Limbs)
            {
                var solved = Flip(instance, limb, toTurns: false);
                var toTurns = instance.MatchTurns(limb.Index);
                Assert.True(toTurns.Holds, $"{seed} {limb.Name} to FK: {toTurns}");
                AssertSame(solved, Flip(instance, limb, toTurns: true), 1e-5, 0.01, $"{seed} {limb.Name} to FK");

                Scatter(instance, limb, seed);
                var turned = Shown.Of(instance);
                var toGoal = instance.MatchGoal(limb.Index);
                var off = Trembling(solved.Bend(limb));
                Assert.True(toGoal.Holds || off > 0, $"{seed} {limb.Name} to IK: {toGoal}");
                AssertSame(turned, Flip(instance, limb, toTurns: false), 1e-5 + off, 0.01 + (500 * off), $"{seed} {limb.Name} to IK, {solved.Bend(limb)} bent: {toGoal}");
            }
        }
    }

    [Fact]
    public void Whatever_the_pose_the_answer_is_how_far_the_joints_jump_and_why()
    {
        for (var seed = 0; seed < 500; seed++)
        {
            var instance = RigCompiler.Compile(Rig.Build(new TwoLimbs(seed))).NewInstance();
            PoseBySolver(instance, seed);
            var choices = new RandomChoices(~seed);
            foreach (var limb in instance.Rig.Limbs)
            {
                foreach (var control in limb.Turns)
                {
                    instance.SetTurn(control, choices.Turn(choices.Between(0f, 3f)));
                    instance.SetMove(control, choices.Chance(0.8) ? Vector3.Zero : choices.Vector(0.2f));
                }

                var turned = Flip(instance, limb, toTurns: true);
                var match = instance.MatchGoal(limb.Index);
                var (metres, degrees) = turned.Against(Flip(instance, limb, toTurns: false), limb.Joints);
                Assert.True(Math.Abs(metres - match.Metres) < 1e-4 && Math.Abs(degrees - match.Degrees) < 0.1, $"{seed} {limb.Name}: {metres} m, {degrees}°, {match}");
                Assert.True(match.Holds || match.Notes.Count > 0, $"{seed} {limb.Name}: {match}");
            }
        }
    }

    [Fact]
    public void A_straight_limb_keeps_its_roll_and_its_pole_stands_where_it_bends()
    {
        // The elbow bends by less and less, down to nothing: the pole must not wander, however little the elbow's place says.
        var instance = RigCompiler.Compile(Rig.Build(new StraightArm())).NewInstance();
        var (limb, elbow) = (Assert.Single(instance.Rig.Limbs), instance.Rig.ControlIndex("turn_elbow"));
        instance.SetTurn(instance.Rig.ControlIndex("turn_shoulder"), Quaternion.CreateFromYawPitchRoll(0.3f, -0.5f, 0.8f));
        Vector3? last = null;
        var notes = new List<MatchNote>();
        foreach (var bend in new[] { 1e-2f, 3e-3f, 1e-3f, 1e-4f, 1e-5f, 1e-6f, 0, -1e-4f })
        {
            instance.SetTurn(elbow, Quaternion.CreateFromAxisAngle(Vector3.UnitY, -bend));
            var turned = Flip(instance, limb, toTurns: true);
            var match = instance.MatchGoal(limb.Index);
            notes.AddRange(match.Notes);
            var (metres, degrees) = turned.Against(Flip(instance, limb, toTurns: false));
            Assert.True(metres < 1e-5 + Trembling(turned.Bend(limb)) && degrees < 0.01 + (500 * Trembling(turned.Bend(limb))), $"{bend}: {metres} m, {degrees}°, {match}");
            var pole = instance.ControlMove(limb.Pole!.Value);
            Assert.True(last is not { } before || Vector3.Distance(pole, before) < 0.01f, $"{bend}: {last} to {pole}");
            last = pole;
        }

        var straight = notes.Where(note => note.Kind == MatchNoteKind.AlmostStraight).ToList();
        Assert.NotEmpty(straight);
        Assert.All(straight, note => Assert.Matches("^'elbow' moves by [0-9.]+ mm with the last digit of a float of the goal's place: it is [0-9.]+ mm off the line from 'shoulder' to 'wrist', and the limb [0-9.]+ mm from the middle of the world\\.$", note.Text));
    }

    [Theory]
    [InlineData("root", MatchNoteKind.RootMoved, "'shoulder' stands 50 mm from where")]
    [InlineData("length", MatchNoteKind.BoneLength, "The bone from 'shoulder' to 'elbow' is 350 mm long, and the solver gives it 300 mm.")]
    [InlineData("twist", MatchNoteKind.Twisted, "'elbow' is twisted by 20°")]
    [InlineData("aside", MatchNoteKind.BendsAside, "'elbow' bends beside the solver's plane or backwards")]
    [InlineData("backwards", MatchNoteKind.BendsAside, "'elbow' bends beside the solver's plane or backwards")]
    [InlineData("limit", MatchNoteKind.BeyondLimit, "'hand' turns 50° about X, and its limits are -30° and 30°.")]
    [InlineData("lock", MatchNoteKind.Locked, "'turn_elbow' would have to move")]
    public void What_is_in_the_way_is_said_with_numbers(string what, MatchNoteKind kind, string text)
    {
        var instance = RigCompiler.Compile(Rig.Build(new StraightArm())).NewInstance();
        var (shoulder, elbow, wrist) = (instance.Rig.ControlIndex("turn_shoulder"), instance.Rig.ControlIndex("turn_elbow"), instance.Rig.ControlIndex("turn_wrist"));
        var limb = instance.Rig.LimbIndex("elbow");
        instance.SetTurn(elbow, Quaternion.CreateFromAxisAngle(Vector3.UnitY, what == "limit" ? 0 : -1));
        switch (what)
        {
            case "root": instance.SetMove(shoulder, new(0, 0.05f, 0)); break;
            case "length": instance.SetMove(elbow, new(0.05f, 0, 0)); break;
            case "twist": instance.SetTurn(elbow, instance.ControlTurn(elbow) * Quaternion.CreateFromAxisAngle(Vector3.UnitX, MathF.PI / 9)); break;
            case "aside": instance.SetTurn(elbow, Quaternion.CreateFromAxisAngle(Vector3.UnitZ, 0.4f) * instance.ControlTurn(elbow)); break;
            case "backwards": instance.SetTurn(elbow, Quaternion.CreateFromAxisAngle(Vector3.UnitY, 0.1f)); break;
            case "limit": instance.SetTurn(wrist, Quaternion.CreateFromAxisAngle(Vector3.UnitX, MathF.PI * 50 / 180)); break;
            case "lock": instance.SetMove(instance.Rig.ControlIndex("hand"), new(0.3f, 0, 0)); break;
        }

        var match = kind == MatchNoteKind.Locked ? instance.MatchTurns(limb) : instance.MatchGoal(limb);
        Assert.Contains(match.Notes, note => note.Kind == kind && note.Text.StartsWith(text, StringComparison.Ordinal));
        Assert.Equal(kind == MatchNoteKind.BeyondLimit, match.Holds);
        Assert.Matches("^[0-9.]+ mm and [0-9.]+° off at most\\. ", match.ToString());
    }

    [Fact]
    public void Degenerate_poses_give_finite_channels()
    {
        var instance = RigCompiler.Compile(Rig.Build(new TwoLimbs(4))).NewInstance();
        foreach (var scale in new[] { Vector3.One, Vector3.Zero, new(0, 1, 1), new(-1, 1, 1), Vector3.One * 1e-20f, new(1e5f, 1e-5f, 1) })
        {
            foreach (var turn in new[] { Quaternion.Identity, new(1, 0, 0, 0), new(0, -1, 0, 0), new(0.6f, 0, 0, -0.8f) })
            {
                foreach (var control in instance.Rig.Controls)
                {
                    instance.SetMove(control.Index, control.Index % 3 == 0 ? new(1e6f, 0, -1e-20f) : Vector3.Zero);
                    instance.SetTurn(control.Index, turn);
                }

                instance.SetScale(instance.Rig.ControlIndex("world"), scale);
                foreach (var limb in instance.Rig.Limbs)
                {
                    foreach (var match in new[] { instance.MatchGoal(limb.Index), instance.MatchTurns(limb.Index) })
                        Assert.True(double.IsFinite(match.Metres + match.Degrees), $"{scale} {turn}: {match}");
                }

                foreach (var control in instance.Rig.Controls)
                    Assert.True(float.IsFinite(instance.ControlMove(control.Index).X + instance.ControlMove(control.Index).Y + instance.ControlMove(control.Index).Z + instance.ControlTurn(control.Index).Length()));
            }
        }
    }

    [Fact]
    public void A_limb_is_found_by_each_of_its_joints_and_tells_its_controls()
    {
        var rig = RigCompiler.Compile(Rig.Build(new StraightArm()));
        var limb = Assert.Single(rig.Limbs);
        Assert.All(["shoulder", "elbow", "wrist"], joint => Assert.Equal(0, rig.LimbIndex(joint)));
        Assert.Equal("shoulder", limb.Name);
        Assert.Equal(["shoulder", "elbow", "wrist"], limb.Joints.Select(joint => rig.Joints[joint].Name));
        Assert.Equal(["hand", "pole", "turn_shoulder", "turn_elbow", "turn_wrist"], new[] { limb.Goal, limb.Pole!.Value }.Concat(limb.Turns).Select(control => rig.Controls[control].Name));
        Assert.Contains("'elbow'", Assert.Throws<ArgumentException>(() => rig.LimbIndex("elbo")).Message, StringComparison.Ordinal);
        Assert.Contains("has 1 limbs", Assert.Throws<ArgumentOutOfRangeException>(() => rig.NewInstance().MatchGoal(1)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_member_of_a_crowd_is_matched_as_it_is_alone()
    {
        var rig = RigCompiler.Compile(Rig.Build(new TwoLimbs(7)));
        var (crowd, alone) = (rig.NewCrowd(3), rig.NewInstance());
        foreach (var instance in new[] { alone, crowd[2] })
        {
            PoseBySolver(instance, 7);
            Assert.True(instance.MatchTurns(1).Holds);
        }

        foreach (var control in rig.Controls)
            Assert.Equal((alone.ControlMove(control.Index), alone.ControlTurn(control.Index)), (crowd[2].ControlMove(control.Index), crowd[2].ControlTurn(control.Index)));
    }

    private static Shown Flip(RigInstance instance, CompiledLimb limb, bool toTurns)
    {
        instance.SetSwitch(instance.Rig.SwitchIndex($"{instance.Rig.Controls[limb.Goal].Name}.fk"), toTurns ? 1 : 0);
        return Shown.Of(instance);
    }

    private static void PoseBySolver(RigInstance instance, int seed)
    {
        var choices = new RandomChoices(seed ^ 77);
        foreach (var control in instance.Rig.Controls)
        {
            if (control.Name.StartsWith("turn_", StringComparison.Ordinal))
                continue;
            instance.SetMove(control.Index, choices.Vector(choices.Chance(0.2) ? 1 : 0.2f));
            instance.SetTurn(control.Index, choices.Turn(choices.Chance(0.2) ? 3 : 1));
        }

        instance.SetScale(instance.Rig.ControlIndex("world"), Vector3.One * choices.Between(0.7f, 1.4f));
        foreach (var given in instance.Rig.Switches.Where(given => given.Name.EndsWith("stretch", StringComparison.Ordinal)))
            instance.SetSwitch(given.Index, choices.Chance(0.3) ? 1 : choices.Between(0f, 1f));
        foreach (var dial in instance.Rig.Dials)
            instance.SetDial(dial.Index, choices.Between(-170f, 170f));
    }

    /// <summary>Takes goal and pole away from where they made the pose.</summary>
    private static void Scatter(RigInstance instance, CompiledLimb limb, int seed)
    {
        var choices = new RandomChoices(seed ^ 991);
        foreach (var control in new[] { limb.Goal, limb.Pole }.OfType<int>())
        {
            instance.SetMove(control, choices.Vector(1));
            if (control == limb.Goal)
                instance.SetTurn(control, choices.Turn(3));
        }

        foreach (var dial in instance.Rig.Dials)
            instance.SetDial(dial.Index, choices.Between(-170f, 170f));
    }

    /// <summary>How far a middle joint moves for some digits of the goal's distance: by (a·b / L) · digits / height, and no further than to the line. None where the limb is bent, or straight.</summary>
    private static double Trembling(float height) => height is > 1e-6f and < Bent ? Math.Min(height, 0.25 * Digit / height) : 0;

    private static void AssertSame(Shown expected, Shown actual, double metres, double degrees, string what)
    {
        var (away, turned) = actual.Against(expected);
        Assert.True(away <= metres && turned <= degrees, $"{what}: {away} m, {turned}°");
    }

}
