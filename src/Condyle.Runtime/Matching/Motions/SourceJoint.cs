using System.Numerics;
using Condyle.Evaluation;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>A joint of a motion that comes from elsewhere.</summary>
/// <param name="Name">Its name there.</param>
/// <param name="Parent">The index of the joint above it, less than its own; −1 for a root.</param>
/// <param name="Rest">Its rest there, in its parent's space.</param>
/// <param name="Moves">Its translation over time; none: it stays at rest.</param>
/// <param name="Turns">Its rotation over time; none: it stays at rest.</param>
internal sealed record SourceJoint(string Name, int Parent, Trs Rest, Motion<Vector3>? Moves, Motion<Quaternion>? Turns)
{
    public Trs At(float time) => new(
        Moves is null ? Rest.Translation : Moves.At(time),
        Turns is null ? Rest.Rotation : ((Quaterniond)Turns.At(time)).Normalized(),
        Rest.Scale);
}
