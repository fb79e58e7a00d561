using Condyle.Model;
using Condyle.Runtime.Compilation;
using Condyle.Runtime.Matching;

namespace Condyle.Runtime;

/// <summary>A rig as a schedule over flat arrays. It never changes, so threads can share it; what moves lives in its instances.</summary>
public sealed class CompiledRig
{
    private readonly NameTable controlNames;
    private readonly NameTable switchNames;
    private readonly NameTable dialNames;
    private readonly NameTable choiceNames;
    private readonly NameTable morphNames;
    private readonly NameTable jointNames;
    private readonly Lazy<LimbTable> limbs;

    internal CompiledRig(string name, RigParts parts, RigLayout layout, RigModel model)
    {
        Name = name;
        Controls = parts.Controls;
        Switches = parts.Switches;
        Dials = parts.Dials;
        Choices = parts.Choices;
        Morphs = parts.Morphs;
        Joints = parts.Joints;
        Labels = parts.Labels;
        (controlNames, jointNames, morphNames) = (parts.ControlNames, parts.JointNames, parts.MorphNames);
        (switchNames, dialNames, choiceNames) = (parts.SwitchNames, parts.DialNames, parts.ChoiceNames);
        Layout = layout;
        Model = model;
        limbs = new(() => new LimbTable(model));
    }

    /// <summary>The name of the definition's class.</summary>
    public string Name { get; }

    /// <summary>The controls in the order in which they were made.</summary>
    public IReadOnlyList<CompiledControl> Controls { get; }

    /// <summary>The switches in the order in which they were made.</summary>
    public IReadOnlyList<CompiledSwitch> Switches { get; }

    /// <summary>The dials in the order in which they were made.</summary>
    public IReadOnlyList<CompiledDial> Dials { get; }

    /// <summary>The choices in the order in which they were made.</summary>
    public IReadOnlyList<CompiledChoice> Choices { get; }

    /// <summary>The morph targets that responses set, in the order in which they were first named.</summary>
    public IReadOnlyList<CompiledMorph> Morphs { get; }

    /// <summary>The exported joints, parents before children.</summary>
    public IReadOnlyList<CompiledJoint> Joints { get; }

    /// <summary>The labels in the order in which they were made.</summary>
    public IReadOnlyList<CompiledLabel> Labels { get; }

    /// <summary>The limbs that can be matched: those that IK or a curve has by one source of their blend and controls by another. Worked out when it is first asked for.</summary>
    public IReadOnlyList<CompiledLimb> Limbs => limbs.Value.Limbs;

    internal LimbTable LimbTable => limbs.Value;

    internal ControlTree ControlTree => limbs.Value.Tree;

    internal RigModel Model { get; }

    internal RigLayout Layout { get; }

    /// <summary>The exported joints whose channels don't hold their motion, because a drive by matrix carries them: they can't be baked.</summary>
    internal IReadOnlyCollection<int> JointsHeldByMatrix => Layout.JointsHeldByMatrix;

    /// <summary>Finds a control.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>Its index in <see cref="Controls"/>.</returns>
    /// <exception cref="ArgumentException">There is none; the message gives the nearest names.</exception>
    public int ControlIndex(string name) => controlNames.Find(name);

    /// <summary>Finds a switch.</summary>
    /// <param name="name">A control that it is shown on and its own name, for instance <c>hand_left.fk</c>.</param>
    /// <returns>Its index in <see cref="Switches"/>.</returns>
    /// <exception cref="ArgumentException">There is none; the message gives the nearest names.</exception>
    public int SwitchIndex(string name) => switchNames.Find(name);

    /// <summary>Finds a dial.</summary>
    /// <param name="name">A control that it is shown on and its own name, for instance <c>hand_left.curl</c>.</param>
    /// <returns>Its index in <see cref="Dials"/>.</returns>
    /// <exception cref="ArgumentException">There is none; the message gives the nearest names.</exception>
    public int DialIndex(string name) => dialNames.Find(name);

    /// <summary>Finds a choice.</summary>
    /// <param name="name">A control that it is shown on and its own name, for instance <c>hand_left.space</c>.</param>
    /// <returns>Its index in <see cref="Choices"/>.</returns>
    /// <exception cref="ArgumentException">There is none; the message gives the nearest names.</exception>
    public int ChoiceIndex(string name) => choiceNames.Find(name);

    /// <summary>Finds a morph target.</summary>
    /// <param name="name">The mesh's name and its own, for instance <c>body.bulge</c>.</param>
    /// <returns>Its index in <see cref="Morphs"/>.</returns>
    /// <exception cref="ArgumentException">There is none; the message gives the nearest names.</exception>
    public int MorphIndex(string name) => morphNames.Find(name);

    /// <summary>Finds an exported joint.</summary>
    /// <param name="name">Its name in the skeleton.</param>
    /// <returns>Its index in <see cref="Joints"/>.</returns>
    /// <exception cref="ArgumentException">There is none; the message gives the nearest names.</exception>
    public int JointIndex(string name) => jointNames.Find(name);

    /// <summary>Finds a limb that can be matched.</summary>
    /// <param name="joint">The name of one of its joints, for instance <c>elbow_left</c>.</param>
    /// <returns>Its index in <see cref="Limbs"/>.</returns>
    /// <exception cref="ArgumentException">There is none; the message gives the nearest names.</exception>
    public int LimbIndex(string joint) => limbs.Value.Names.Find(joint);

    /// <summary>Makes a character that moves by this rig. It stands at rest, evaluated.</summary>
    /// <returns>The instance, independent of all others.</returns>
    public RigInstance NewInstance() => new(this, Layout.AtRest.Copy());

    /// <summary>Makes many characters that move by this rig and are evaluated together. They stand at rest, evaluated.</summary>
    /// <param name="count">How many, at least one.</param>
    /// <returns>The crowd, independent of all other instances.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is below one.</exception>
    public RigCrowd NewCrowd(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return new(this, count, RigCrowd.Widest);
    }
}
