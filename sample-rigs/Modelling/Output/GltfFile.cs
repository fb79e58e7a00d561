using System.Globalization;
using System.Text.Json;
using Modelling.Anatomy;
using Modelling.Geometry;
using Modelling.Mesh;

namespace Modelling.Output;

/// <summary>Writes the model as glTF 2.0 with its buffer beside it. Numbers are rounded, so that the bytes don't depend on the processor.</summary>
internal static class GltfFile
{
    public static IReadOnlyList<ModelFile> Write(string name, JointTree joints, IReadOnlyList<Surface> surfaces)
    {
        var meshes = ModelMesh.Of(name, joints, surfaces);
        var buffer = new BufferBuilder();
        var primitives = meshes.Select(mesh => mesh.Surfaces.Select(surface => Primitive.Pack(buffer, mesh, surface)).ToList()).ToList();

        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            WriteAsset(json);
            WriteNodes(json, joints, meshes);
            if (meshes is [{ Skin: { } skinned }])
                WriteSkin(json, name, skinned, buffer.Matrices([.. skinned.Select(joint => InverseBind(joint.World))]));
            WriteMeshes(json, meshes, primitives, [.. surfaces.Select(surface => surface.Material)]);
            WriteBuffer(json, name, buffer);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return [new ModelFile(name + ".gltf", stream.ToArray()), new ModelFile(name + ".bin", buffer.Bytes)];
    }

    private static void WriteAsset(Utf8JsonWriter json)
    {
        json.WriteStartObject("asset");
        json.WriteString("version", "2.0");
        json.WriteString("generator", "Condyle");
        json.WriteEndObject();
    }

    private static void WriteNodes(Utf8JsonWriter json, JointTree joints, IReadOnlyList<ModelMesh> meshes)
    {
        var skin = meshes.SingleOrDefault(mesh => mesh.Skin is not null);
        var root = (double)joints.All.Single(joint => joint.Parent is null).Index;
        json.WriteNumber("scene", 0);
        json.WriteStartArray("scenes");
        json.WriteStartObject();
        WriteArray(json, "nodes", skin is null ? [root] : [root, joints.All.Count]);
        json.WriteEndObject();
        json.WriteEndArray();

        json.WriteStartArray("nodes");
        foreach (var joint in joints.All)
        {
            var local = joint.Parent is null ? joint.World : joint.World.In(joint.Parent.World);
            json.WriteStartObject();
            json.WriteString("name", joint.Name);
            var children = joints.All.Where(child => child.Parent == joint).Select(child => (double)child.Index).ToArray();
            if (children.Length > 0)
                WriteArray(json, "children", children);
            var turn = local.Turn;
            WriteArray(json, "translation", [local.Origin.X, local.Origin.Y, local.Origin.Z]);
            WriteArray(json, "rotation", [turn.X, turn.Y, turn.Z, turn.W]);
            for (var mesh = 0; mesh < meshes.Count; mesh++)
            {
                if (meshes[mesh].Bearer == joint)
                    json.WriteNumber("mesh", mesh);
            }

            json.WriteEndObject();
        }

        if (skin is not null)
        {
            json.WriteStartObject();
            json.WriteString("name", skin.Name);
            json.WriteNumber("mesh", 0);
            json.WriteNumber("skin", 0);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteSkin(Utf8JsonWriter json, string name, IReadOnlyList<ModelJoint> skinned, int inverseBinds)
    {
        json.WriteStartArray("skins");
        json.WriteStartObject();
        json.WriteString("name", name);
        json.WriteNumber("inverseBindMatrices", inverseBinds);
        json.WriteNumber("skeleton", 0);
        WriteArray(json, "joints", [.. skinned.Select(joint => (double)joint.Index)]);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void WriteMeshes(Utf8JsonWriter json, IReadOnlyList<ModelMesh> meshes, IReadOnlyList<IReadOnlyList<Primitive>> primitives, List<Material> materials)
    {
        json.WriteStartArray("meshes");
        for (var i = 0; i < meshes.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("name", meshes[i].Name);
            json.WriteStartArray("primitives");
            foreach (var primitive in primitives[i])
                WritePrimitive(json, primitive, materials.IndexOf(primitive.Material));
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();

        json.WriteStartArray("materials");
        foreach (var material in materials)
        {
            json.WriteStartObject();
            json.WriteString("name", material.Name);
            json.WriteStartObject("pbrMetallicRoughness");
            WriteArray(json, "baseColorFactor", [material.Red, material.Green, material.Blue, 1]);
            json.WriteNumber("metallicFactor", 0);
            json.WriteNumber("roughnessFactor", 0.9);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePrimitive(Utf8JsonWriter json, Primitive primitive, int material)
    {
        json.WriteStartObject();
        json.WriteStartObject("attributes");
        json.WriteNumber("POSITION", primitive.Positions);
        json.WriteNumber("NORMAL", primitive.Normals);
        if (primitive.Skin is var (joints, weights))
        {
            json.WriteNumber("JOINTS_0", joints);
            json.WriteNumber("WEIGHTS_0", weights);
        }

        json.WriteEndObject();
        json.WriteNumber("indices", primitive.Indices);
        json.WriteNumber("material", material);
        json.WriteEndObject();
    }

    private static void WriteBuffer(Utf8JsonWriter json, string name, BufferBuilder buffer)
    {
        json.WriteStartArray("buffers");
        json.WriteStartObject();
        json.WriteString("uri", name + ".bin");
        json.WriteNumber("byteLength", buffer.Bytes.Length);
        json.WriteEndObject();
        json.WriteEndArray();

        json.WriteStartArray("bufferViews");
        foreach (var view in buffer.Views)
        {
            json.WriteStartObject();
            json.WriteNumber("buffer", 0);
            json.WriteNumber("byteOffset", view.Offset);
            json.WriteNumber("byteLength", view.Length);
            if (view.Target is { } target)
                json.WriteNumber("target", target);
            json.WriteEndObject();
        }

        json.WriteEndArray();

        json.WriteStartArray("accessors");
        foreach (var accessor in buffer.Accessors)
        {
            json.WriteStartObject();
            json.WriteNumber("bufferView", accessor.View);
            json.WriteNumber("componentType", accessor.ComponentType);
            json.WriteNumber("count", accessor.Count);
            json.WriteString("type", accessor.Type);
            if (accessor.Min is not null && accessor.Max is not null)
            {
                WriteArray(json, "min", [.. accessor.Min.Select(value => (double)value)]);
                WriteArray(json, "max", [.. accessor.Max.Select(value => (double)value)]);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Column by column: the transposed axes, then the origin seen from the joint.</summary>
    private static float[] InverseBind(Frame world)
    {
        var origin = world.Into(default);
        double[] columns =
        [
            world.X.X, world.Y.X, world.Z.X, 0,
            world.X.Y, world.Y.Y, world.Z.Y, 0,
            world.X.Z, world.Y.Z, world.Z.Z, 0,
            origin.X, origin.Y, origin.Z, 1,
        ];
        return [.. columns.Select(value => (float)Rounded(value))];
    }

    /// <summary>Seven decimals; plus zero turns minus zero into zero.</summary>
    internal static double Rounded(double value) => Math.Round(value, 7) + 0.0;

    private static void WriteArray(Utf8JsonWriter json, string name, double[] values)
    {
        json.WritePropertyName(name);
        json.WriteRawValue("[" + string.Join(", ", values.Select(value => Rounded(value).ToString("R", CultureInfo.InvariantCulture))) + "]");
    }
}
