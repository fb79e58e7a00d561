using Modelling.Geometry;

namespace Modelling.Anatomy;

/// <summary>One joint of the model, with its frame in the world.</summary>
public sealed record ModelJoint(int Index, string Name, ModelJoint? Parent, Frame World, bool MovesSkin);
