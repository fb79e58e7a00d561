using Modelling.Anatomy;
using Modelling.Mesh;
using Modelling.Output;

namespace Modelling;

/// <summary>The dock worker: joints from a table of body segments, clothes by eye.</summary>
public static class Stevedore
{
    /// <summary>The files of the model, the same bytes on every machine.</summary>
    public static IReadOnlyList<ModelFile> Model()
    {
        var joints = Worker.Joints();
        var mesh = new MeshBuilder(joints);
        Torso.Add(mesh, joints);
        Head.Add(mesh, joints);
        Arms.Add(mesh, joints);
        Hands.Add(mesh, joints);
        Legs.Add(mesh, joints);
        return GltfFile.Write("stevedore", joints, mesh.Surfaces);
    }
}
