namespace Condyle.Runtime.Baking;

/// <summary>Tells how far a bake is.</summary>
internal sealed class BakeWork(string clip, IProgress<BakeProgress>? progress)
{
    /// <summary>How many times progress is reported in a bake.</summary>
    private const int Steps = 100;

    private double told = -1;

    /// <summary>Says that of a part of the work, which goes from one share of all to another, so many out of so many are done.</summary>
    public void Tick(double from, double to, int done, int of)
    {
        var all = from + ((to - from) * done / of);
        if (all < told + (1.0 / Steps) && (all < 1 || told >= 1))
            return;
        told = all;
        progress?.Report(new BakeProgress(clip, all));
    }
}
