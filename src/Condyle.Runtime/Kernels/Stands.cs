namespace Condyle.Runtime.Kernels;

/// <summary>The frames that channels stand in: base · placement.</summary>
internal sealed class Stands
{
    public required int[] Bases { get; init; }

    /// <summary>None: the channels stand right on their bases, as those of exported joints do.</summary>
    public required Affines? Placements { get; init; }
}
