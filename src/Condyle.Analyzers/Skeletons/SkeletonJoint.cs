using System.Numerics;

namespace Condyle.Analyzers.Skeletons;

/// <summary>A joint as it was delivered. <paramref name="Node"/> and <paramref name="Parent"/> (-1: none) are node indices of the file; <paramref name="HumanBone"/> is the humanoid bone of VRM 1.0 that it is.</summary>
internal sealed record SkeletonJoint(int Node, int Parent, string Name, JointRole Role, JointRest Rest, string? HumanBone = null);

/// <summary>The local rest of a joint.</summary>
internal readonly record struct JointRest(Vector3 Translation, Quaternion Rotation, Vector3 Scale);
