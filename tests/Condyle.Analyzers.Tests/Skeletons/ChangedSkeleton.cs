using System.Numerics;
using System.Text.Json.Nodes;

namespace Condyle.Analyzers.Tests.Skeletons;

/// <summary>
/// The same character as another modeller might deliver it: every joint's frame turned at random, the root away from the origin, the rest bent a little,
/// some nodes given as matrices. Its skin keeps the bind pose that it had, which then differs from the rest.
/// </summary>
internal static class ChangedSkeleton
{
    private const float Bend = 0.15f;

    public static string Of(string gltf, int seed)
    {
        var random = new Random(seed);
        var json = JsonNode.Parse(gltf)!;
        var nodes = json["nodes"]!.AsArray();
        Turn(Array.FindIndex([.. nodes], node => (string?)node!["name"] == "root"), Quaternion.Identity, isRoot: true);
        return json.ToJsonString();

        void Turn(int index, Quaternion aboveTurn, bool isRoot)
        {
            var node = nodes[index]!.AsObject();
            var turn = Quaternion.Normalize(new Quaternion(Number(), Number(), Number(), Number()));
            var bent = Quaternion.Normalize(Rotation(node) * new Quaternion(Number() * Bend, Number() * Bend, Number() * Bend, 1));
            var rotation = Quaternion.Normalize(Quaternion.Inverse(aboveTurn) * bent * turn);
            var place = isRoot ? new Vector3(2, 0.5f, -3) : Vector3.Transform(Translation(node), Quaternion.Inverse(aboveTurn));
            node.Remove("translation");
            node.Remove("rotation");
            if (random.Next(3) == 0)
            {
                var matrix = Matrix4x4.CreateFromQuaternion(rotation) with { Translation = place };
                node["matrix"] = Numbers([.. Enumerable.Range(0, 16).Select(i => matrix[i / 4, i % 4])]);
            }
            else
            {
                node["translation"] = Numbers(place.X, place.Y, place.Z);
                node["rotation"] = Numbers(rotation.X, rotation.Y, rotation.Z, rotation.W);
            }

            foreach (var child in node["children"]?.AsArray() ?? [])
                Turn((int)child!, turn, isRoot: false);
        }

        float Number() => (random.NextSingle() * 2) - 1;
    }

    private static JsonArray Numbers(params float[] numbers) => [.. numbers.Select(number => (JsonNode)number)];

    private static Vector3 Translation(JsonObject node) => node["translation"] is JsonArray n ? new((float)n[0]!, (float)n[1]!, (float)n[2]!) : default;

    private static Quaternion Rotation(JsonObject node) =>
        node["rotation"] is JsonArray n ? new((float)n[0]!, (float)n[1]!, (float)n[2]!, (float)n[3]!) : Quaternion.Identity;
}
