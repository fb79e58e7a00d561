using Modelling.Anatomy;
using Modelling.Mesh;

namespace Modelling.Bird;

/// <summary>What follows one joint alone.</summary>
internal sealed class Part(MeshBuilder mesh, ModelJoint joint)
{
    public void Tube(Material material, int sides, params IReadOnlyList<Ring> rings) => mesh.Tube(material, sides, rings, (ring, point) => Influences.Of(joint));
}
