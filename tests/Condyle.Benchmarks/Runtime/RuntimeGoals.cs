namespace Condyle.Benchmarks.Runtime;

/// <summary>What the runtime owes to a game that could do without it. Each is a largest ratio to the same rig written by hand.</summary>
internal static class RuntimeGoals
{
    /// <summary>One rig in a frame: a tuned version of what is written by hand needs 0.46 of it.</summary>
    public const double OneRig = 0.5;

    /// <summary>Eight rigs side by side in registers of 256 bits.</summary>
    public const double EightLanes = 0.11;

    /// <summary>Sixteen in registers of 512 bits.</summary>
    public const double SixteenLanes = 0.06;
}
