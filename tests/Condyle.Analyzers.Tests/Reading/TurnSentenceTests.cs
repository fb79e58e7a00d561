using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Aims, twists, falloffs and drives of some channels as they are read.</summary>
public class TurnSentenceTests
{
    [Fact]
    public void They_are_read_as_they_run() => Oracle.Agrees(
        """
        var elbow = rig.Skeleton("s").Root("elbow");
        var twists = new List<Joint>();
        for (var i = 0; i < 3; i++)
            twists.Add((i == 0 ? elbow : twists[i - 1]).Child($"twist_{i}", JointRole.Twist, at: new Vector3(0, 0.1f, 0)));
        var wrist = twists[^1].Child("wrist", at: new Vector3(0, 0.1f, 0));
        var (world, head, gull) = (rig.Control("world"), rig.Control("head"), rig.Control("gull"));

        rig.Twist(new JointSet(twists.ToArray())).Between(elbow, wrist);
        foreach (var twist in new[] { twists[0], twists[2] })
            rig.Twist(twist).Between(elbow, wrist)
                .Sharing(-1, twist == twists[0] ? 0.25f : 0);
        var pair = new JointSetPair(new JointSet(twists[0]), new JointSet(twists[1], twists[2]));
        rig.Twist(pair[Side.Right]).Sharing(0, 1);

        rig.Aim(rig.Group("lamp_group")).At(gull);
        foreach (var axis in new[] { Axis.X, Axis.Z })
            rig.Aim(head).At(gull).Along(axis).Up(world).Up(world, axis);
        var aims = new[] { world, head }.Select(control => rig.Aim(control)).ToList();

        var tail = rig.Chain(elbow, wrist);
        rig.Falloff(tail).From(world).Sharing(1, 0.5f).WithMove();
        rig.Falloff(tail.Copy("soft")).From(elbow).Sharing(first: 0, last: 1, total: -2);

        rig.Drive(wrist).ByChannels(world).Writing(Channels.Turn).KeepingOffset();
        rig.Drive(head).ByChannels(world).Writing(Channels.Move | Channels.ScaleX);
        """);

    [Fact]
    public void What_may_not_be_said_or_is_not_known_is_open()
    {
        var compilation = CompiledCode.Compile(("rig.cs", Oracle.Rig(
            """
            var open = Environment.MachineName.Length;
            var (hand, gull) = (rig.Control("hand"), rig.Control("gull"));
            var elbow = rig.Skeleton("s").Root("elbow");
            var twist = rig.Twist(elbow.Child("twist")).Sharing(open, 1);
            var (said, maybe) = (rig.Aim(hand).At(gull), rig.Aim(hand));
            var falloff = rig.Falloff(rig.Chain(elbow, elbow)).From(hand).Sharing(1, open, open);
            var drive = rig.Drive(hand).ByChannels(gull).Writing((Channels)open);
            rig.Twist(new JointSet(Enumerable.Repeat(elbow, open).ToArray()));
            for (var i = 0; i < open; i++)
            {
                twist.Between(elbow, hand);
                maybe.At(gull).Along(Axis.X).Up(elbow, (Axis)open);
                falloff.WithMove();
            }
            """)));
        var model = Oracle.Read(compilation, "TestRig").Paths[0].Model;

        Assert.True(model.Twists[0].Ends.IsOpen && model.Twists[0].Shares.TryKnown(out var shares) && shares!.First.IsOpen && !shares.Last.IsOpen);
        Assert.Null(model.Twists[1].Joints);
        Assert.True(!model.Aims[0].Target.IsOpen && !model.Aims[0].Up.IsOpen);
        Assert.True(model.Aims[1].Target.IsOpen && model.Aims[1].Along.IsOpen && model.Aims[1].Up.IsOpen);
        var falloff = Assert.Single(model.Falloffs);
        Assert.True(falloff.Moves.IsOpen && !falloff.Source.IsOpen && falloff.Shares.TryKnown(out var parts) && parts!.Total.IsOpen && !parts.First.IsOpen);
        Assert.True(Assert.Single(model.Drives).Writes.IsOpen);
    }

    [Theory]
    [InlineData("drive.Writing(Channels.None);")]
    [InlineData("drive.Writing(Channels.Move | Channels.TurnX);")]
    [InlineData("rig.Falloff(rig.Chain(elbow, elbow)).Sharing(float.NaN, 1);")]
    public async Task What_can_never_be_right_is_found_while_it_is_typed(string body) => Assert.StartsWith(
        "CDY9001",
        Assert.Single(await Findings.In("var elbow = rig.Skeleton(\"s\").Root(\"elbow\"); var drive = rig.Drive(rig.Control(\"a\")).ByChannels(elbow);" + body)),
        StringComparison.Ordinal);
}
