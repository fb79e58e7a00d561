namespace Condyle.Model;

internal enum NodeKind
{
    /// <summary>Some node; a reading doesn't know which kind.</summary>
    Any,
    Joint,
    CopyJoint,
    Control,
    Group,
}

/// <summary>A joint, a copied joint, a control or a group.</summary>
internal sealed class RigNode(int id, RigEvent said, NodeKind kind, Text name) : RigElement(id, said), IHung
{
    public NodeKind Kind { get; } = kind;

    public Text Name { get; } = name;

    public override string Title => $"'{Name}'";

    public Fact<RigNode?> Parent { get; set; } = (RigNode?)null;

    public PlaceId ParentPlace { get; set; }

    /// <summary>Where it stands at rest; none: at its parent.</summary>
    public Fact<Placement?> Placement { get; set; } = (Placement?)null;

    /// <summary>The sentence that placed it, the last one; none: it wasn't placed.</summary>
    public int? PlacedBy { get; set; }

    public Fact<Channels> Locked { get; set; } = Channels.None;

    /// <summary>The sentences that freed channels of it.</summary>
    public List<(int Event, PlaceId Place)> Unlocked { get; } = [];

    public List<ChannelLimit> Limits { get; } = [];

    public bool LimitsAreOpen { get; set; }

    /// <summary>How a control is shown; none: by what an animator may do with it.</summary>
    public Fact<ControlOutline?> Outline { get; set; } = (ControlOutline?)null;

    /// <summary>A control's colour; none: its layer's.</summary>
    public Fact<Tint?> Tint { get; set; } = (Tint?)null;

    /// <summary>The set of controls that it is shown with; empty for none.</summary>
    public Text Layer { get; set; } = "";

    /// <summary>A joint's skeleton; none for other nodes and for unknown joints.</summary>
    public RigSkeleton? Skeleton { get; init; }

    public Fact<JointRole> Role { get; init; }

    /// <summary>A joint's rest in its parent's space.</summary>
    public Fact<RestTransform> Rest { get; init; }

    /// <summary>The joint that a copied joint duplicates.</summary>
    public RigNode? Original { get; init; }

    public RigCopy? Copy { get; init; }

    public bool IsExported => Kind == NodeKind.Joint;

    /// <summary>What it hangs under, from its parent up as far as that is known; where that is a loop, each node of it once.</summary>
    public IEnumerable<RigNode> Above
    {
        get
        {
            var seen = new HashSet<RigNode>();
            for (var at = this; at.Parent.TryKnown(out var parent) && parent is not null && seen.Add(parent); at = parent)
                yield return parent;
        }
    }

    public static RigNode Unknown(int id, RigEvent said, NodeKind kind)
    {
        var node = new RigNode(id, said, kind, Text.Open) { IsUnknown = true };
        node.Forget();
        return node;
    }

    /// <summary>Whether two nodes are the same one; two that were seen being made are, or are not.</summary>
    public static Answer Same(RigNode a, RigNode b) =>
        ReferenceEquals(a, b) ? Answer.Yes
        : (a.IsUnknown || b.IsUnknown) && (a.Kind == b.Kind || a.Kind == NodeKind.Any || b.Kind == NodeKind.Any) ? Answer.Open
        : Answer.No;

    public override void Forget()
    {
        if (Kind == NodeKind.Joint && !IsUnknown)
            return; // a declared joint can't be changed
        Parent = Fact<RigNode?>.Open;
        Placement = Fact<Placement?>.Open;
        Locked = Fact<Channels>.Open;
        LimitsAreOpen = true;
        Outline = Fact<ControlOutline?>.Open;
        Tint = Fact<Tint?>.Open;
        Layer = Text.Open;
    }
}
