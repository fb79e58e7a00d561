using System.Numerics;
using Condyle.Runtime.Tests.Baking;
using Condyle.Runtime.Tests.Evaluation;

namespace Condyle.Runtime.Tests.Clips;

public sealed class RangeOfMotionTests
{
    private static readonly CompiledRig Rig = CargoArm.Compiled();
    private static readonly Clip Clip = RangeOfMotion.Of(Rig);

    [Fact]
    public void It_names_every_unlocked_channel_and_every_switch_once_each_way()
    {
        var names = Clip.Markers.Select(marker => marker.Name).ToList();
        var expected = Rig.Controls.SelectMany(control => Enum.GetValues<Channels>()
                .Where(channel => BitOperations.IsPow2((int)channel) && !control.Locked.HasFlag(channel))
                .Select(channel => $"{control.Name} {channel.ToString()[..^1].ToLowerInvariant()} {channel.ToString()[^1]}"))
            .Concat(["hand_left.fk over", "hand_left.fk back"]);
        Assert.Equal(expected.Order(StringComparer.Ordinal), names.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Controls_that_need_the_switch_come_after_it_has_gone_over()
    {
        var names = Clip.Markers.Select(marker => marker.Name).ToList();
        Assert.True(names.IndexOf("hand_left move X") < names.IndexOf("hand_left.fk over"));
        Assert.True(names.IndexOf("turn_elbow_left turn X") > names.IndexOf("hand_left.fk over"));
        Assert.Equal("hand_left.fk back", names[^1]);
    }

    [Fact]
    public void A_limited_channel_goes_through_its_limits_and_another_through_the_defaults()
    {
        var turned = Extremes(Clip, "waist turn Y");
        Assert.Equal((-45, 60), turned);
        Assert.Equal((-RangeOfMotion.DefaultTurn, RangeOfMotion.DefaultTurn), Extremes(Clip, "waist turn X"));
        var moved = Clip.Moves["waist"];
        var from = Clip.Markers.Single(marker => marker.Name == "waist move Y").At;
        Assert.Equal(-0.3f, moved.At(from + 0.2f).Y, 1e-5);
        Assert.Equal(0, moved.At(from + 0.6f).Y, 1e-5);
        Assert.Equal(-RangeOfMotion.DefaultMove, moved.At(Clip.Markers.Single(marker => marker.Name == "waist move X").At + 0.2f).X, 1e-5);
    }

    /// <summary>A drum that a dial turns twelve times, by a third of a turn for each unit, and a control that turns ten times: as baked, each goes its way round and no other.</summary>
    [Theory]
    [InlineData("winch.crank", "drum", -720, 3600)]
    [InlineData("winch.reel", "reel", 0, 1440)]
    [InlineData("slew turn Y", "mast", -1800, 1800)]
    public void What_turns_several_times_is_baked_with_all_its_turns(string step, string joint, float least, float greatest)
    {
        var rig = DefinedRig.Compile(rig =>
        {
            var frame = rig.Skeleton("winch").Root("frame");
            var winch = rig.Control("winch");
            rig.Response(winch.Dial("crank", from: -720, to: 3600, unit: DialUnit.Degrees)).Key(0, 0).Key(360, 360).Continued().OntoTurn(frame.Child("drum", at: new(0, 1, 0)), Axis.X);
            rig.Response(winch.Dial("reel", 0, 12)).Key(0, 0).Key(12, 1440).OntoTurn(frame.Child("reel", at: new(0, 2, 0)), Axis.Z);
            var mast = frame.Child("mast");
            rig.Drive(mast).ByChannels(rig.Control("slew").PlacedAt(mast).Lock(Channels.Move | Channels.Scale | Channels.TurnX | Channels.TurnZ).LimitTurn(Axis.Y, -1800, 1800));
        });
        var clip = RangeOfMotion.Of(rig);
        var (from, to) = (clip.Markers.Single(marker => marker.Name == step).At, clip.Markers.SkipWhile(marker => marker.Name != step).Skip(1).Select(marker => (float?)marker.At).FirstOrDefault() ?? clip.Seconds);
        foreach (var rate in new[] { 30, 12 })
        {
            var turns = Bake.Run(rig, clip, new BakeSettings { FramesPerSecond = rate, From = from, To = to }).Tracks.Single(track => track.Joint == rig.JointIndex(joint)).Rotations!;
            var (way, reached) = (0.0, new List<double> { 0 });
            foreach (var (before, now) in turns.Zip(turns.Skip(1)))
            {
                var turn = now * Quaternion.Conjugate(before);
                var part = 2 * Math.Atan2(turn.X + turn.Y + turn.Z, turn.W) * 180 / Math.PI;
                way += Math.IEEERemainder(part, 360);
                reached.Add(way);
            }

            Assert.Equal(0, way, 0);
            Assert.InRange(reached.Min(), least - 1, least + (rate == 30 ? 60 : 180));
            Assert.InRange(reached.Max(), greatest - (rate == 30 ? 60 : 180), greatest + 1);
        }
    }

    [Fact]
    public void Everything_is_at_rest_at_its_start_and_its_end()
    {
        var player = new ClipPlayer(Rig, Clip);
        var (played, rest) = (Rig.NewInstance(), Rig.NewInstance());
        foreach (var time in new[] { 0, Clip.Seconds })
        {
            player.Pose(played, time);
            played.Evaluate();
            foreach (var joint in Rig.Joints)
                Assert.True(Vector3.Distance(played.JointWorld(joint.Index).Translation, rest.JointWorld(joint.Index).Translation) < 1e-5f, joint.Name);
        }
    }

    [Fact]
    public void A_range_of_more_than_half_a_turn_goes_the_long_way_and_an_open_end_shows_the_default()
    {
        var clip = RangeOfMotion.Of(RigCompiler.Compile(Condyle.Rig.Build(new Crane())));
        var slew = clip.Turned["slew"];
        Assert.Equal(150, Angle(slew.At(0.6f)), 1e-2);
        Assert.Equal(45, Angle(slew.At(0.6f - (0.4f * 105 / 300))), 1e-1);
        Assert.Equal(RangeOfMotion.DefaultTurn, Angle(clip.Turned["boom"].At(0.8f + 0.6f)), 1e-3);
    }

    [Fact]
    public void It_is_the_same_each_time()
    {
        var again = RangeOfMotion.Of(CargoArm.Compiled());
        Assert.Equal(Clip.Markers, again.Markers);
        Assert.All(Clip.Turned, turned => Assert.Equal(turned.Value.Values, again.Turned[turned.Key].Values));
    }

    [Fact]
    public void A_rig_without_anything_to_move_says_so()
    {
        var problem = Assert.Throws<BadInputException>(() => RangeOfMotion.Of(RigCompiler.Compile(Condyle.Rig.Build(new Bollard()))));
        Assert.Equal("rig 'Bollard': no control has an unlocked channel and there is no switch, dial or choice, so there is no range of motion. Unlock a control's channels.", problem.Message);
    }

    private static (float Least, float Greatest) Extremes(Clip clip, string marker)
    {
        var from = clip.Markers.Single(candidate => candidate.Name == marker).At;
        var angles = Enumerable.Range(0, 9).Select(step => clip.Turned[marker.Split(' ')[0]].At(from + (0.1f * step)))
            .Select(q => 2 * MathF.Atan2(Vector3.Dot(new Vector3(q.X, q.Y, q.Z), Vector3.One), q.W) * 180 / MathF.PI).ToList();
        return (MathF.Round(angles.Min(), 2), MathF.Round(angles.Max(), 2));
    }

    private static float Angle(Quaternion q) => 2 * MathF.Atan2(q.Y + q.X, q.W) * 180 / MathF.PI;

    private sealed class Crane : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            var tower = rig.Skeleton("crane").Root("tower");
            var slew = rig.Control("slew").Lock(Channels.Move | Channels.TurnX | Channels.TurnZ).LimitTurn(Axis.Y, -150, 150);
            rig.Control("boom").Under(slew).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, float.NegativeInfinity, float.PositiveInfinity);
            rig.Drive(tower).ByChannels(slew);
        }
    }

    private sealed class Bollard : IRigDefinition
    {
        public void Define(RigDraft rig) => rig.Skeleton("bollard").Root("post");
    }
}
