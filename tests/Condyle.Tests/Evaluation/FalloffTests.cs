using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class FalloffTests
{
    private static readonly Gen<Quaterniond> Turn = Gen.Select(Any.Direction, Gen.Double[-3, 3]).Select(Quaterniond.About);

    [Fact]
    public void Rest_holds() => Gen.Select(TailSetting.Any, Any.Rotation).Sample((setting, frame) =>
        Tail(setting, frame, falloff => falloff.Sharing(0.2f, 1, 3).WithMove()).AssertRestHolds(1e-6));

    [Fact]
    public void The_tip_turns_as_the_control_to_the_total_of_the_shares_about_any_axis() => Gen.Select(TailSetting.Any, Any.Rotation, Turn, Gen.Float[-1, 1], Gen.Float[0.1f, 1], Gen.Float[-2, 2]).Sample((setting, frame, turn, first, last, total) =>
    {
        if (first + last < 0.05f)
            return;
        var rig = Tail(setting with { Scale = Vector3d.One }, frame, falloff => falloff.Sharing(first, last, total));
        var pose = rig.Evaluate(new Pose().Set(rig["curl"].Id, rig.Moved("curl", Vector3d.Zero, turn)));
        Near.Equal(Slerp.Between(Quaterniond.Identity, turn, total), TurnOf(rig, pose, setting.Names[^1]), 1e-5);
    });

    [Fact]
    public void Shares_go_evenly_from_the_first_joint_to_the_last() => Gen.Select(Gen.Int[2, 8], Gen.Double[-1, 1], Gen.Float[0, 1], Gen.Float[0.1f, 1]).Sample((bones, angle, first, last) =>
    {
        var setting = TailSetting.Bowed(bones, 0.1);
        var rig = Tail(setting, Quaterniond.Identity, falloff => falloff.Sharing(first, last));
        var pose = rig.Evaluate(new Pose().Set(rig["curl"].Id, rig.Moved("curl", Vector3d.Zero, Quaterniond.About(Vector3d.UnitX, angle))));
        var weights = Enumerable.Range(0, bones + 1).Select(i => first + ((last - first) * i / (double)bones)).ToList();
        for (var i = 0; i <= bones; i++)
            Near.Equal(Quaterniond.About(Vector3d.UnitX, angle * weights.Take(i + 1).Sum() / weights.Sum()), TurnOf(rig, pose, setting.Names[i]), 1e-6);
    });

    [Fact]
    public void A_mirrored_skeleton_turns_the_same_way_in_the_world() => Gen.Select(TailSetting.Any, Turn, Gen.Bool, Gen.Bool, Gen.Bool).Sample((setting, turn, x, y, z) =>
    {
        var rig = Tail(setting with { Scale = new(x ? -1 : 1, y ? -1 : 1, z ? -1 : 1) }, Quaterniond.Identity, falloff => falloff);
        var pose = rig.Evaluate(new Pose().Set(rig["curl"].Id, rig.Moved("curl", Vector3d.Zero, turn)));
        Near.Equal(turn, TurnOf(rig, pose, setting.Names[^1]), 1e-5);
    });

    [Fact]
    public void It_comes_on_top_of_what_drives_the_joints_and_several_add_up() => Gen.Select(TailSetting.Any, Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-0.5, 0.5]).Sample((setting, curl, more, wag) =>
    {
        var rig = new TestRig(draft =>
        {
            var tail = (setting with { Scale = Vector3d.One }).Declare(draft);
            draft.Falloff(tail).From(draft.Control("curl").PlacedAt(tail.Root));
            draft.Falloff(tail).From(draft.Control("more").PlacedAt(tail.Root)).Sharing(0, 1);
            draft.Drive(tail.Root).ByChannels(draft.Control("wag").PlacedAt(tail.Root)); // begun last, and yet below
        });
        Quaterniond About(double angle) => Quaterniond.About(setting.Facing.Rotate(Vector3d.UnitX), angle);
        var pose = new Pose();
        foreach (var (name, angle) in new[] { ("curl", curl), ("more", more), ("wag", wag) })
            pose.Set(rig[name].Id, rig.Moved(name, Vector3d.Zero, About(angle)));
        Near.Equal(About(curl + more + wag), TurnOf(rig, rig.Evaluate(pose), setting.Names[^1]), 1e-5);
    });

    [Fact]
    public void With_the_move_the_tip_goes_as_far_as_the_control_to_the_total_also_under_uneven_scale() => Gen.Select(TailSetting.Any, Any.Rotation, Any.Vector, Gen.Float[0.1f, 2]).Sample((setting, frame, by, total) =>
    {
        var rig = Tail(setting, frame, falloff => falloff.Sharing(1, 0.2f, total).WithMove());
        var pose = rig.Evaluate(new Pose().Set(rig["curl"].Id, rig.Moved("curl", by, Quaterniond.Identity)));
        Near.Equal(rig.Rest.WorldOf(rig[setting.Names[^1]]).Origin + (by * total), pose.WorldOf(rig[setting.Names[^1]]).Origin, 1e-5);
    });

    [Fact]
    public void Only_what_goes_beyond_rest_is_shared_and_a_copy_takes_shares_as_a_chain_does() => Gen.Select(TailSetting.Any, Turn).Sample((setting, turn) =>
    {
        var rig = new TestRig(draft =>
        {
            var tail = (setting with { Scale = Vector3d.One }).Declare(draft);
            var fin = draft.Skeleton("s").Root("fin", at: new(1, 0, 0), turned: setting.Frames[0].ToSingle());
            draft.Drive(fin).ByChannels(draft.Control("turn").PlacedAt(fin));
            draft.Falloff(tail.Copy("soft")).From(fin);
        });
        var pose = rig.Evaluate(new Pose().Set(rig["turn"].Id, rig.Moved("turn", Vector3d.Zero, turn)));
        Near.Equal(turn, TurnOf(rig, pose, "soft_" + setting.Names[^1]), 1e-5);
        rig.AssertRestHolds(1e-6);
    });

    [Fact]
    public void Shares_that_cancel_are_an_error_and_half_a_turn_has_one_finite_answer()
    {
        var setting = TailSetting.Bowed(3, 0.2);
        Assert.Contains("add up to nothing", Assert.Throws<RigGeometryException>(() => Tail(setting, Quaterniond.Identity, falloff => falloff.Sharing(1, -1)).Evaluate()).Message, StringComparison.Ordinal);

        var rig = Tail(setting, Quaterniond.Identity, falloff => falloff);
        var pose = rig.Evaluate(new Pose().Set(rig["curl"].Id, Trs.Identity with { Rotation = new(0, 1, 0, 0) }));
        Near.Equal(Quaterniond.About(Vector3d.UnitY, Math.PI / 4), TurnOf(rig, pose, setting.Names[0]), 1e-6);
    }

    [Fact]
    public void Without_a_source_the_sentence_is_unfinished() => new TestRig(draft => draft.Falloff(TailSetting.Bowed(3, 0.2).Declare(draft)).WithMove()).AssertRestHolds(1e-6);

    private static Quaterniond TurnOf(TestRig rig, ReferencePose pose, string joint) => pose.WorldOf(rig[joint]).Rotation * rig.Rest.WorldOf(rig[joint]).Rotation.Inverse;

    private static TestRig Tail(TailSetting setting, Quaterniond frame, Func<Falloff, Falloff> sharing) => new(draft =>
    {
        var tail = setting.Declare(draft);
        var mark = draft.Skeleton("marks").Root("mark", at: new(1, 2, 3), turned: frame.ToSingle());
        sharing(draft.Falloff(tail).From(draft.Control("curl").PlacedAt(mark)));
    });
}
