using Modelling.Machine;
using Modelling.Mesh;
using Modelling.Output;

namespace Modelling;

/// <summary>The harbour crane: rigid parts, each on the joint that it turns about.</summary>
public static class Crane
{
    /// <summary>The files of the model, the same bytes on every machine.</summary>
    public static IReadOnlyList<ModelFile> Model()
    {
        var joints = HarbourCrane.Joints();
        var mesh = new MeshBuilder(joints, isFaceted: true);
        Steelwork.Add(mesh, joints);
        return GltfFile.Write("crane", joints, mesh.Surfaces);
    }
}
