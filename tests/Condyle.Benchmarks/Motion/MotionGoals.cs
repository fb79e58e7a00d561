namespace Condyle.Benchmarks.Motion;

/// <summary>What a bake may cost.</summary>
internal static class MotionGoals
{
    /// <summary>A bake against evaluating its frames alone: what is sampled and written is as much again.</summary>
    public const double Bake = 2;

    /// <summary>What a frame more takes in memory, against what it takes in the file.</summary>
    public const double Memory = 1.02;

    /// <summary>What a clip takes in the file, against the numbers of its tracks and one list of times.</summary>
    public const double Bytes = 1.02;
}
