using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Compilation;

/// <summary>A node on its way into the schedule: what its channels stand in, what writes them, and where its values will lie.</summary>
internal sealed class PlannedNode(RigNode node, Trs rest)
{
    private readonly ChannelOwners<Writer> owners = new();

    public RigNode Node { get; } = node;

    /// <summary>Its channels when nothing writes them.</summary>
    public Trs Rest { get; } = rest;

    public PlannedNode? Parent { get; private set; }

    /// <summary>
    /// The node that carries it: its parent, or the source of its drive by matrix. Such a drive cancels the parent
    /// (parent · parent⁻¹ · source), so it costs nothing at run time: it is another base.
    /// </summary>
    public PlannedNode? Base { get; private set; }

    public bool IsHeldByMatrix { get; private set; }

    /// <summary>The constant frame between the base and the channels: the placement, or the offset of a drive by matrix.</summary>
    public Affine3d Fixed { get; private set; }

    /// <summary>What writes all of its channels; none: an animator does, or nobody.</summary>
    public Writer? Writer { get; private set; }

    /// <summary>What writes some of its channels, after what writes all of them; aims come last, since they look from where the node is moved to.</summary>
    public IReadOnlyList<Writer> Parts { get; private set; } = [];

    /// <summary>What comes on top of those, before the responses; none: it takes no share of a falloff.</summary>
    public FalloffWriter? Falloff { get; private set; }

    /// <summary>All that writes its channels but the responses, in the order in which it runs.</summary>
    public IReadOnlyList<Writer> Writers { get; private set; } = [];

    /// <summary>What comes on top of its channels; none: nothing responds on it.</summary>
    public ResponseWriter? Response { get; set; }

    /// <summary>Whether more than an animator moves it.</summary>
    public bool IsWritten => owners.Count > 0 || Falloff is not null || Response is not null;

    /// <summary>Whether something comes on top of what is written or set, so that there are channels before and after it.</summary>
    public bool HasOnTop => Falloff is not null || Response is not null;

    /// <summary>Whether it can stand anywhere but at a fixed frame from its base.</summary>
    public bool Moves => IsWritten || Node.Kind == NodeKind.Control;

    /// <summary>Where the frame that its channels stand in comes from.</summary>
    public Anchor Stand { get; private set; }

    /// <summary>Where its world frame comes from.</summary>
    public Anchor World { get; private set; }

    /// <summary>Whether its world frame never has scale or shear.</summary>
    public bool IsRigid { get; private set; }

    /// <summary>Whether its writer gives its world frame too, without scale on the way.</summary>
    public bool IsFramedByWriter => IsRigid && !HasOnTop && owners.Count == 1 && Writer is { GivesFrames: true };

    /// <summary>Whether somebody reads its channels by themselves.</summary>
    public bool ChannelsAreRead => Node.IsExported || IsMeasured || HasOnTop || Parts.Count > 0;

    /// <summary>Whether an angle is measured in its channels, or a falloff shares them out.</summary>
    public bool IsMeasured { get; set; }

    /// <summary>Whether its channels are written for those who ask after an evaluation, and nobody reads them before.</summary>
    public bool LeavesChannels => IsFramedByWriter && !IsMeasured;

    /// <summary>Whether somebody reads its world frame without scale.</summary>
    public bool FrameIsRead { get; set; }

    /// <summary>Whether somebody reads the axes of its world frame.</summary>
    public bool AxesAreRead { get; set; }

    /// <summary>All that writes its channels but the responses has run on this level.</summary>
    public int WritersLevel => Writers.Select(writer => writer.Level).DefaultIfEmpty(0).Max();

    /// <summary>Its world frame is there once the batches of this level have run; 0: it never changes.</summary>
    public int Level { get; private set; }

    /// <summary>The level from which on something is in its slot: a writer gives a frame even where a response comes on top and it is worked out again.</summary>
    public int WrittenFrom => Writer is { GivesFrames: true } writer ? Math.Min(Level, writer.Level) : Level;

    /// <summary>Whether somebody reads its world frame.</summary>
    public bool IsRead { get; set; }

    public int WorldSlot { get; set; } = -1;

    public int ChannelSlot { get; set; } = -1;

    /// <summary>Its channels before falloffs and responses come on top; where there are none, the same as <see cref="ChannelSlot"/>.</summary>
    public int BaseSlot { get; set; } = -1;

    /// <summary>All that must be evaluated before it, as the rig says it.</summary>
    public IEnumerable<PlannedNode> Needs => new[] { Parent, Base }.OfType<PlannedNode>().Concat(Writers.SelectMany(writer => writer.Inputs)).Concat(Response?.Inputs ?? []);

    /// <summary>The nodes whose world frames are read when its own is worked out, after folding.</summary>
    public IEnumerable<PlannedNode> Reads => (Stand.Root is { } root ? [root] : Array.Empty<PlannedNode>()).Concat(Writers.SelectMany(writer => writer.Reads)).Concat(Response?.Reads ?? []);

    /// <summary>Those of them that may have scale, or whose axes are read because it may have scale itself.</summary>
    public IEnumerable<PlannedNode> ReadsAxesOf => IsFramedByWriter
        ? []
        : (Stand.Root is { } root && !IsRigid ? [root] : Array.Empty<PlannedNode>()).Concat(Writers.SelectMany(writer => writer.ReadsAxesOf));

    /// <summary>Whether it has no scale where its base has none.</summary>
    public bool AddsNoScale => HasUnitScale && Rigidity.Of(Fixed);

    // What an animator may scale, or a sentence does, isn't.
    private bool HasUnitScale => Rest.Scale == Vector3d.One && Response is not { WritesScale: true } && !owners.Any(owner => owner.Writer.WritesScale) && (Writer is not null
        || Node.Kind != NodeKind.Control || (Node.Locked.TryKnown(out var locked) && (locked & Channels.Scale) == Channels.Scale));

    public void HangUnder(PlannedNode? parent, Affine3d placement) => (Parent, Base, Fixed) = (parent, parent, placement);

    public void HoldByMatrix(PlannedNode source, Affine3d offset) => (Base, Fixed, IsHeldByMatrix) = (source, offset, true);

    /// <summary>Gives it something that writes its channels; of several that write one, the last has it.</summary>
    public void Write(Writer writer)
    {
        owners.Add(writer, writer.Writes);
        Writer = owners.FirstOrDefault(owner => owner.Writer.Writes == Channels.All).Writer;
        Parts = [.. owners.Select(owner => owner.Writer).Where(part => part.Writes != Channels.All).OrderBy(part => part is AimWriter)];
        GatherWriters();
    }

    /// <summary>Gives it a share of a falloff.</summary>
    public void Take(FalloffInput share)
    {
        Falloff ??= new FalloffWriter(this);
        Falloff.Add(share);
        GatherWriters();
    }

    public Writer? OwnerOf(Channels channel) => owners.FirstOrDefault(owner => (owner.Has & channel) == channel).Writer;

    /// <summary>The level after which the channels are there that a writer of it comes on top of.</summary>
    public int LevelBefore(Writer writer) => Writers.TakeWhile(other => other != writer).Select(other => other.Level).DefaultIfEmpty(0).Max();

    /// <summary>Folds what stands still and takes a level; all that it needs is settled already.</summary>
    public void Settle()
    {
        Stand = Base is null ? new Anchor(null, Fixed) : Base.World.Below(Fixed);
        World = Moves ? new Anchor(this, Affine3d.Identity) : Stand.Below(Rest.ToAffine());
        IsRigid = Stand.IsRigid && (Moves ? HasUnitScale : World.IsRigid);
        Level = World.Root is null ? 0
            : IsFramedByWriter ? Writer!.Level
            : 1 + Math.Max(Stand.Root?.Level ?? 0, Math.Max(WritersLevel, Response?.Level ?? 0));
    }

    private void GatherWriters() => Writers = [.. new[] { Writer }.Concat(Parts).Append(Falloff).OfType<Writer>()];
}
