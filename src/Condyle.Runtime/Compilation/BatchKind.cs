namespace Condyle.Runtime.Compilation;

/// <summary>What a batch does; within a level, batches run in this order.</summary>
internal enum BatchKind
{
    StillWorld,
    PlacedWorld,
    ChannelWorld,
    Drive,
    Blend,
    ChainBlend,
    TwoBone,
}
