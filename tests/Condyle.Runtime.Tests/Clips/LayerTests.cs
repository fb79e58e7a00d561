using System.Numerics;
using Condyle.Runtime.Tests.Baking;

namespace Condyle.Runtime.Tests.Clips;

public sealed class LayerTests
{
    private static readonly CompiledRig Rig = CargoArm.Compiled();

    [Fact]
    public void A_layer_takes_the_place_of_what_lies_below_by_its_weight()
    {
        var low = new Clip("low", 2).Move("world", 0, x: 1).TurnAbout("waist", Axis.Y, (0, 20)).Switch("hand_left.fk", 0, 0.2f);
        var high = new Clip("high", 2).Move("world", 0, x: 3, y: 4).TurnAbout("waist", Axis.Y, (0, 60)).Switch("hand_left.fk", 0, 1);
        var instance = Posed(low.Layer(high, weight: 0.25f), 0);
        Assert.Equal(new Vector3(1.5f, 1, 0), instance.ControlMove(Rig.ControlIndex("world")));
        AssertTurn(Turns.About(Axis.Y, 30), instance.ControlTurn(Rig.ControlIndex("waist")));
        AssertSame(Posed(new Clip("c", 1).Move("world", 0, x: 1.5f, y: 1).TurnAbout("waist", Axis.Y, (0, 30)).Switch("hand_left.fk", 0, 0.4f), 0), instance);
    }

    [Fact]
    public void An_additive_layer_comes_on_top_in_the_controls_own_frame()
    {
        var low = new Clip("low", 2).Move("world", 0, x: 1).Scale("world", 0, 2, 2, 2).Turn("waist", 0, 10, 40, -20).Switch("hand_left.fk", 0, 0.2f);
        var high = new Clip("high", 2).Move("world", 0, y: 4).Scale("world", 0, 1.5f, 1, 1).TurnAbout("waist", Axis.X, (0, 60)).Switch("hand_left.fk", 0, 0.5f);
        var instance = Posed(low.Layer(high, weight: 0.5f, blend: LayerBlend.Additive), 0);
        Assert.Equal(new Vector3(1, 2, 0), instance.ControlMove(Rig.ControlIndex("world")));
        Assert.Equal(new Vector3(2.5f, 2, 2), instance.ControlScale(Rig.ControlIndex("world")));
        AssertTurn(Turns.Of(10, 40, -20, TurnOrder.XYZ) * Turns.About(Axis.X, 30), instance.ControlTurn(Rig.ControlIndex("waist")));
        AssertSame(Posed(new Clip("c", 1).Move("world", 0, x: 1, y: 2).Scale("world", 0, 2.5f, 2, 2)
            .Turn("waist", 0, Turns.Of(10, 40, -20, TurnOrder.XYZ) * Turns.About(Axis.X, 30)).Switch("hand_left.fk", 0, 0.45f), 0), instance);
    }

    [Fact]
    public void As_many_layers_as_a_clip_can_have_may_lie_over_each_other_where_the_stack_is_small()
    {
        var moved = default(Vector3);
        var thread = new Thread(() =>
        {
            var clip = new Clip("wave", 1).Move("world", 0, x: 1);
            for (var over = 0; over < 1_000; over++)
                clip = new Clip($"wave_{over}", 1).Layer(clip);
            moved = Posed(clip, 0).ControlMove(Rig.ControlIndex("world"));
        }, maxStackSize: 1 << 20);
        thread.Start();
        thread.Join();
        Assert.Equal(new Vector3(1, 0, 0), moved);
    }

    [Fact]
    public void A_layer_that_is_refused_is_not_there()
    {
        var (clip, full) = (new Clip("wave", 1).Move("world", 0, x: 1), new Clip("full", 1));
        for (var over = 0; over < 1_000; over++)
            full.Layer(clip);
        Assert.Throws<BadInputException>(() => full.Layer(clip));
        Assert.Equal(1_000, full.Layers.Count);
        Assert.Equal(new Vector3(1, 0, 0), Posed(full, 0).ControlMove(Rig.ControlIndex("world")));
    }

    [Fact]
    public void Layers_that_are_laid_from_the_top_down_are_counted_where_the_stack_is_small()
    {
        Exception? refused = null;
        var thread = new Thread(() =>
        {
            var clips = Enumerable.Range(0, 20_000).Select(number => new Clip($"wave_{number}", 1)).ToList();
            for (var over = clips.Count - 1; over > 0; over--)
                clips[over].Layer(clips[over - 1]);
            refused = Record.Exception(() => new ClipPlayer(Rig, clips[^1]));
        }, maxStackSize: 1 << 20);
        thread.Start();
        thread.Join();
        Assert.Contains("has more than 1000 layers", Assert.IsType<BadInputException>(refused).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void More_layers_than_a_clip_can_have_are_told_however_few_clips_they_are()
    {
        var clip = new Clip("wave", 1).Move("world", 0, x: 1);
        for (var doubled = 0; doubled < 7; doubled++)
            clip = new Clip($"wave_{doubled}", 1).Layer(clip).Layer(clip);
        Assert.Equal(new Vector3(1, 0, 0), Posed(clip, 0).ControlMove(Rig.ControlIndex("world")));
        clip = new Clip("more", 1).Layer(clip).Layer(clip);
        Assert.Equal("clip 'most': has more than 1000 layers, those of its layers counted. Lay each clip over it once, or bake what repeats into a clip of its own.",
            Assert.Throws<BadInputException>(() => new Clip("most", 1).Layer(clip).Layer(clip)).Message);
        var (low, high) = (new Clip("low", 1).Move("world", 0), new Clip("high", 1));
        high.Layer(low).Layer(low);
        low.Layer(clip);
        Assert.Contains("clip 'high': has more than 1000 layers", Assert.Throws<BadInputException>(() => new ClipPlayer(Rig, high)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_layer_for_a_control_takes_what_is_under_it_and_nothing_else()
    {
        var high = new Clip("high", 2).Move("world", 0, x: 3).TurnAbout("waist", Axis.Y, (0, 60)).TurnAbout("turn_elbow_left", Axis.X, (0, 50)).Move("hand_left", 0, y: 1).Switch("hand_left.fk", 0, 1);
        var instance = Posed(new Clip("all", 2).Layer(high, under: "arm_root"), 0);
        AssertTurn(Turns.About(Axis.X, 50), instance.ControlTurn(Rig.ControlIndex("turn_elbow_left")));
        foreach (var control in new[] { "world", "hand_left", "waist" })
        {
            Assert.Equal(Vector3.Zero, instance.ControlMove(Rig.ControlIndex(control)));
            AssertTurn(Quaternion.Identity, instance.ControlTurn(Rig.ControlIndex(control)));
        }

        var hand = Posed(new Clip("all", 2).Layer(high, under: "hand_left"), 0);
        Assert.Equal(Vector3.UnitY, hand.ControlMove(Rig.ControlIndex("hand_left")));
        AssertTurn(Quaternion.Identity, hand.ControlTurn(Rig.ControlIndex("turn_elbow_left")));
    }

    [Fact]
    public void A_layers_weight_goes_between_its_keys_and_is_nothing_before_it_starts()
    {
        var high = new Clip("high", 2).MoveAlong("world", Axis.X, (0, 1), (2, 3));
        var clip = new Clip("all", 4).Layer(new ClipLayer(high) { StartsAt = 1 }.Weight((0, 0), (1, 1)));
        Assert.Equal(0, Posed(clip, 0.9f).ControlMove(0).X);
        Assert.Equal(0.5f * 1.5f, Posed(clip, 1.5f).ControlMove(0).X, 1e-5);
        Assert.Equal(3, Posed(clip, 4).ControlMove(0).X, 1e-5);
    }

    [Fact]
    public void Layers_of_layers_play_as_the_clip_that_they_make()
    {
        var inner = new Clip("inner", 2).Move("world", 0, x: 1).Layer(new Clip("top", 1).Move("world", 0, x: 3), weight: 0.5f);
        Assert.Equal(1, Posed(new Clip("all", 2).Layer(inner, weight: 0.5f), 0).ControlMove(0).X, 1e-5);
    }

    [Fact]
    public void A_clip_of_layers_bakes_as_any_other()
    {
        var clip = new Clip("all", 2).Layer(CargoArm.Lift()).Layer(new Clip("nod", 2).TurnAbout("waist", Axis.Z, (0, 0), (1, 25), (2, 0)).Splined("waist"), under: "waist", weight: 0.7f, blend: LayerBlend.Additive);
        var report = Bake.Run(Rig, clip).Report;
        Assert.True(report.Holds, $"{report.OnFrames}");
    }

    [Fact]
    public void Posing_by_layers_allocates_nothing()
    {
        var (instance, player) = (Rig.NewInstance(), new ClipPlayer(Rig, new Clip("all", 2).Layer(CargoArm.Lift()).Layer(CargoArm.Lift(), weight: 0.5f, blend: LayerBlend.Additive)));
        player.Pose(instance, 0.5f);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var frame = 0; frame < 100; frame++)
            player.Pose(instance, frame / 50f);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    public static TheoryData<string, Func<Clip>> Mistakes => new()
    {
        { "clip 'c': 'l' has a layer of weight 2. A weight goes from 0 to 1.", () => new Clip("c", 2).Layer(Low("l"), weight: 2) },
        { "clip 'l': at 1 s is a layer of weight -1. A weight goes from 0 to 1.", () => new Clip("c", 2).Layer(new ClipLayer(Low("l")).Weight((1, -1))) },
        { "clip 'c': 'l' has a layer under 'wast', which is no control of the rig 'CargoArm'. Name a control of the rig.", () => new Clip("c", 2).Layer(Low("l"), under: "wast") },
        { "clip 'l': 'wirld' at 0 s is no control of the rig 'CargoArm'. The nearest: 'world', 'waist', 'arm_root'.", () => new Clip("c", 2).Layer(new Clip("l", 1).Move("wirld", 0)) },
        { "clip 'c': would lie over itself, as a layer of 'l'. Begin a new clip and lay both over it.", Over },
    };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_with_its_clip(string message, Func<Clip> clip) =>
        Assert.Equal(message, Assert.Throws<BadInputException>(() => new ClipPlayer(Rig, clip())).Message);

    [Theory]
    [InlineData(float.NaN)]
    [InlineData(float.PositiveInfinity)]
    public void A_layer_begins_at_a_finite_time(float at) =>
        Assert.Contains("begins at no finite time", Assert.Throws<BadInputException>(() => new ClipLayer(Low("l")) { StartsAt = at }).Message, StringComparison.Ordinal);

    private static Clip Low(string name) => new Clip(name, 1).Move("world", 0);

    private static Clip Over()
    {
        var clip = new Clip("c", 1);
        return clip.Layer(Low("l").Layer(clip));
    }

    private static RigInstance Posed(Clip clip, float time)
    {
        var instance = Rig.NewInstance();
        new ClipPlayer(Rig, clip).Pose(instance, time);
        instance.Evaluate();
        return instance;
    }

    private static void AssertSame(RigInstance expected, RigInstance actual)
    {
        foreach (var joint in Rig.Joints)
        {
            var (a, b) = (expected.JointWorld(joint.Index), actual.JointWorld(joint.Index));
            Assert.True(Vector3.Distance(a.Translation, b.Translation) < 1e-5f, joint.Name);
            Assert.True(Vector3.Distance(Vector3.TransformNormal(Vector3.UnitX, a), Vector3.TransformNormal(Vector3.UnitX, b)) < 1e-5f, joint.Name);
        }
    }

    private static void AssertTurn(Quaternion expected, Quaternion actual) =>
        Assert.True(MathF.Abs(Quaternion.Dot(expected, actual)) > 1 - 1e-6f, $"{actual} is not {expected}");
}
