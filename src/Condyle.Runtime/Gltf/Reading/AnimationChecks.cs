namespace Condyle.Runtime.Gltf.Reading;

/// <summary>Tracks find their nodes and samplers, times increase, and no rotation is zero.</summary>
internal static class AnimationChecks
{
    public static void Check(JsonSpot root, Accessor[] accessors)
    {
        var nodes = root["nodes"].Items;
        foreach (var animation in root["animations"].Items)
        {
            var samplers = animation["samplers"].Items;
            foreach (var channel in animation["channels"].Items)
            {
                var sampler = channel["sampler"].IndexInto(samplers.Length, "samplers in this animation");
                var target = channel["target"];
                if (target["node"] is not { Exists: true } index)
                    continue;
                var node = index.IndexInto(nodes.Length, "nodes");
                samplers[sampler] = samplers[sampler] with { Node = samplers[sampler].Node ?? nodes[node].AsNode(node).Node };
                if (target["path"].Text == "rotation")
                    RequireRotations(accessors[samplers[sampler]["output"].IndexInto(accessors.Length, "accessors")], IsCubic(samplers[sampler]), nodes[node].AsNode(node).Node);
            }

            foreach (var sampler in samplers)
                CheckSampler(sampler, accessors);
        }
    }

    private static bool IsCubic(JsonSpot sampler) => sampler["interpolation"].Text == "CUBICSPLINE";

    private static void CheckSampler(JsonSpot sampler, Accessor[] accessors)
    {
        var times = accessors[sampler["input"].IndexInto(accessors.Length, "accessors")];
        var values = accessors[sampler["output"].IndexInto(accessors.Length, "accessors")];
        if (times is not { Kind: "SCALAR", IsFloat: true })
            throw sampler["input"].Wrong("is no accessor of float times", "Export the animation again");
        if (values.Count % times.Count != 0 || values.Count < times.Count * (IsCubic(sampler) ? 3 : 1))
            throw sampler["output"].Wrong($"has {values.Count} values for {times.Count} times", "Export the animation again");
        if (times.Spot["sparse"].Exists)
            return;
        for (var i = 1; i < times.Count; i++)
        {
            if (times.At(i, 0) <= times.At(i - 1, 0))
                throw (times.Spot with { Node = sampler.Node }).Wrong($"has times that don't increase, at element {i}", "Export the animation again");
        }
    }

    private static void RequireRotations(Accessor rotations, bool isCubic, string? node)
    {
        if (rotations is not { Kind: "VEC4", IsFloat: true } || rotations.Spot["sparse"].Exists)
            return;
        // A cubic spline stores in-tangent, value, out-tangent for each key; tangents may well be zero.
        for (var i = isCubic ? 1 : 0; i < rotations.Count; i += isCubic ? 3 : 1)
        {
            if (rotations.At(i, 0) == 0 && rotations.At(i, 1) == 0 && rotations.At(i, 2) == 0 && rotations.At(i, 3) == 0)
                throw (rotations.Spot with { Node = node }).Wrong($"has a zero quaternion in element {i}", "Export the animation again");
        }
    }
}
