using System.Numerics;
using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

/// <summary>What a two-bone IK does beyond reaching: it stretches, softens, turns its plane, and leaves any rest as it is.</summary>
public sealed class TwoBoneOptionTests
{
    [Fact]
    public void Stretched_bones_lengthen_alike_and_bring_the_tip_to_the_goal() =>
        Gen.Select(Any.Rotation, Any.Rotation, Any.Vector, Gen.Double[0.3, 3]).Sample((frame, facing, at, scale) =>
        {
            var rig = Limb(frame, facing, at, (solver, _, _) => solver.Stretching(1, 2));
            rig.AssertRestHolds(1e-6);
            var pull = facing.Rotate(new Vector3d(0, -0.3, 0));
            var pose = rig.Evaluate(Sized(rig, scale).Set(rig["hand"].Id, rig.Moved("hand", pull, Quaterniond.Identity)));
            Vector3d At(string node) => pose.WorldOf(rig[node]).Origin;

            Near.Equal(At("hand"), At("wrist"), 1e-5);
            var (upper, fore) = ((At("elbow") - At("shoulder")).Length, (At("wrist") - At("elbow")).Length);
            Assert.True(upper > 0.3001 * scale, "The goal is beyond reach.");
            Near.Equal(upper / 0.3, fore / 0.25, 1e-5);
        });

    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.5, 1.25)]
    [InlineData(1, 1.5)]
    public void A_stretch_ends_at_the_greatest_factor_by_its_weight(float weight, double factor)
    {
        var rig = Limb(Quaterniond.Identity, Quaterniond.Identity, Vector3d.Zero, (solver, hand, _) => solver.Stretching(hand.Switch("stretch", weight), 1.5f));
        var pose = rig.Evaluate(new Pose().Set(rig["hand"].Id, rig.Moved("hand", new(0, -100, 0), Quaterniond.Identity)));

        Near.Equal(0.55 * factor, (pose.WorldOf(rig["wrist"]).Origin - pose.WorldOf(rig["shoulder"]).Origin).Length, 1e-6);
    }

    [Fact]
    public void A_soft_reach_keeps_the_middle_joint_from_snapping()
    {
        var (hard, soft) = (Limb(Quaterniond.Identity, Quaterniond.Identity, Vector3d.Zero, (_, _, _) => { }), Limb(Quaterniond.Identity, Quaterniond.Identity, Vector3d.Zero, (solver, _, _) => solver.Softening(0.05f)));
        soft.AssertRestHolds(1e-6);

        // Over even steps of the goal, the greatest step of the elbow's angle: a hard reach ends with the infinite slope of an arc cosine.
        Assert.True(GreatestStep(hard) > 4 * GreatestStep(soft), $"{GreatestStep(hard)} {GreatestStep(soft)}");

        static double GreatestStep(TestRig rig)
        {
            var rest = rig.Rest.WorldOf(rig["wrist"]).Origin - rig.Rest.WorldOf(rig["shoulder"]).Origin;
            var angles = Enumerable.Range(0, 400).Select(step =>
            {
                var pull = rest.Direction!.Value * (step * 0.00025);
                var pose = rig.Evaluate(new Pose().Set(rig["hand"].Id, rig.Moved("hand", pull, Quaterniond.Identity)));
                var (a, b, c) = (pose.WorldOf(rig["shoulder"]).Origin, pose.WorldOf(rig["elbow"]).Origin, pose.WorldOf(rig["wrist"]).Origin);
                return Math.Atan2(Vector3d.Cross(b - a, c - b).Length, Vector3d.Dot(b - a, c - b));
            }).ToList();
            return angles.Zip(angles.Skip(1), (a, b) => Math.Abs(a - b)).Max();
        }
    }

    [Fact]
    public void Options_grow_with_the_character() =>
        Gen.Select(Any.Vector, Gen.Double[0.3, 3]).Sample((pull, scale) =>
        {
            var rig = Limb(Quaterniond.Identity, Quaterniond.Identity, Vector3d.Zero, (solver, hand, _) => solver.Softening(0.1f).Stretching(hand.Switch("stretch", 0.4f), 1.3f));
            var moved = rig.Moved("hand", pull * 0.3, Quaterniond.Identity);
            var (here, there) = (rig.Evaluate(new Pose().Set(rig["hand"].Id, moved)), rig.Evaluate(Sized(rig, scale).Set(rig["hand"].Id, moved)));
            foreach (var joint in new[] { "shoulder", "elbow", "wrist" })
                Near.Equal(here.WorldOf(rig[joint]).Origin * scale, there.WorldOf(rig[joint]).Origin, 1e-6);
        });

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(-135)]
    [InlineData(180)]
    public void A_controls_twist_turns_the_plane_by_as_many_degrees_about_the_line_whatever_its_swing(double degrees)
    {
        var rig = Limb(Quaterniond.Identity, Quaterniond.Identity, Vector3d.Zero, (solver, hand, draft) => solver.TurningPlane(draft.Angle(hand).About(Axis.Y)));
        rig.AssertRestHolds(1e-6);
        var swing = Quaterniond.About(new Vector3d(1, 0, 0.5).Direction!.Value, 0.7);
        var turn = swing * Quaterniond.About(Vector3d.UnitY, degrees * Math.PI / 180);
        var rest = rig.Rest;
        var pose = rig.Evaluate(new Pose().Set(rig["hand"].Id, Trs.Identity with { Rotation = turn }));

        var shoulder = rest.WorldOf(rig["shoulder"]).Origin;
        var line = (rest.WorldOf(rig["wrist"]).Origin - shoulder).Direction!.Value;
        var turned = Quaterniond.About(line, degrees * Math.PI / 180).Rotate(rest.WorldOf(rig["elbow"]).Origin - shoulder);
        Near.Equal(shoulder + turned, pose.WorldOf(rig["elbow"]).Origin, 1e-6);
        Near.Equal(rest.WorldOf(rig["wrist"]).Origin, pose.WorldOf(rig["wrist"]).Origin, 1e-6);
    }

    [Fact]
    public void A_dial_turns_the_plane_from_its_default()
    {
        var rig = Limb(Quaterniond.Identity, Quaterniond.Identity, Vector3d.Zero, (solver, hand, _) => solver.TurningPlane(hand.Dial("elbow", -180, 180, 30)));
        rig.AssertRestHolds(1e-6);
        var rest = rig.Rest;
        var pose = rig.Evaluate(new Pose().SetDial(rig.Model.Dials[0].Id, 75));

        var shoulder = rest.WorldOf(rig["shoulder"]).Origin;
        var turned = Quaterniond.About((rest.WorldOf(rig["wrist"]).Origin - shoulder).Direction!.Value, Math.PI / 4).Rotate(rest.WorldOf(rig["elbow"]).Origin - shoulder);
        Near.Equal(shoulder + turned, pose.WorldOf(rig["elbow"]).Origin, 1e-6);
    }

    public static TheoryData<string, Vector3, Vector3> Rests => new()
    {
        { "bent", new(0, -0.3f, 0.05f), new(0, -0.25f, -0.06f) },
        { "straight", new(0, -0.3f, 0), new(0, -0.25f, 0) },
        { "straight, aslant", new(0.1f, -0.3f, 0.07f), new(0.05f, -0.15f, 0.035f) },
        { "straight but for a bend beside its pole", new(3e-6f, -0.3f, 0), new(-2e-6f, -0.25f, 1e-6f) },
        { "straight but for a bend away from its pole", new(0, -0.3f, -2e-5f), new(0, -0.25f, 2e-5f) },
        { "folded onto its root", new(0, -0.3f, 0), new(0, 0.3f, 0) },
        { "folded, aslant", new(0.1f, -0.2f, 0.3f), new(-0.1f, 0.2f, -0.3f) },
        { "folded, with a longer thigh", new(0, -0.3f, 0), new(0, 0.2f, 0) },
        { "folded, with a longer shin", new(0, -0.3f, 0), new(0, 0.4f, 0) },
        { "almost folded", new(0, -0.3f, 0), new(0, 0.3f, 1e-5f) },
        { "with a thigh of no length", Vector3.Zero, new(0, -0.2f, 0) },
        { "with a shin of no length", new(0, -0.2f, 0), Vector3.Zero },
    };

    [Theory]
    [MemberData(nameof(Rests))]
    public void Rest_holds_to_the_last_digits(string what, Vector3 thigh, Vector3 shin)
    {
        foreach (var (pole, options) in new[] { (true, true), (false, true), (true, false), (false, false) })
        {
            var rig = new TestRig(draft =>
            {
                var hip = draft.Skeleton("leg").Root("hip", at: new(1, 2, 3), turned: Quaternion.Normalize(new(0.1f, 0.2f, 0.3f, 0.9f)));
                var back = Quaternion.Inverse(Quaternion.Normalize(new(0.1f, 0.2f, 0.3f, 0.9f)));
                var knee = hip.Child("knee", at: Vector3.Transform(thigh, back));
                var chain = draft.Chain(hip, knee.Child("ankle", at: Vector3.Transform(shin, back))).Bending(Vector3.UnitZ);
                var world = draft.Control("world");
                var copy = chain.Copy("ik").Under(world);
                var foot = draft.Control("foot").Under(world).PlacedAt(chain.Tip);
                var solver = draft.TwoBone(copy).Reach(foot);
                if (pole && thigh + shin != shin)
                    solver.Face(draft.Control("knee_pole").Under(world).PlacedAt(copy.PolePoint(1)));
                if (options)
                    solver.Softening(0.05f).Stretching(1).TurningPlane(draft.Angle(foot).About(Axis.Y));
                draft.Blend(chain).From(copy, 1f);
            });

            Assert.NotEmpty(what);
            rig.AssertRestHolds(2e-9);
        }
    }

    [Fact]
    public void Options_out_of_their_range_are_told()
    {
        Assert.Contains("0.5 times", Fault(solver => solver.Stretching(1, 0.5f)), StringComparison.Ordinal);
        Assert.Contains("-1 m", Fault(solver => solver.Softening(-1)), StringComparison.Ordinal);
        Assert.Contains("NaN", Fault(solver => solver.Softening(float.NaN)), StringComparison.Ordinal);

        static string Fault(Action<TwoBone> options) => Assert.ThrowsAny<ArgumentException>(() =>
            Limb(Quaterniond.Identity, Quaterniond.Identity, Vector3d.Zero, (solver, _, _) => options(solver)).Evaluate()).Message;
    }

    private static Pose Sized(TestRig rig, double scale) => new Pose().Set(rig["world"].Id, Trs.Identity with { Scale = Vector3d.One * scale });

    /// <summary>An arm that hangs down, bent by 20°, with random frames, turned to somewhere and moved away.</summary>
    private static TestRig Limb(Quaterniond frame, Quaterniond facing, Vector3d at, Action<TwoBone, Control, RigDraft> options) => new(draft =>
    {
        var bend = Quaterniond.About(Vector3d.UnitX, -Math.PI / 9);
        var shoulder = draft.Skeleton("arm").Root("shoulder", at: at.ToSingle(), turned: (facing * frame).ToSingle());
        var elbow = shoulder.Child("elbow", at: frame.Inverse.Rotate(new(0, -0.3, 0)).ToSingle(), turned: (frame.Inverse * frame.Inverse).ToSingle());
        var wrist = elbow.Child("wrist", at: frame.Rotate(bend.Rotate(new(0, -0.25, 0))).ToSingle());
        var chain = draft.Chain(shoulder, wrist);
        var world = draft.Control("world");
        var copy = chain.Copy("ik").Under(world);
        var hand = draft.Control("hand").Under(world).PlacedAt(chain.Tip);
        hand.Unlock(Channels.Scale);
        var solver = draft.TwoBone(copy).Reach(hand).Face(draft.Control("pole").Under(world).PlacedAt(copy.PolePoint(0.4f)));
        options(solver, hand, draft);
        draft.Blend(chain).From(copy, 1f);
    });
}
