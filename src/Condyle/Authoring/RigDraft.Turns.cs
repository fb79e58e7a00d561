using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <content>Aims, twists and falloffs.</content>
public sealed partial class RigDraft
{
    /// <summary>Begins a sentence that turns a node towards another; finish it with <c>At</c>, and <c>Up</c> for the roll.</summary>
    /// <param name="node">The node to turn.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public Aim Aim(Node node, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Aim(node, Place(file, line));

    /// <inheritdoc cref="Aim(Node, string, int)"/>
    public Aim Aim(Node node) => Aim(node, PlaceId.None);

    internal Aim Aim(Node node, PlaceId place) => new(this, Record(new AimBegun(place, node.IdIn(this))));

    /// <summary>Begins a sentence that shares the roll of a bone out to its twist joints; finish it with <c>Between</c>.</summary>
    /// <param name="joints">The twist joints, from the bone's start on.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public Twist Twist(JointSet joints, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Twist(Given.JointsOfTwist(joints), Place(file, line));

    /// <inheritdoc cref="Twist(JointSet, string, int)"/>
    public Twist Twist(JointSet joints) => Twist(Given.JointsOfTwist(joints), PlaceId.None);

    internal Twist Twist(JointSet? joints, PlaceId place) => new(this, Record(new TwistBegun(place, joints?.Select(joint => joint.IdIn(this)).ToArray())));

    /// <summary>Begins a sentence that gives a bone's only twist joint its share of the roll; finish it with <c>Between</c>.</summary>
    /// <param name="joint">The twist joint.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public Twist Twist(Joint joint, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Twist(joint, Place(file, line));

    /// <inheritdoc cref="Twist(Joint, string, int)"/>
    public Twist Twist(Joint joint) => Twist(joint, PlaceId.None);

    internal Twist Twist(Joint joint, PlaceId place) => new(this, Record(new TwistBegun(place, [joint.IdIn(this)])));

    /// <summary>Begins a sentence that lets the joints of a chain each take a share of a control's turn; finish it with <c>From</c>.</summary>
    /// <param name="chain">The chain to turn.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public Falloff Falloff(Chain chain, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Falloff(chain, Place(file, line));

    /// <inheritdoc cref="Falloff(Chain, string, int)"/>
    public Falloff Falloff(Chain chain) => Falloff(chain, PlaceId.None);

    internal Falloff Falloff(Chain chain, PlaceId place) => new(this, Record(new FalloffBegun(place, chain.IdIn(this))));

    /// <summary>Begins a sentence that lets the joints of a copy each take a share of a control's turn; finish it with <c>From</c>.</summary>
    /// <param name="copy">The copy to turn.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public Falloff Falloff(Copy copy, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Falloff(copy, Place(file, line));

    /// <inheritdoc cref="Falloff(Copy, string, int)"/>
    public Falloff Falloff(Copy copy) => Falloff(copy, PlaceId.None);

    internal Falloff Falloff(Copy copy, PlaceId place) => new(this, Record(new FalloffBegun(place, copy.IdIn(this))));
}
