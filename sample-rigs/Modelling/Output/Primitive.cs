using Modelling.Anatomy;
using Modelling.Geometry;
using Modelling.Mesh;

namespace Modelling.Output;

/// <summary>The accessors of one surface, and its material. What hangs on its node whole has no skin.</summary>
internal sealed record Primitive(Material Material, int Positions, int Normals, (int Joints, int Weights)? Skin, int Indices)
{
    private const int MaxInfluences = 4;
    private const int WeightSteps = 1024; // a power of two: the weights add up to exactly one

    public static Primitive Pack(BufferBuilder buffer, ModelMesh mesh, Surface surface)
    {
        var positions = buffer.Vertices("VEC3", [.. surface.Vertices.Select(vertex => Row(vertex.Position))], bounded: true);
        var normals = buffer.Vertices("VEC3", [.. surface.Vertices.Select(vertex => Row(vertex.Normal))]);
        var skin = mesh.Skin is null ? null : Weights(buffer, surface, mesh.Skin);
        return new Primitive(surface.Material, positions, normals, skin, buffer.Indices(surface.Indices));
    }

    private static (int Joints, int Weights)? Weights(BufferBuilder buffer, Surface surface, IReadOnlyList<ModelJoint> skinned)
    {
        var slots = skinned.Select((joint, slot) => (joint, slot)).ToDictionary(pair => pair.joint, pair => (byte)pair.slot);
        var joints = new List<byte[]>();
        var weights = new List<float[]>();
        foreach (var vertex in surface.Vertices)
        {
            var (jointRow, weightRow) = Quantised(vertex.Influences, slots);
            joints.Add(jointRow);
            weights.Add(weightRow);
        }

        return (buffer.Joints(joints), buffer.Vertices("VEC4", weights));
    }

    private static float[] Row(Vec v) => [(float)GltfFile.Rounded(v.X), (float)GltfFile.Rounded(v.Y), (float)GltfFile.Rounded(v.Z)];

    private static (byte[] Joints, float[] Weights) Quantised(Influences influences, Dictionary<ModelJoint, byte> slots)
    {
        var strongest = influences.Weights.OrderByDescending(influence => influence.Weight).Take(MaxInfluences).ToList();
        var total = strongest.Sum(influence => influence.Weight);
        var steps = strongest.Select(influence => (int)Math.Round(influence.Weight / total * WeightSteps)).ToArray();
        steps[0] += WeightSteps - steps.Sum();

        var joints = new byte[MaxInfluences];
        var weights = new float[MaxInfluences];
        for (var i = 0; i < steps.Length && steps[i] > 0; i++)
        {
            joints[i] = slots[strongest[i].Joint];
            weights[i] = steps[i] / (float)WeightSteps;
        }

        return (joints, weights);
    }
}
