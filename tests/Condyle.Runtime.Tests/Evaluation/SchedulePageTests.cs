using System.Numerics;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>The page on the schedule follows a small rig through; this holds it to what the compiler does.</summary>
public class SchedulePageTests
{
    [Fact]
    public void The_page_shows_the_schedule_that_its_rig_compiles_to()
    {
        var rig = DefinedRig.Compile(Define);
        var shown = string.Join("\n", rig.Layout.Schedule.Batches.Select((batch, at) => $"{at + 1}. {Describe(batch)}"));
        Assert.Contains($"```\n{shown}\n```", Page());
    }

    [Fact]
    public void The_page_shows_the_code_of_its_rig()
    {
        var source = File.ReadAllText(Path.Combine(Root(), "tests/Condyle.Runtime.Tests/Evaluation/SchedulePageTests.cs"));
        var body = source[(source.LastIndexOf("    private static void Define", StringComparison.Ordinal))..];
        var lines = body[(body.IndexOf('{') + 2)..body.IndexOf("\n    }", StringComparison.Ordinal)].Split('\n').Select(line => line.Trim());
        Assert.Contains(string.Join("\n", lines), Page());
    }

    private static string Describe(Batch batch) => batch switch
    {
        LinearWeightBatch weights => $"LinearWeightBatch: weights {Join<LinearWeight>(weights.Items, item => item.Weight)} from switches {Join<LinearWeight>(weights.Items, item => item.Input)}",
        ChannelFrameBatch frames => $"ChannelFrameBatch: frames {Join(frames.Items.Each, item => item.Frame)} = frames {Join(frames.Items.Each, item => item.Base)} · channels {Join(frames.Items.Each, item => item.Channel)}",
        PlacedFrameBatch frames => $"PlacedFrameBatch: frames {Join(frames.Items.Each, item => item.Frame)} = frames {Join(frames.Items.Each, item => item.Base)} · placements · channels {Join(frames.Items.Each, item => item.Channel)}",
        StillFrameBatch frames => $"StillFrameBatch: frames {Join(frames.Items.Each, item => item.Frame)} = frames {Join(frames.Items.Each, item => item.Base)} · offsets",
        FollowBatch followers => $"FollowBatch: {Describe([.. followers.Items.Each.ToArray().Select(item => item.Target)])} from frames {Join(followers.Items.Each, item => item.Source)}",
        PairMeetBatch meetings => $"PairMeetBatch: {Describe([.. meetings.Items.Each.ToArray().Select(item => item.Target)])} from frames {Join(meetings.Items.Each, item => item.First.Frame)} to frames {Join(meetings.Items.Each, item => item.Second.Frame)} by weights {Join(meetings.Items.Each, item => item.Weight)}",
        _ => throw new InvalidOperationException($"The page doesn't show a {batch.GetType().Name}."),
    };

    private static string Describe(FrameTarget[] targets) =>
        $"frames {Join<FrameTarget>(targets, target => target.Frame)}, and channels {Join<FrameTarget>(targets, target => target.Channel)} standing in frames {Join<FrameTarget>(targets, target => target.Stand.Base)},";

    private static string Join<T>(ReadOnlySpan<T> items, Func<T, int> slot) => string.Join(" ", items.ToArray().Select(slot));

    private static string Page() => File.ReadAllText(Path.Combine(Root(), "src/Condyle.Runtime/Compilation/README.md"));

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Condyle.slnx")))
            folder = folder.Parent ?? throw new InvalidOperationException("The tests don't run inside the repository.");
        return folder.FullName;
    }

    private static void Define(RigDraft rig)
    {
        var elbow = rig.Skeleton("arm").Root("elbow", at: new Vector3(0, 1, 0));
        var wrist = elbow.Child("wrist", at: new Vector3(0.25f, 0, 0));
        var finger = wrist.Child("finger", at: new Vector3(0.1f, 0, 0));

        var world = rig.Control("world");
        var parts = rig.Group("parts_group");
        rig.Drive(parts).ByMatrix(world);
        rig.Drive(elbow).ByChannels(parts).KeepingOffset();

        var free = rig.Control("free").Under(world).PlacedAt(wrist);
        var held = rig.Control("held").Under(parts).PlacedAt(wrist);
        var amount = free.Switch("held");
        rig.Blend(wrist).From(free, amount.Inverse).From(held, amount);
        rig.Label("held_label", "held").Under(finger).ShownBy(amount);
    }
}
