using System.Runtime.CompilerServices;
using Condyle.Model;
using Condyle.Naming;

namespace Condyle;

/// <summary>The rig while it is being written: rig code fills it in, sentence by sentence.</summary>
/// <remarks>
/// Each public method is one line over an internal twin of the same name, whose plain values may be open and which takes the place as a number.
/// A reading of the code calls the twin. Where a method has one argument only, an overload without caller information can stand as a method group.
/// </remarks>
public sealed partial class RigDraft
{
    private readonly ProgramPlaces places;
    private readonly Conventions conventions;
    private bool closed;

    internal RigDraft(Conventions conventions, ProgramPlaces places)
    {
        this.conventions = conventions;
        this.places = places;
    }

    internal EventLog Log { get; } = new();

    /// <summary>Begins a skeleton as it was delivered; a generated skeleton class does it for a file.</summary>
    /// <param name="name">The skeleton's name, for instance its file's.</param>
    /// <returns>The skeleton, to which joints are added.</returns>
    [OverloadResolutionPriority(1)]
    public Skeleton Skeleton(string name, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Skeleton(name, Place(file, line));

    /// <inheritdoc cref="Skeleton(string, string, int)"/>
    public Skeleton Skeleton(string name) => Skeleton(name, PlaceId.None);

    internal Skeleton Skeleton(Text name, PlaceId place) => new(this, Record(new SkeletonDeclared(place, name)));

    /// <summary>Adds a group: a transform that only holds others.</summary>
    /// <param name="name">Its name, which ends in the team's group suffix, <c>_group</c> by default.</param>
    /// <returns>The group.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [OverloadResolutionPriority(1)]
    public Group Group(string name, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Group(name, Place(file, line));

    /// <inheritdoc cref="Group(string, string, int)"/>
    public Group Group(string name) => Group(name, PlaceId.None);

    internal Group Group(Text name, PlaceId place)
    {
        Given.AName(name, "A group", "arm_group");
        return new(this, Record(new GroupAdded(place, name)));
    }

    /// <summary>Adds a control: a handle that an animator moves.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The control.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [OverloadResolutionPriority(1)]
    public Control Control(string name, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Control(name, Place(file, line));

    /// <inheritdoc cref="Control(string, string, int)"/>
    public Control Control(string name) => Control(name, PlaceId.None);

    internal Control Control(Text name, PlaceId place)
    {
        Given.AName(name, "A control", "hand_left");
        return new(this, Record(new ControlAdded(place, name)));
    }

    /// <summary>Names the joints from one down to another.</summary>
    /// <param name="root">The chain's first joint.</param>
    /// <param name="tip">The chain's last joint, at or below the first.</param>
    /// <returns>The chain.</returns>
    /// <exception cref="ArgumentException">The tip isn't below the root.</exception>
    public Chain Chain(Joint root, Joint tip, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Chain(root, tip, Place(file, line));

    internal Chain Chain(Joint root, Joint tip, PlaceId place) => new(this, Record(new ChainDeclared(place, JointsBetween(root.IdIn(this), tip.IdIn(this)))));

    /// <summary>A point beside a node, where no joint is: a heel, the tip of a toe, the handle of a tool.</summary>
    /// <param name="beside">The node from whose rest it is told, so that it goes with the skeleton when that changes.</param>
    /// <param name="by">How far, in metres along the world's axes.</param>
    /// <returns>The spot.</returns>
    /// <exception cref="ArgumentException">The offset is not a finite vector.</exception>
    public Spot Spot(Node beside, System.Numerics.Vector3 by, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Spot(beside, by, Place(file, line));

    internal Spot Spot(Node beside, Fact<System.Numerics.Vector3> by, PlaceId place)
    {
        Given.Finite(by, "The offset of a spot");
        return new(this, Record(new PointBesideAsked(place, beside.IdIn(this), by)));
    }

    /// <summary>Begins a sentence that makes a node follow another; finish it with <c>ByChannels</c> or <c>ByMatrix</c>.</summary>
    /// <param name="target">The node to move.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public Drive Drive(Node target, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Drive(target, Place(file, line));

    /// <inheritdoc cref="Drive(Node, string, int)"/>
    public Drive Drive(Node target) => Drive(target, PlaceId.None);

    internal Drive Drive(Node target, PlaceId place) => new(this, Record(new DriveBegun(place, target.IdIn(this))));

    /// <summary>Begins a sentence that drives a whole chain from several of its copies; finish it with <c>From</c>, once for each copy.</summary>
    /// <param name="target">The chain to move.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public ChainBlend Blend(Chain target, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Blend(target, Place(file, line));

    /// <inheritdoc cref="Blend(Chain, string, int)"/>
    public ChainBlend Blend(Chain target) => Blend(target, PlaceId.None);

    internal ChainBlend Blend(Chain target, PlaceId place) => new(this, Record(new BlendBegun(place, target.IdIn(this))));

    /// <summary>Begins a sentence that drives one node from several others; finish it with <c>From</c>, once for each source.</summary>
    /// <param name="target">The node to move.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public NodeBlend Blend(Node target, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Blend(target, Place(file, line));

    /// <inheritdoc cref="Blend(Node, string, int)"/>
    public NodeBlend Blend(Node target) => Blend(target, PlaceId.None);

    internal NodeBlend Blend(Node target, PlaceId place) => new(this, Record(new BlendBegun(place, target.IdIn(this))));

    /// <summary>Begins a sentence that solves a copy of two bones; finish it with <c>Reach</c>, and <c>Face</c> for the bend.</summary>
    /// <param name="copy">A copy with three joints.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public TwoBone TwoBone(Copy copy, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => TwoBone(copy, Place(file, line));

    /// <inheritdoc cref="TwoBone(Copy, string, int)"/>
    public TwoBone TwoBone(Copy copy) => TwoBone(copy, PlaceId.None);

    internal TwoBone TwoBone(Copy copy, PlaceId place) => new(this, Record(new TwoBoneBegun(place, copy.IdIn(this))));

    /// <summary>Begins a sentence that solves a copy of any number of bones; finish it with <c>Reach</c>, and <c>Face</c> for the bend.</summary>
    /// <param name="copy">A copy with two joints or more.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public ManyBone ManyBone(Copy copy, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => ManyBone(copy, Place(file, line));

    /// <inheritdoc cref="ManyBone(Copy, string, int)"/>
    public ManyBone ManyBone(Copy copy) => ManyBone(copy, PlaceId.None);

    internal ManyBone ManyBone(Copy copy, PlaceId place) => new(this, Record(new ManyBoneBegun(place, copy.IdIn(this))));

    /// <summary>Begins a sentence that lays a copy along a curve; finish it with <c>Through</c>, once for each node from root to tip.</summary>
    /// <param name="copy">A copy with two joints or more.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public Curve Curve(Copy copy, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Curve(copy, Place(file, line));

    /// <inheritdoc cref="Curve(Copy, string, int)"/>
    public Curve Curve(Copy copy) => Curve(copy, PlaceId.None);

    internal Curve Curve(Copy copy, PlaceId place) => new(this, Record(new CurveBegun(place, copy.IdIn(this))));

    /// <summary>Adds text that shows which source has the limb; finish it with <c>ShownBy</c>.</summary>
    /// <param name="name">The label's name.</param>
    /// <param name="text">What it shows.</param>
    /// <returns>The label.</returns>
    /// <exception cref="ArgumentException">The name or the text is empty.</exception>
    public Label Label(string name, string text, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Label(name, text, Place(file, line));

    internal Label Label(Text name, Text text, PlaceId place)
    {
        Given.AName(name, "A label", "ik_arm_label");
        if (text.TryKnown(out var known) && known.Length == 0)
            throw new ArgumentException($"Label '{name}' shows no text. Give it one, such as \"IK\".", nameof(text));
        return new(this, Record(new LabelAdded(place, name, text)));
    }

    internal PlaceId Place(string file, int line) => places.Intern(file, line);

    internal int Record(RigEvent said)
    {
        if (closed)
            throw new InvalidOperationException("This rig is built already: a RigDraft can't be used after Define has returned.");
        return Log.Add(said);
    }

    internal void Close() => closed = true;

    internal static RigDraft Open(RigDraft draft) => draft;

    /// <summary>Adds an element that a reading knows only by its type.</summary>
    internal int Unknown(UnknownKind kind) => Record(new UnknownElement(kind));

    /// <summary>Whether what the handle stands for, or what it is made of, isn't known.</summary>
    internal bool IsOpen(int id) => Log[id] is UnknownElement or ChainDeclared { Joints: null } or CopyMade { IsOpen: true } or ChoiceAdded { IsOpen: true };

    internal Text NameOf(int id) => Log[id] is INamedEvent named ? named.Name : Text.Open;

    internal int SkeletonOf(int joint) => Log[joint] is JointDeclared declared ? declared.Skeleton : -1;

    internal IReadOnlyList<int>? JointsOf(int chain) => (Log[chain] as ChainDeclared)?.Joints;

    internal IReadOnlyList<int>? JointsWithout(int chain, Fact<JointRole> role)
    {
        if (JointsOf(chain) is not { } joints || !role.TryKnown(out var unwanted))
            return null;
        Given.ARole(role);
        var kept = new List<int>();
        foreach (var joint in joints)
        {
            if (Log[joint] is not JointDeclared declared || !declared.Role.TryKnown(out var has))
                return null;
            if (has != unwanted)
                kept.Add(joint);
        }

        return kept.Count > 0 ? kept : throw new ArgumentException(
            $"The chain from '{NameOf(joints[0])}' to '{NameOf(joints[^1])}' has {unwanted} joints only, so nothing is left of it. Leave out another role.", nameof(role));
    }

    internal int CopyChain(int chain, Text tag, PlaceId place)
    {
        Given.AName(tag, "A copy", "ik", "so its joints would be called as those of the skeleton are");
        var joints = JointsOf(chain);
        var copy = Record(new CopyMade(place, chain, tag, isOpen: joints is null));
        int? previous = null;
        foreach (var joint in joints ?? [])
            previous = Record(new CopyJointMade(place, copy, joint, previous, conventions.Tagged(tag, NameOf(joint))));
        return copy;
    }

    internal IReadOnlyList<int> CopiesOf(int copy)
    {
        var joints = new List<int>();
        for (var id = copy + 1; id < Log.Count && Log[id] is CopyJointMade made && made.Copy == copy; id++)
            joints.Add(id);
        return joints;
    }

    internal int CopyOf(int copy, int joint)
    {
        if (Log[copy] is CopyMade made && JointsOf(made.Chain) is { } joints && Place(joint, joints) is { } place)
            return copy + 1 + place;
        throw new ArgumentException(
            $"'{NameOf(joint)}' is not a joint of the chain that '{((CopyMade)Log[copy]).Tag}' copies. Ask for a joint of that chain.", nameof(joint));
    }

    /// <summary>Refuses a joint that certainly has no bone in the chain that a solver's copy duplicates.</summary>
    internal void CheckHasBone(int solver, int joint)
    {
        if (Log[solver] is not ManyBoneBegun begun || Log[joint] is not JointDeclared
            || Log[begun.Copy] is not CopyMade copy || JointsOf(copy.Chain) is not { Count: > 0 } chain)
            return;
        if (Place(joint, chain) is not { } place || place == chain.Count - 1)
        {
            throw new ArgumentException(
                $"'{NameOf(joint)}' has no bone in the chain that '{copy.Tag}' copies. Limit a joint of that chain above its tip '{NameOf(chain[^1])}'.", nameof(joint));
        }
    }

    // Joints are numbered as they are made, and a joint is made after the one above it.
    private static int? Place(int joint, IReadOnlyList<int> chain)
    {
        var (from, to) = (0, chain.Count - 1);
        while (from <= to)
        {
            var middle = (from + to) / 2;
            if (chain[middle] == joint)
                return middle;
            if (chain[middle] < joint)
                from = middle + 1;
            else
                to = middle - 1;
        }

        return null;
    }

    private List<int>? JointsBetween(int root, int tip)
    {
        var joints = new List<int>();
        for (int? joint = tip; joint is { } id; joint = ((JointDeclared)Log[id]).Parent)
        {
            joints.Add(id);
            if (id == root)
            {
                joints.Reverse();
                return joints;
            }

            if (Log[id] is not JointDeclared)
                return null;
        }

        if (Log[root] is not JointDeclared)
            return null;
        throw new ArgumentException($"'{NameOf(tip)}' is not below '{NameOf(root)}' in the skeleton. A chain runs from a joint down to one below it.", nameof(tip));
    }
}
