using Modelling.Anatomy;
using Modelling.Mesh;

namespace Modelling.Output;

/// <summary>A mesh of the file: the skin of the whole body, or a rigid part that hangs on one joint, in that joint's frame.</summary>
/// <param name="Name">Its name in the file.</param>
/// <param name="Bearer">The joint that bears it; none for a skin.</param>
/// <param name="Skin">The joints that move it; none for a rigid part.</param>
/// <param name="Surfaces">Its surfaces, a material each.</param>
internal sealed record ModelMesh(string Name, ModelJoint? Bearer, IReadOnlyList<ModelJoint>? Skin, IReadOnlyList<Surface> Surfaces)
{
    /// <summary>One skin where joints move skin; else a part for each joint that something follows.</summary>
    public static IReadOnlyList<ModelMesh> Of(string name, JointTree joints, IReadOnlyList<Surface> surfaces) => joints.Skinned.ToList() is { Count: > 0 } skinned
        ? [new ModelMesh(name, null, skinned, surfaces)]
        : [.. joints.All.Select(joint => PartOf(joint, surfaces)).Where(part => part.Surfaces.Count > 0)];

    private static ModelMesh PartOf(ModelJoint joint, IReadOnlyList<Surface> surfaces) =>
        new(joint.Name, joint, null, [.. surfaces.Select(surface => Following(joint, surface)).Where(surface => surface.Vertices.Count > 0)]);

    /// <summary>The triangles that follow a joint. All three corners do: a tube of a rigid part follows one joint.</summary>
    private static Surface Following(ModelJoint joint, Surface surface)
    {
        var kept = new Dictionary<int, int>();
        foreach (var (vertex, index) in surface.Vertices.Select((vertex, index) => (vertex, index)))
        {
            if (vertex.Influences.Weights.Single().Joint == joint)
                kept.Add(index, kept.Count);
        }

        return new Surface(
            surface.Material,
            [.. kept.Keys.Select(index => surface.Vertices[index]).Select(vertex => vertex with { Position = joint.World.Into(vertex.Position), Normal = joint.World.DirectionInto(vertex.Normal) })],
            [.. surface.Indices.Where(kept.ContainsKey).Select(index => kept[index])]);
    }
}
