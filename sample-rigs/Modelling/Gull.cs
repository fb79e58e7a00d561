using Modelling.Bird;
using Modelling.Mesh;
using Modelling.Output;

namespace Modelling;

/// <summary>The gull: a skin, and a joint for each of the feathers that fold.</summary>
public static class Gull
{
    /// <summary>The files of the model, the same bytes on every machine.</summary>
    public static IReadOnlyList<ModelFile> Model()
    {
        var joints = Seabird.Joints();
        var mesh = new MeshBuilder(joints);
        Plumage.Add(mesh, joints);
        Feathers.Add(mesh, joints);
        Shanks.Add(mesh, joints);
        return GltfFile.Write("gull", joints, mesh.Surfaces);
    }
}
