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

    /// <summary>A frame of a bake that streams through the lanes, from memory and back: what goes through bounds it.</summary>
    public const double Streaming = 0.14;

    /// <summary>Two threads against one: they share nothing but memory.</summary>
    public const double TwoThreads = 1 / 1.8;

    /// <summary>A hundred times the nodes, for each node: more of them leave a cache.</summary>
    public const double Growth = 1.1;

    /// <summary>No joint of a character of 1.8 m further from where the double reference has it, in millionths of a metre, relative to its root.</summary>
    public const double Micrometres = 10;

    /// <summary>Nor turned further, in ten-thousandths of a degree.</summary>
    public const double TenThousandthsOfADegree = 5;
}
