using System.Numerics;
using System.Text.Json.Nodes;

namespace Condyle.Runtime.Tests.Baking;

/// <summary>The file that a rig's skeleton might have been delivered in: nodes and one skin.</summary>
internal static class DeliveredFile
{
    public static JsonObject Of(CompiledRig rig, bool asMatrices = false)
    {
        var nodes = new JsonArray();
        foreach (var joint in rig.Joints)
        {
            var node = new JsonObject { ["name"] = joint.Name };
            var children = rig.Joints.Where(child => child.Parent == joint.Index).Select(child => (JsonNode)child.Index).ToArray();
            if (children.Length > 0)
                node["children"] = new JsonArray(children);
            if (asMatrices)
            {
                var matrix = Matrix4x4.CreateScale(joint.RestScale) * Matrix4x4.CreateFromQuaternion(joint.RestRotation) * Matrix4x4.CreateTranslation(joint.RestTranslation);
                node["matrix"] = Numbers([.. Enumerable.Range(0, 16).Select(i => matrix[i / 4, i % 4])]);
            }
            else
            {
                node["translation"] = Numbers(joint.RestTranslation.X, joint.RestTranslation.Y, joint.RestTranslation.Z);
                node["rotation"] = Numbers(joint.RestRotation.X, joint.RestRotation.Y, joint.RestRotation.Z, joint.RestRotation.W);
                node["scale"] = Numbers(joint.RestScale.X, joint.RestScale.Y, joint.RestScale.Z);
            }

            nodes.Add(node);
        }

        return new JsonObject
        {
            ["asset"] = new JsonObject { ["version"] = "2.0" },
            ["scene"] = 0,
            ["scenes"] = new JsonArray(new JsonObject { ["nodes"] = new JsonArray(0) }),
            ["nodes"] = nodes,
            ["skins"] = new JsonArray(new JsonObject { ["joints"] = new JsonArray([.. rig.Joints.Where(joint => joint.Role != JointRole.Helper).Select(joint => (JsonNode)joint.Index)]) }),
        };
    }

    private static JsonArray Numbers(params float[] values) => new([.. values.Select(value => (JsonNode)(double)value)]);
}
