using Condyle.Runtime.Matching;

namespace Condyle.Runtime;

/// <summary>How well one copy of a limb reproduces the pose of the other, after its controls were set to do so.</summary>
/// <param name="Joints">The limb's joints from root to tip: how far each is off in the world.</param>
/// <param name="Notes">Why it is off, and what else whoever poses should know. Empty where nothing is in the way.</param>
public sealed record LimbMatch(IReadOnlyList<JointMatch> Joints, IReadOnlyList<MatchNote> Notes)
{
    /// <summary>A joint nearer than this, in metres, is where it should be.</summary>
    public const double AllowedMetres = 1e-5;

    /// <summary>A joint turned off by less than this, in degrees, is turned as it should be.</summary>
    public const double AllowedDegrees = 0.01;

    /// <summary>The largest distance of a joint, in metres.</summary>
    public double Metres => Joints.Max(joint => joint.Metres);

    /// <summary>The largest angle of a joint, in degrees.</summary>
    public double Degrees => Joints.Max(joint => joint.Degrees);

    /// <summary>Whether the limb's switch can flip without a jump: each joint is within 0.01 mm and 0.01°.</summary>
    public bool Holds => Metres <= AllowedMetres && Degrees <= AllowedDegrees;

    /// <summary>How far the joints are off at most, and why.</summary>
    public override string ToString() => string.Join(" ", Notes.Select(note => note.Text).Prepend($"{Figures.Millimetres(Metres)} and {Figures.Degrees(Degrees)} off at most."));
}

/// <summary>How far a joint of one copy is from where the other has it.</summary>
/// <param name="Joint">Its index in <see cref="CompiledRig.Joints"/>.</param>
/// <param name="Name">Its name.</param>
/// <param name="Metres">The distance in the world, in metres.</param>
/// <param name="Degrees">The angle in the world, in degrees.</param>
public sealed record JointMatch(int Joint, string Name, double Metres, double Degrees);

/// <summary>What keeps a limb from being matched, or what a match had to do.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">A sentence that names the joint or the control first, with numbers.</param>
public sealed record MatchNote(MatchNoteKind Kind, string Text)
{
    /// <summary>How far off is what it says of a control, weighed; zero of what is as far off as its limb.</summary>
    internal double Off { get; init; }
}

/// <summary>What keeps a limb from being matched, or what a match had to do.</summary>
public enum MatchNoteKind
{
    /// <summary>A control would have to use a channel that is locked. It keeps that channel.</summary>
    Locked,

    /// <summary>A control was set beyond the range that an animator may use, because the pose needs it.</summary>
    BeyondLimit,

    /// <summary>The limb's first joint stands elsewhere than where the solved copy hangs.</summary>
    RootMoved,

    /// <summary>A bone has another length than the solver gives it.</summary>
    BoneLength,

    /// <summary>The tip is further away, or nearer, than the solver reaches.</summary>
    OutOfReach,

    /// <summary>The limb is so nearly straight that a float of the goal's place can't hold its bend within 0.01 mm.</summary>
    AlmostStraight,

    /// <summary>The limb bends beside the plane of the solver, or backwards.</summary>
    BendsAside,

    /// <summary>A bone is twisted, which the solver never does by itself, or does otherwise.</summary>
    Twisted,

    /// <summary>Neither a pole nor a dial turns the plane of the bend, or what does can't go so far.</summary>
    PlaneFixed,

    /// <summary>The solver gives the chain another shape: it is the last note, and says by how much, and at which joints.</summary>
    OtherShape,
}
