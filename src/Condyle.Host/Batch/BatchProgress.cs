using System.Diagnostics;
using Condyle.Host.Reporting;
using Spectre.Console;

namespace Condyle.Host.Batch;

/// <summary>Shows how far a batch is: a bar on a terminal, a line for each finished file elsewhere, nothing where the result is JSON.</summary>
internal sealed class BatchProgress(Surroundings surroundings, bool isSilent)
{
    private readonly Lock writing = new();

    /// <summary>Does the work, which tells of each file that is finished.</summary>
    public void Run(int count, Action<Action<BatchResult>> work)
    {
        if (isSilent || count == 0)
            work(_ => { });
        else if (surroundings.IsTerminal)
            WithBar(count, work);
        else
            WithLines(count, work);
    }

    private void WithLines(int count, Action<Action<BatchResult>> work)
    {
        var (done, baked, start) = (0, 0, Stopwatch.GetTimestamp());
        work(result =>
        {
            lock (writing)
            {
                done++;
                baked += result.State == BatchState.UpToDate ? 0 : 1;
                // What was up to date took no time, and says nothing about the rest.
                var left = baked == 0 || done == count ? "" : $", about {Say.Seconds(Math.Ceiling(Stopwatch.GetElapsedTime(start).TotalSeconds / baked * (count - done)))} left";
                surroundings.Tell($"[{done}/{count}] {Path.GetFileName(result.Input)}: {What(result)}{left}");
            }
        });
    }

    private void WithBar(int count, Action<Action<BatchResult>> work) => Report.Console(surroundings).Progress()
        .AutoClear(true)
        .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
        .Start(context =>
        {
            var task = context.AddTask("baking", maxValue: count);
            work(result =>
            {
                lock (writing)
                {
                    task.Increment(1);
                    task.Description = Report.OnBar(Path.GetFileName(result.Input));
                }
            });
        });

    private static string What(BatchResult result) => result.State switch
    {
        BatchState.Baked => $"baked, {string.Join(", ", result.Clips.Select(clip => FormattableString.Invariant($"{clip.Clip} {clip.Frames} frames")))}",
        BatchState.UpToDate => "up to date",
        _ => "failed",
    };
}
