using System.Text.Json.Nodes;
using static Newcomers.Tests.Character;

namespace Newcomers.Tests;

/// <summary>Characters as they arrive: each differs from a tidy one in a way that real files do.</summary>
internal static class Arrivals
{
    private static readonly float[] Turned = [0.1f, -0.3f, 0.5f, 0.806225775f];

    /// <summary>Each by what is odd about it.</summary>
    public static IReadOnlyDictionary<string, Func<Character>> All { get; } = new Dictionary<string, Func<Character>>
    {
        ["nothing odd"] = () => Whole(),
        ["a root scaled by 100 that brings Z up to Y"] = () => Below(new() { ["scale"] = Numbers(100, 100, 100), ["rotation"] = Numbers(-0.70710677f, 0, 0, 0.70710677f) }, unit: 0.01f),
        ["a root scaled by 0.01"] = () => Below(new() { ["scale"] = Numbers(0.01f, 0.01f, 0.01f) }, unit: 100),
        ["a giant in centimetres"] = () => Below(new(), unit: 100),
        ["a thumbling"] = () => Below(new(), unit: 0.001f),
        ["uneven scales over turned joints"] = () => Whole((bone, node) =>
        {
            node["rotation"] = Numbers(Turned);
            if (bone is "chest" or "shoulder_left" or "hip_right")
                node["scale"] = Numbers(1.2f, 0.8f, 1.1f);
        }),
        ["a mirrored root"] = () => Below(new() { ["scale"] = Numbers(-1, 1, 1), ["rotation"] = Numbers(Turned) }),
        ["mirrored joints"] = () => Whole((bone, node) =>
        {
            node["rotation"] = Numbers(Turned);
            if (bone is "collar_left" or "hip_right")
                node["scale"] = Numbers(-1, 1, 1);
            if (bone is "wrist_left")
                node["scale"] = Numbers(-1, -1, -1);
        }),
        ["nodes given as matrices"] = () => Whole((bone, node) => AsMatrix(node, [0.8f, 0.6f, 0, -0.6f, 0.8f, 0, 0, 0, 1])),
        ["matrices rounded to three decimals"] = () => Whole((_, node) => AsMatrix(node, [0.839f, 0.545f, 0.001f, -0.545f, 0.839f, 0, 0, 0, 1])),
        ["a mirrored matrix at the root"] = () => Below(new() { ["matrix"] = Numbers(0, 0, 1.5f, 0, 0, 1.5f, 0, 0, 1.5f, 0, 0, 0, 0.1f, 0.2f, 0.3f, 1) }),
        ["rotations rounded to four decimals"] = () => Whole((_, node) => node["rotation"] = Numbers(0.1f, -0.3f, 0.5f, 0.8059f)),
        ["no names"] = () => Whole((_, node) => node.Remove("name")),
        ["one name for all"] = () => Whole((_, node) => node["name"] = "bone"),
        ["names with spaces, dots, colons, brackets and worse"] = () => Whole((bone, node) => node["name"] = $"rig: {bone}.b [main] {{0}} <b> \"q\"\t\n頭 a/b\\c"),
        ["names that the rig would like to have"] = () => Whole((bone, node) => node["name"] = bone switch
        {
            "pelvis" => "world",
            "chest" => "systems_group",
            "head" => "ik_head",
            "wrist_left" => "turn_world",
            "ankle_right" => "node_2",
            "knee_right" => null,
            _ => bone,
        }),
        ["helpers between the bones"] = () => Limbed(inLine: "pivot"),
        ["twists between the bones"] = () => Limbed(inLine: "Twist", movesSkin: true),
        ["a straight arm and leg"] = () => Whole((bone, node) =>
        {
            if (bone is "elbow_left" or "wrist_left" or "knee_right" or "ankle_right")
                node["translation"]![2] = 0;
        }),
        ["a limb that is all but straight"] = () => Whole((bone, node) =>
        {
            if (bone is "elbow_left" or "wrist_left" or "knee_right" or "ankle_right")
                node["translation"]![2] = 0.005f * node["translation"]![2]!.GetValue<double>();
        }),
        ["bones of no length"] = () => Whole((_, node) => node.Remove("translation")),
        ["a head of no size"] = () => Whole((bone, node) => _ = bone is "head" ? node["scale"] = Numbers(0, 0, 0) : null),
        ["a hand of next to no size"] = () => Whole((bone, node) => _ = bone is "wrist_left" ? node["scale"] = Numbers(1e-5f, 1e-5f, 1e-5f) : null),
        ["several skins"] = () =>
        {
            var character = new Character().AddBody();
            int[] joints = [.. character.Body.Values];
            return character.AddSkin(joints[..6]).AddSkin(joints[3..]).AddSkin(joints[..1], withBind: false);
        },
        ["two characters"] = () =>
        {
            var character = Whole().AddBody();
            return character.AddSkin(character.Body.Values);
        },
        ["a deep root far away"] = DeepRoot,
        ["a skinned mesh above its joints"] = () =>
        {
            var character = new Character();
            var shown = character.AddNode(new JsonObject { ["name"] = "mesh" });
            character.AddBody(shown);
            return character.AddSkin(character.Body.Values, shownBy: shown);
        },
        ["a skinned mesh, props and a camera below joints"] = Equipped,
        ["children before their parents"] = () => Reversed(Whole()),
        ["one joint"] = () =>
        {
            var character = new Character();
            return character.AddSkin([character.AddNode(new JsonObject())]);
        },
        ["no skin"] = () => new Character().AddBody(),
        ["clips of its own, one of them called as ours"] = () => Animated(Whole()),
        ["morph targets, sparse"] = () => Morphing(Whole()),
        ["extensions and extras"] = () => Extended(Whole()),
    };

    private static Character Below(JsonObject root, float unit = 1)
    {
        var character = new Character();
        root["name"] = "Armature";
        character.AddBody(character.AddNode(root), unit);
        return character.AddSkin(character.Body.Values);
    }

    private static void AsMatrix(JsonObject node, float[] axes)
    {
        var t = node["translation"]!.AsArray().Select(number => (float)number!.GetValue<double>()).ToArray();
        node.Remove("translation");
        node["matrix"] = Numbers(axes[0], axes[1], axes[2], 0, axes[3], axes[4], axes[5], 0, axes[6], axes[7], axes[8], 0, t[0], t[1], t[2], 1);
    }

    /// <summary>Before each bone a turned node that takes half of its way.</summary>
    private static Character Limbed(string inLine, bool movesSkin = false)
    {
        var character = Whole();
        foreach (var bone in new[] { "elbow_left", "wrist_left", "knee_right", "ankle_right" })
        {
            var index = character.Body[bone];
            var node = (JsonObject)character.Nodes[index]!;
            var half = Numbers([.. node["translation"]!.AsArray().Select(number => (float)number!.GetValue<double>() / 2)]);
            var above = character.Nodes.First(parent => parent!["children"] is JsonArray children && children.Any(child => child!.GetValue<int>() == index))!["children"]!.AsArray();
            above.RemoveAll(child => child!.GetValue<int>() == index);
            above.Add(character.Nodes.Count);
            node["translation"] = half.DeepClone();
            character.Nodes.Add(new JsonObject { ["name"] = $"{bone}_{inLine}", ["translation"] = half.DeepClone(), ["rotation"] = Numbers(0, 0, 0.6f, 0.8f), ["children"] = new JsonArray(index) });
            if (movesSkin)
                character.Json["skins"]![0]!["joints"]!.AsArray().Add(character.Nodes.Count - 1);
        }

        if (movesSkin)
            character.Json["skins"]![0]!.AsObject().Remove("inverseBindMatrices");
        return character;
    }

    private static Character DeepRoot()
    {
        var character = new Character();
        int? under = null;
        for (var level = 0; level < 20; level++)
            under = character.AddNode(new JsonObject { ["translation"] = Numbers(1, 0.2f, 0), ["rotation"] = Numbers(0, 0.0784591f, 0, 0.99691733f), ["scale"] = Numbers(1.01f, 1.01f, 1.01f) }, under);
        character.AddBody(under);
        return character.AddSkin(character.Body.Values);
    }

    private static Character Equipped()
    {
        var character = new Character().AddBody();
        character.AddSkin(character.Body.Values, under: character.Body["pelvis"]);
        var position = character.Floats("VEC3", [0, 0, 0, 1, 0, 0, 0, 1, 0], (Numbers(0, 0, 0), Numbers(1, 1, 0)));
        character.List("meshes").Add(new JsonObject { ["primitives"] = new JsonArray(new JsonObject { ["attributes"] = new JsonObject { ["POSITION"] = position } }) });
        var hook = character.AddNode(new JsonObject { ["name"] = "hook", ["mesh"] = 1, ["translation"] = Numbers(0.1f, 0, 0) }, character.Body["wrist_left"]);
        character.AddNode(new JsonObject { ["name"] = "hook_tip", ["translation"] = Numbers(0, 0.2f, 0) }, hook);
        character.Json["cameras"] = new JsonArray(new JsonObject { ["type"] = "perspective", ["perspective"] = new JsonObject { ["yfov"] = 1, ["znear"] = 0.1 } });
        character.AddNode(new JsonObject { ["name"] = "eye", ["camera"] = 0 }, character.Body["head"]);
        character.AddNode(new JsonObject { ["name"] = "foot_end", ["translation"] = Numbers(0, -0.05f, 0.2f) }, character.Body["ankle_right"]);
        return character;
    }

    private static Character Reversed(Character character)
    {
        var last = character.Nodes.Count - 1;
        JsonNode?[] nodes = [.. character.Nodes];
        character.Nodes.Clear();
        foreach (var node in nodes.Reverse())
            character.Nodes.Add(node);
        foreach (var list in character.Nodes.Select(node => node!["children"]).Append(character.Json["skins"]![0]!["joints"]).Append(character.Json["scenes"]![0]!["nodes"]).OfType<JsonArray>())
        {
            for (var i = 0; i < list.Count; i++)
                list[i] = last - list[i]!.GetValue<int>();
        }

        return character;
    }

    private static Character Animated(Character character) => character
        .AddClip("walk", character.Body["chest"], "rotation", "LINEAR", 0, 0, 0, 1, 0, 0, 0.6f, 0.8f, 0, 0, 0, 1)
        .AddClip("walk", character.Body["pelvis"], "translation", "STEP", 0, 1, 0, 0, 1.1f, 0, 0, 1, 0)
        .AddClip(null, character.Body["head"], "rotation", "CUBICSPLINE", [.. Enumerable.Repeat<float[]>([0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0], 3).SelectMany(key => key)])
        .AddClip("range_of_motion", character.Body["head"], "scale", "LINEAR", 1, 1, 1, 1.2f, 1, 1, 1, 1, 1);

    private static Character Morphing(Character character)
    {
        var primitive = character.Json["meshes"]![0]!["primitives"]![0]!;
        var (indices, values) = (character.View([1, 0, 5, 0]), character.View([.. new float[] { 0, 0.125f, 0, 0, 0.25f, 0 }.SelectMany(BitConverter.GetBytes)]));
        character.List("accessors").Add(new JsonObject
        {
            ["componentType"] = 5126,
            ["count"] = 30,
            ["type"] = "VEC3",
            ["min"] = Numbers(0, 0, 0),
            ["max"] = Numbers(0, 0.25f, 0),
            ["sparse"] = new JsonObject
            {
                ["count"] = 2,
                ["indices"] = new JsonObject { ["bufferView"] = indices, ["componentType"] = 5123 },
                ["values"] = new JsonObject { ["bufferView"] = values },
            },
        });
        primitive["targets"] = new JsonArray(new JsonObject { ["POSITION"] = character.List("accessors").Count - 1 });
        character.Json["meshes"]![0]!["weights"] = Numbers(0.5f);
        return character.AddClip("smile", character.Nodes.Count - 1, "weights", "LINEAR", 0, 1, 0);
    }

    private static Character Extended(Character character)
    {
        character.Json["extensionsUsed"] = new JsonArray("HARBOUR_tide", "KHR_lights_punctual", "KHR_materials_unlit");
        character.Json["extensionsRequired"] = new JsonArray("KHR_materials_unlit");
        character.Json["extensions"] = new JsonObject { ["HARBOUR_tide"] = new JsonObject { ["high"] = 1 }, ["KHR_lights_punctual"] = new JsonObject { ["lights"] = new JsonArray(new JsonObject { ["type"] = "point" }) } };
        character.Nodes[0]!["extensions"] = new JsonObject { ["HARBOUR_tide"] = new JsonObject { ["low"] = 2 } };
        character.Nodes[1]!["extras"] = new JsonArray(1, "two", new JsonObject());
        character.Nodes[2]!["extras"] = "text";
        var lamp = character.AddNode(new JsonObject { ["name"] = "lamp" }, character.Body["head"]);
        character.Nodes[lamp]!["extensions"] = new JsonObject { ["KHR_lights_punctual"] = new JsonObject { ["light"] = 0 } };
        return character;
    }
}
