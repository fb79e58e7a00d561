using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class MeasuredAngleTests
{
    /// <summary>By its definition: a turn about the axis after or before a turn about an axis across it is measured, and the other isn't.</summary>
    [Fact]
    public void A_turn_about_the_axis_is_measured_whatever_turn_across_it_comes_before_or_after() =>
        Gen.Select(Gen.Enum<Axis>(), Gen.Double[-179, 179], Any.Direction, Gen.Double[-3, 3], Gen.Bool).Sample((axis, degrees, direction, angle, isOpposite) =>
        {
            var across = direction.Across(Vector3d.Unit(axis));
            if (across.Length < 0.1)
                return;
            var swing = Quaterniond.About(across.Direction!.Value, angle);
            var twist = Quaterniond.About(Vector3d.Unit(axis), degrees * Math.PI / 180);
            foreach (var turn in new[] { swing * twist, twist * swing })
                Near.Equal(degrees, MeasuredAngle.About(axis, isOpposite ? -turn : turn), 1e-9);
        });

    [Fact]
    public void At_a_half_turn_it_is_180_degrees_whichever_quaternion_says_it()
    {
        Near.Equal(180, MeasuredAngle.About(Axis.X, new(1, 0, 0, 0)));
        Near.Equal(180, MeasuredAngle.About(Axis.X, new(-1, 0, 0, 0)));
        Near.Equal(180, MeasuredAngle.About(Axis.X, new(0, 1, 0, 0)));
        Near.Equal(0, MeasuredAngle.About(Axis.X, new(0, 0, 0, -1)));
    }

    [Fact]
    public void It_is_counted_from_the_node_s_rest_in_the_node_s_own_frame() =>
        Gen.Select(Any.Channels, Any.Channels, Gen.Double[-170, 170], Gen.Enum<Axis>()).Sample((root, child, degrees, axis) =>
        {
            var rig = new TestRig(draft =>
            {
                var joint = draft.Skeleton("s")
                    .Root("a", at: root.Translation.ToSingle(), turned: root.Rotation.ToSingle())
                    .Child("b", at: child.Translation.ToSingle(), turned: child.Rotation.ToSingle());
                draft.Drive(joint).ByChannels(draft.Control("turn").PlacedAt(joint));
                draft.Response(draft.Angle(joint).About(axis)).Key(-180, -180).Key(180, 180).OntoMorph("body", "bulge");
            });
            Near.Equal(0, rig.Evaluate().MorphWeight("body", "bulge"), 1e-4);
            var turned = Trs.Identity with { Rotation = Quaterniond.About(Vector3d.Unit(axis), degrees * Math.PI / 180) };
            Near.Equal(degrees, rig.Evaluate(new Pose().Set(rig["turn"].Id, turned)).MorphWeight("body", "bulge"), 1e-4);
        });

    [Fact]
    public void Without_an_axis_the_sentence_is_unfinished()
    {
        var rig = new TestRig(draft => draft.Response(draft.Angle(draft.Control("hand"))).Key(0, 0).OntoMorph("body", "bulge"));
        Assert.Contains(".About", Assert.Throws<RigGeometryException>(() => rig.Evaluate()).Message, StringComparison.Ordinal);
    }
}
