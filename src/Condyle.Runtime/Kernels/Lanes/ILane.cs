namespace Condyle.Runtime.Kernels;

/// <summary>
/// A number for each of several rigs, side by side in one register: what the kernels compute with. One source of a kernel so runs for one rig and for many.
/// All operations are those of IEEE 754, a fused multiplication and addition rounds once; so a rig comes out the same, bit for bit, beside others and alone.
/// </summary>
/// <remarks>A mask is a number of which all bits are set where something holds, and none where it doesn't.</remarks>
internal interface ILane<TLane>
    where TLane : struct, ILane<TLane>
{
    /// <summary>How many rigs.</summary>
    static abstract int Width { get; }

    /// <summary>The same number for all rigs.</summary>
    static abstract TLane All(float value);

    static abstract TLane Load(ref float first);

    static abstract void Store(TLane value, ref float first);

    static abstract TLane operator +(TLane a, TLane b);

    static abstract TLane operator -(TLane a, TLane b);

    static abstract TLane operator *(TLane a, TLane b);

    static abstract TLane operator /(TLane a, TLane b);

    static abstract TLane operator -(TLane a);

    /// <summary>a · b + c, rounded once.</summary>
    static abstract TLane MultiplyAdd(TLane a, TLane b, TLane c);

    static abstract TLane Sqrt(TLane a);

    static abstract TLane Abs(TLane a);

    static abstract TLane Min(TLane a, TLane b);

    static abstract TLane Max(TLane a, TLane b);

    /// <summary>The mask of a &lt; b.</summary>
    static abstract TLane Less(TLane a, TLane b);

    /// <summary>The mask of what holds in both masks.</summary>
    static abstract TLane Both(TLane a, TLane b);

    /// <summary>The first where the mask holds, else the second.</summary>
    static abstract TLane Choose(TLane mask, TLane a, TLane b);

    /// <summary>Whether a mask holds for every rig.</summary>
    static abstract bool Every(TLane mask);
}
