using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Reading;

public class SolverTests
{
    private const string Joints =
        """
        private static Chain Tail(RigDraft rig, string name)
        {
            var joint = rig.Skeleton(name).Root($"{name}_0");
            var root = joint;
            for (var i = 1; i < 6; i++)
                joint = joint.Child($"{name}_{i}", at: new Vector3(0, 0.01f * i * i, -0.2f));
            return rig.Chain(root, joint);
        }
        """;

    [Fact]
    public void Every_solver_and_option_is_read_as_it_runs() => Oracle.Agrees(
        """
        var world = rig.Control("world");
        var limb = Tail(rig, "limb");
        var arm = rig.Chain(limb[0], limb[2]).Copy("ik").Under(world);
        var hand = rig.Control("hand").Under(world).PlacedAt(limb[2]);
        rig.TwoBone(arm).Reach(hand).Stretching(hand.Switch("stretch").Inverse, 1.2f).Softening(0.02f).TurningPlane(rig.Angle(hand).About(Axis.Y));
        rig.TwoBone(rig.Chain(limb[2], limb[4]).Copy("plain")).Stretching(0.5f).TurningPlane(hand.Dial("elbow", -90, 90, unit: DialUnit.Degrees));

        var tail = Tail(rig, "tail");
        var many = tail.Copy("ik");
        var solver = rig.ManyBone(many).Reach(hand).Face(rig.Control("pole").PlacedAt(many.PolePoint(0.3f))).Within(0.001f, 20);
        foreach (var joint in tail.SkipLast(1))
            solver.Limiting(joint, joint == tail.Root ? 90 : 35);

        var spine = Tail(rig, "spine");
        var curve = rig.Curve(spine.Copy("curve")).Stretching(world.Switch("stretch", 1));
        foreach (var i in new[] { 0, 2, 5 })
            curve.Through(rig.Control($"spine_{i}_turn").PlacedAt(spine[i]));
        var ropes = new[] { Tail(rig, "rope").Copy("curve") }.Select(rig.Curve).ToList();
        """,
        Joints);

    [Fact]
    public void What_may_not_be_said_or_is_not_known_is_open()
    {
        var compilation = CompiledCode.Compile(("rig.cs", Oracle.Rig(
            """
            var open = Environment.MachineName.Length;
            var limb = Tail(rig, "limb");
            var hand = rig.Control("hand");
            var two = rig.TwoBone(limb.Copy("two")).Softening(open);
            var many = rig.ManyBone(limb.Copy("many")).Limiting(limb[1], open).Within(0.1f, open);
            var curve = rig.Curve(limb.Copy("curve")).Through(hand);
            for (var i = 0; i < open; i++)
            {
                two.Stretching(0.5f, 2).TurningPlane(rig.Angle(hand).About(Axis.X));
                many.Reach(hand).Limiting(limb[2], 10);
                curve.Through(hand).Stretching(1);
            }
            """,
            Joints)));
        var model = Oracle.Read(compilation, "TestRig").Paths[0].Model;

        var two = Assert.Single(model.TwoBones);
        Assert.True(two.Softness.IsOpen && two.Stretch.IsOpen && two.PlaneTurn.IsOpen);
        var many = Assert.Single(model.ManyBones);
        Assert.True(many.ConesAreOpen && many.Goal.IsOpen && many.Cones[0].Degrees.IsOpen);
        Assert.True(many.End.TryKnown(out var end) && end!.Rounds.IsOpen && !end.Metres.IsOpen);
        var curve = Assert.Single(model.Curves);
        Assert.True(curve.NodesAreOpen && curve.Stretch.IsOpen);
    }
}
