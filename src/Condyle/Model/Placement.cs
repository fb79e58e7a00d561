namespace Condyle.Model;

/// <summary>Where a node stands at rest, in words; numbers come once the whole rig is known.</summary>
internal abstract class Placement;

/// <summary>In the rest frame of another node.</summary>
internal sealed class AtNode(RigNode target) : Placement
{
    public RigNode Target { get; } = target;
}

/// <summary>As the mirror image of another node's rest frame over the plane x = 0, its axes mirrored with it.</summary>
internal sealed class AsImage(RigNode of) : Placement
{
    public RigNode Of { get; } = of;
}

/// <summary>At a spot, with the world's axes.</summary>
internal sealed class AtSpot(RigSpot spot) : Placement
{
    public RigSpot Spot { get; } = spot;
}
