using System.Numerics;
using Condyle.Runtime.Tests.Evaluation;

namespace Condyle.Runtime.Tests.Clips;

/// <summary>Dials and choices in clips and in the range of motion.</summary>
public sealed class SettingClipTests
{
    private static readonly CompiledRig Rig = DefinedRig.Compile(rig =>
    {
        var (world, crate, hook) = (rig.Control("world").Lock(Channels.All), rig.Control("crate"), rig.Control("hook"));
        rig.Drive(rig.Skeleton("s").Root("joint")).ByChannels(hook);
        rig.Space(hook).In("world", world).In("crate", crate);
        rig.Response(hook.Dial("lift", -1, 3, atRest: 1).AlsoOn(crate)).Key(0, 0).Key(1, 1).Continued().OntoMove(hook, Axis.Y);
    });

    [Fact]
    public void A_dial_goes_in_a_line_and_a_choice_holds_until_its_next_key()
    {
        var clip = new Clip("c", 4).Dial("hook.lift", (0, 1), (4, 3)).Choice("hook.space", 2, "crate").Choice("hook.space", 0, "world").Move("crate", 0, x: 5);
        var player = new ClipPlayer(Rig, clip);
        var instance = Rig.NewInstance();
        foreach (var (time, expected) in new[] { (0f, Vector3.Zero), (1, new(0, 0.5f, 0)), (1.99f, new(0, 0.995f, 0)), (2, new(5, 1, 0)), (9, new(5, 2, 0)) })
        {
            player.Pose(instance, time);
            instance.Evaluate();
            Assert.True(Vector3.Distance(expected, instance.JointWorld(0).Translation) < 1e-5f, $"{time}: {instance.JointWorld(0).Translation}");
        }
    }

    [Fact]
    public void A_stepped_dial_holds_each_key() =>
        Assert.Equal(1, new Clip("c", 2).Dial("d", (0, 1), (2, 3)).Stepped("d").Dials["d"].At(1.9f));

    public static TheoryData<string, Clip> Wrong => new()
    {
        { "clip 'c': 'hook.lift' at 0 s is set to 4. The dial goes from -1 to 3.", new Clip("c", 1).Dial("hook.lift", 0, 4) },
        { "clip 'c': 'hook.lift' at 0.5 s has a key that is no finite number. Give a finite number.", null! },
        { "clip 'c': 'hook.luft' at 0 s is no dial of the rig 'DefinedRig'. The nearest: 'hook.lift', 'crate.lift'.", new Clip("c", 1).Dial("hook.luft", 0, 1) },
        { "clip 'c': 'hook.lift' at 0 s is the same dial as 'crate.lift', and both have keys. Key it by one of its names.", new Clip("c", 1).Dial("hook.lift", 0, 1).Dial("crate.lift", 0, 1) },
        { "clip 'c': 'hook.space' at 0 s picks 'moon', which is none of its options. They are 'world', 'crate'.", new Clip("c", 1).Choice("hook.space", 0, "moon") },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void What_is_wrong_is_said_with_clip_name_and_time(string message, Clip? clip) => Assert.Equal(
        message,
        Assert.Throws<BadInputException>(() => new ClipPlayer(Rig, clip ?? new Clip("c", 1).Dial("hook.lift", 0.5f, float.NaN))).Message);

    [Fact]
    public void The_range_of_motion_takes_a_dial_through_its_range_and_a_choice_through_its_options()
    {
        var clip = RangeOfMotion.Of(Rig);
        var (dial, choice) = (clip.Markers.Single(marker => marker.Name == "hook.lift").At, clip.Markers.Single(marker => marker.Name == "hook.space").At);
        Assert.Equal([1, -1, 3, 1], clip.Dials["hook.lift"].Values);
        Assert.Equal(dial, clip.Dials["hook.lift"].Times[0]);
        Assert.Equal(["world", "crate", "world"], clip.Choices["hook.space"].Values.Select(option => option.Name));
        Assert.Equal(choice, clip.Choices["hook.space"].Times[0]);
        Assert.NotNull(new ClipPlayer(Rig, clip));
    }
}
