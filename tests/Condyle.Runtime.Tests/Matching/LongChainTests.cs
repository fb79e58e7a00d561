using System.Numerics;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Matching;

/// <summary>Chains with many-bone IK and chains along curves, from the solved copy to FK and back.</summary>
public class LongChainTests
{
    [Theory]
    [InlineData("tail_0")]
    [InlineData("spine_0")]
    public void What_the_solver_made_itself_comes_back(string chain)
    {
        for (var seed = 0; seed < 40; seed++)
        {
            var (instance, limb) = Posed(seed, chain);
            var solved = Flip(instance, limb, toTurns: false);
            var toTurns = instance.MatchTurns(limb.Index);
            Assert.True(toTurns.Holds, $"{seed} to FK: {toTurns}");
            AssertSame(solved, Flip(instance, limb, toTurns: true), $"{seed} to FK");

            Scatter(instance, limb, seed);
            var turned = Shown.Of(instance);
            var toGoal = instance.MatchGoal(limb.Index);
            Assert.True(toGoal is { Holds: true, Notes: [] }, $"{seed} back: {toGoal}");
            AssertSame(turned, Flip(instance, limb, toTurns: false), $"{seed} back: {toGoal}");
        }
    }

    [Theory]
    [InlineData("tail_0")]
    [InlineData("spine_0")]
    public void Whatever_the_pose_the_answer_is_how_far_the_joints_jump_and_where(string chain)
    {
        for (var seed = 0; seed < 15; seed++)
        {
            var (instance, limb) = Posed(seed, chain);
            var choices = new RandomChoices(~seed);
            foreach (var control in limb.Turns)
            {
                instance.SetTurn(control, choices.Turn(choices.Between(0f, 0.3f)));
                instance.SetMove(control, choices.Chance(0.8) ? Vector3.Zero : choices.Vector(0.05f));
            }

            var turned = Flip(instance, limb, toTurns: true);
            var match = instance.MatchGoal(limb.Index);
            var solved = Flip(instance, limb, toTurns: false);
            foreach (var joint in match.Joints)
            {
                var (metres, degrees) = turned.Against(solved, joint.Joint);
                Assert.True(Math.Abs(metres - joint.Metres) < 1e-4 && Math.Abs(degrees - joint.Degrees) < 0.1, $"{seed} '{joint.Name}': {metres} m, {degrees}°, {match}");
            }

            var furthest = match.Joints.MaxBy(joint => joint.Metres)!;
            Assert.True(match.Holds || (match.Notes[^1] is { Kind: MatchNoteKind.OtherShape } last && last.Text.Contains($"'{furthest.Name}' comes out", StringComparison.Ordinal)), $"{seed}: {match}");
        }
    }

    [Theory]
    [InlineData("root", MatchNoteKind.RootMoved, "'tail_0' stands 50 mm from where")]
    [InlineData("length", MatchNoteKind.BoneLength, "The bone from 'tail_0' to 'tail_1' is 250 mm long, and the solver gives it 200 mm.")]
    [InlineData("far", MatchNoteKind.OutOfReach, "'tail_4' is 900 mm from the root, and the solver brings it to 800 mm.")]
    [InlineData("twist", MatchNoteKind.Twisted, "'tail_2' is twisted by 20°")]
    [InlineData("wave", MatchNoteKind.OtherShape, "From 'tail_0' to 'tail_4' the solver gives another shape: 'tail_")]
    [InlineData("plane", MatchNoteKind.PlaneFixed, "From 'tail_0' to 'tail_4' the chain's plane is 30° off, and no pole turns it.")]
    public void What_many_bones_cannot_do_is_said_with_numbers(string what, MatchNoteKind kind, string text)
    {
        var instance = RigCompiler.Compile(Rig.Build(new StraightTail(hasPole: what != "plane"))).NewInstance();
        var limb = Assert.Single(instance.Rig.Limbs);
        if (what != "far")
            instance.SetMove(limb.Goal, new(-0.1f, 0.1f, 0));
        instance.MatchTurns(limb.Index);
        switch (what)
        {
            case "root": instance.SetMove(limb.Turns[0], new(0, 0.05f, 0)); break;
            case "length": instance.SetMove(limb.Turns[1], instance.ControlMove(limb.Turns[1]) + new Vector3(0.05f, 0, 0)); break;
            case "far": instance.SetMove(limb.Turns[3], new(0.1f, 0, 0)); break;
            case "plane": instance.SetTurn(limb.Turns[0], Quaternion.CreateFromAxisAngle(Vector3.UnitX, MathF.PI / 6) * instance.ControlTurn(limb.Turns[0])); break;
            case "wave": instance.SetTurn(limb.Turns[2], Quaternion.CreateFromAxisAngle(Vector3.UnitZ, 0.4f)); break;
            case "twist":
                instance.SetTurn(limb.Turns[2], instance.ControlTurn(limb.Turns[2]) * Quaternion.CreateFromAxisAngle(Vector3.UnitX, MathF.PI / 9));
                instance.SetTurn(limb.Turns[3], Quaternion.CreateFromAxisAngle(Vector3.UnitX, -MathF.PI / 9) * instance.ControlTurn(limb.Turns[3]));
                break;
        }

        var match = instance.MatchGoal(limb.Index);
        Assert.False(match.Holds);
        Assert.True(match.Notes.Any(note => note.Kind == kind && note.Text.StartsWith(text, StringComparison.Ordinal)), match.ToString());
        // By that name a motion tells each but once.
        Assert.All(match.Notes, note => Assert.Contains(note.Text.Split('\'')[1], instance.Rig.Joints.Select(joint => joint.Name)));
    }

    [Fact]
    public void What_its_controls_had_to_do_is_noted_once_and_as_they_end()
    {
        var instance = RigCompiler.Compile(Rig.Build(new StraightTail(tip => tip.Lock(Channels.MoveY), pole => pole.LimitMove(Axis.Y, -0.01f, 0.01f)))).NewInstance();
        var limb = Assert.Single(instance.Rig.Limbs);
        instance.SetMove(limb.Goal, new(-0.1f, 0, 0));
        instance.MatchTurns(limb.Index);
        instance.SetTurn(limb.Turns[0], Quaternion.CreateFromAxisAngle(Vector3.UnitZ, 0.2f) * instance.ControlTurn(limb.Turns[0]));
        var match = instance.MatchGoal(limb.Index);
        var told = match.Notes.Where(note => note.Kind is MatchNoteKind.Locked or MatchNoteKind.BeyondLimit).Select(note => note.Text);
        Assert.Equal(["'tip' would have to move 139.07 mm along Y, which is locked.", "'pole' moves -16.28 mm along Y, and its limits are -10 mm and 10 mm."], told);
    }

    [Theory]
    [InlineData("tail_0")]
    [InlineData("spine_0")]
    public void Degenerate_poses_give_finite_channels(string chain)
    {
        var instance = RigCompiler.Compile(Rig.Build(new LongChains(4))).NewInstance();
        var limb = instance.Rig.Limbs[instance.Rig.LimbIndex(chain)];
        foreach (var scale in new[] { Vector3.One, Vector3.Zero, new(0, 1, 1), new(-1, 1, 1), Vector3.One * 1e-20f, new(1e5f, 1e-5f, 1) })
        {
            foreach (var turn in new[] { Quaternion.Identity, new(1, 0, 0, 0), new(0.6f, 0, 0, -0.8f) })
            {
                foreach (var control in instance.Rig.Controls)
                {
                    instance.SetMove(control.Index, control.Index % 3 == 0 ? new(1e6f, 0, -1e-20f) : Vector3.Zero);
                    instance.SetTurn(control.Index, turn);
                }

                instance.SetScale(instance.Rig.ControlIndex("world"), scale);
                foreach (var match in new[] { instance.MatchGoal(limb.Index), instance.MatchTurns(limb.Index) })
                    Assert.True(double.IsFinite(match.Metres + match.Degrees), $"{scale} {turn}: {match}");
                foreach (var control in instance.Rig.Controls)
                    Assert.True(float.IsFinite(Vector3.Dot(instance.ControlMove(control.Index), Vector3.One) + instance.ControlTurn(control.Index).Length()), $"{scale} {turn}: {control.Name}");
            }
        }
    }

    [Fact]
    public void A_curve_tells_the_controls_that_it_goes_through()
    {
        var rig = RigCompiler.Compile(Rig.Build(new LongChains(0)));
        var spine = rig.Limbs[rig.LimbIndex("spine_1")];
        Assert.Equal(["hips", "middle", "top"], spine.Through.Select(control => rig.Controls[control].Name));
        Assert.Equal(("top", null), (rig.Controls[spine.Goal].Name, spine.Pole));
        var tail = rig.Limbs[rig.LimbIndex("tail_1")];
        Assert.Empty(tail.Through);
        Assert.Equal(("tip", "pole"), (rig.Controls[tail.Goal].Name, rig.Controls[tail.Pole!.Value].Name));
    }

    private static (RigInstance Instance, CompiledLimb Limb) Posed(int seed, string chain)
    {
        var instance = RigCompiler.Compile(Rig.Build(new LongChains(seed))).NewInstance();
        var choices = new RandomChoices(seed ^ 77);
        foreach (var control in instance.Rig.Controls)
        {
            if (control.Name.StartsWith("turn_", StringComparison.Ordinal))
                continue;
            instance.SetMove(control.Index, choices.Vector(0.1f));
            instance.SetTurn(control.Index, control.Locked.HasFlag(Channels.Turn) ? Quaternion.Identity : choices.Turn(0.8f));
        }

        instance.SetScale(instance.Rig.ControlIndex("world"), Vector3.One * choices.Between(0.7f, 1.4f));
        foreach (var given in instance.Rig.Switches.Where(given => given.Name.EndsWith("stretch", StringComparison.Ordinal)))
            instance.SetSwitch(given.Index, choices.Chance(0.3) ? 1 : choices.Between(0f, 1f));
        return (instance, instance.Rig.Limbs[instance.Rig.LimbIndex(chain)]);
    }

    private static Shown Flip(RigInstance instance, CompiledLimb limb, bool toTurns)
    {
        instance.SetSwitch(instance.Rig.SwitchIndex($"{instance.Rig.Controls[limb.Goal].Name}.fk"), toTurns ? 1 : 0);
        return Shown.Of(instance);
    }

    /// <summary>Takes the solver's controls away from where they made the pose.</summary>
    private static void Scatter(RigInstance instance, CompiledLimb limb, int seed)
    {
        var choices = new RandomChoices(seed ^ 991);
        foreach (var control in limb.Through.Concat(new[] { limb.Goal, limb.Pole }.OfType<int>()))
        {
            instance.SetMove(control, choices.Vector(0.5f));
            if (!instance.Rig.Controls[control].Locked.HasFlag(Channels.Turn))
                instance.SetTurn(control, choices.Turn(3));
        }

        foreach (var given in instance.Rig.Switches.Where(given => given.Name.EndsWith("stretch", StringComparison.Ordinal)))
            instance.SetSwitch(given.Index, choices.Between(0f, 1f));
    }

    private static void AssertSame(Shown expected, Shown actual, string what)
    {
        var (metres, degrees) = actual.Against(expected);
        Assert.True(metres <= 1e-5 && degrees <= 0.01, $"{what}: {metres} m, {degrees}°");
    }


    /// <summary>A tail of four equal bones along X that rests bowed by so little that it counts as straight; its tip's controls are free.</summary>
    private sealed class StraightTail(Func<Control, Control>? tipAs = null, Func<Control, Control>? poleAs = null, bool hasPole = true) : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            var joints = new List<Joint> { rig.Skeleton("tail").Root("tail_0", at: new Vector3(0.3f, 1, 0)) };
            for (var i = 1; i <= 4; i++)
                joints.Add(joints[^1].Child($"tail_{i}", at: new Vector3(0.2f, 0, 0)));
            var tail = rig.Chain(joints[0], joints[^1]).Bending(-Vector3.UnitY);
            var parts = rig.Group("tail_group").PlacedAt(tail.Root);
            rig.Drive(parts).ByMatrix(rig.Control("root").PlacedAt(tail.Root));

            var ik = tail.Copy("ik").Under(parts);
            var (tip, pole) = (rig.Control("tip").PlacedAt(tail.Tip), rig.Control("pole").PlacedAt(tail.PolePoint(0.4f)));
            var solver = rig.ManyBone(ik).Reach(tipAs?.Invoke(tip) ?? tip);
            if (hasPole)
                solver.Face(poleAs?.Invoke(pole) ?? pole);
            var fk = tail.Copy("fk").Under(parts);
            Control? above = null;
            foreach (var joint in tail)
            {
                var turn = rig.Control($"turn_{joint.Name}").PlacedAt(joint);
                above = above is { } hung ? turn.Under(hung) : turn;
                rig.Drive(fk.Of(joint)).ByChannels(turn);
            }

            var amount = tip.Switch("fk");
            rig.Blend(tail).From(ik, amount.Inverse).From(fk, amount);
        }
    }
}
