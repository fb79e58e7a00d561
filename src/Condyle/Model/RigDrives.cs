namespace Condyle.Model;

internal enum DriveWay
{
    /// <summary>Writes the node's own channels.</summary>
    Channels,

    /// <summary>Replaces the node's placement.</summary>
    Matrix,
}

/// <summary>How a drive was finished: which way, by which source; not certain when it stands in code that may not run.</summary>
internal sealed record DriveSource(int Event, PlaceId Place, DriveWay Way, RigNode? Source, bool IsCertain);

/// <summary>The call that made a drive keep its rest offset.</summary>
internal sealed record OffsetKept(int Event, PlaceId Place);

/// <summary>Makes a node follow a source. It has no source yet when the sentence is unfinished.</summary>
internal sealed class RigDrive(int id, RigEvent said, RigNode? target) : RigElement(id, said)
{
    public RigNode? Target { get; } = target;

    public List<DriveSource> Sources { get; } = [];

    public Fact<bool> KeepsOffset { get; set; } = false;

    /// <summary>Where it was said to keep its offset; none: it wasn't.</summary>
    public OffsetKept? Kept { get; set; }

    public Fact<bool> WritesScale { get; set; } = false;

    /// <summary>Where it was said to write scale; none: it wasn't.</summary>
    public (int Event, PlaceId Place)? Scaled { get; set; }

    /// <summary>The channels that it writes alone; none: it has them all.</summary>
    public Fact<Channels?> Writes { get; set; } = (Channels?)null;

    public override string Title => $"the drive of {Target?.Title ?? "a node"}";

    public override void Forget()
    {
        KeepsOffset = Fact<bool>.Open;
        WritesScale = Fact<bool>.Open;
        Writes = Fact<Channels?>.Open;
    }
}

/// <summary>A source of a blend: a copy for a chain, a node for a lone node.</summary>
internal sealed record BlendSource(int Event, PlaceId Place, RigCopy? Copy, RigNode? Node, Fact<WeightPolynomial> Weight)
{
    public string Title => Copy?.Title ?? Node?.Title ?? "a source";

    /// <summary>The word that tells the source from the others: a copy's tag.</summary>
    public Text Tag => Copy?.Tag ?? Text.Open;
}

/// <summary>Drives a chain or a lone node by channels from several weighted sources.</summary>
internal sealed class RigBlend(int id, RigEvent said, RigChain? chain, RigNode? node) : RigElement(id, said)
{
    public RigChain? Chain { get; } = chain;

    public RigNode? Node { get; } = node;

    public List<BlendSource> Sources { get; } = [];

    /// <summary>Whether there may be other sources than those, or not all of them.</summary>
    public bool SourcesAreOpen { get; set; }

    public override string Title => $"the blend of {Chain?.Title ?? Node?.Title ?? "a node"}";

    public override void Forget() => SourcesAreOpen = true;
}
