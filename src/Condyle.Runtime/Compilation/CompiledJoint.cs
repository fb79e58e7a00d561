using System.Numerics;

namespace Condyle.Runtime;

/// <summary>An exported joint of a compiled rig, with its rest as delivered.</summary>
/// <param name="Index">Its place in <see cref="CompiledRig.Joints"/>, by which an instance is read.</param>
/// <param name="Name">Its name in the skeleton.</param>
/// <param name="Parent">The index of the joint above it, always less than its own; −1 for a root.</param>
/// <param name="Role">What it is for.</param>
/// <param name="RestTranslation">Metres, in the parent's space.</param>
/// <param name="RestRotation">A unit quaternion, in the parent's space.</param>
/// <param name="RestScale">Factors along the joint's own axes.</param>
public sealed record CompiledJoint(int Index, string Name, int Parent, JointRole Role, Vector3 RestTranslation, Quaternion RestRotation, Vector3 RestScale);
