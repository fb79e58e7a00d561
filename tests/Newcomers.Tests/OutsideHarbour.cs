using Condyle.Tests.Shared;

namespace Newcomers.Tests;

/// <summary>What independent programs say of a written file.</summary>
internal static class OutsideHarbour
{
    /// <summary>Against gltf-validator: no error and no warning that the delivered file hasn't got.</summary>
    public static void AssertNoWorse(string delivered, string written)
    {
        var (before, after) = (OutsideChecks.Validate(delivered), OutsideChecks.Validate(written));
        Assert.True(after.Errors <= before.Errors && after.Warnings <= before.Warnings, string.Join(Environment.NewLine, after.Messages.Except(before.Messages)));
    }

    /// <summary>Against three.js: each joint is where the live rig has it.</summary>
    public static void AssertPlays(string delivered, string written, int frames)
    {
        var live = new LiveNewcomer(delivered);
        var times = live.Times(frames);
        var played = OutsideChecks.Play(written, "range_of_motion", times, live.Nodes);
        foreach (var (frame, time) in times.Index())
            live.AssertPlays(time, node => played[frame][live.Nodes.ToList().IndexOf(node)]);
    }
}
