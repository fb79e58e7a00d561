namespace Condyle.Runtime;

/// <summary>
/// A limb of a compiled rig that can be matched: a blend of a chain from a copy that IK or a curve solves and from one whose joints controls turn.
/// </summary>
/// <param name="Index">Its place in <see cref="CompiledRig.Limbs"/>.</param>
/// <param name="Name">The name of its first joint.</param>
/// <param name="Joints">Its joints from root to tip, by their index in <see cref="CompiledRig.Joints"/>.</param>
/// <param name="Goal">The control that moves its goal, by its index in <see cref="CompiledRig.Controls"/>; of a curve the last that it goes through.</param>
/// <param name="Pole">The control that moves its pole; none: no pole, or none that a control moves by itself.</param>
/// <param name="Turns">The controls that turn its joints, from root to tip.</param>
public sealed record CompiledLimb(int Index, string Name, IReadOnlyList<int> Joints, int Goal, int? Pole, IReadOnlyList<int> Turns)
{
    /// <summary>The controls that its curve goes through, from root to tip; none where IK solves it. One that the limb hangs under isn't among them.</summary>
    public IReadOnlyList<int> Through { get; init; } = [];
}
