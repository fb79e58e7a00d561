using System.Text.Json;
using System.Text.Json.Serialization;
using Condyle.Host.Catalogue;
using Condyle.Host.Commands;
using Condyle.Runtime;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Host.Reporting;

/// <summary>Results for other programs.</summary>
internal static class JsonReport
{
    private static readonly JsonSerializerOptions Format = new(ReadableJson.Form) { Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) } };

    public static void Write<T>(TextWriter output, T result) => output.WriteLine(JsonSerializer.Serialize(result, Format));
}

/// <summary>One rig of a result: what the rules found, why it can't be evaluated if it can't, and what was baked and what couldn't be.</summary>
internal sealed class RigJson(CheckedRig rig, RigBakeResult? bake, IReadOnlyList<ClipFailure> failedClips)
{
    public string Rig => rig.Name;

    public bool IsGood => rig.IsGood && bake?.Holds != false && failedClips.Count == 0;

    public IReadOnlyList<RigFinding> Findings => rig.Findings;

    public string? Failure => rig.Failure;

    public RigBakeResult? Bake => bake;

    public IReadOnlyList<ClipFailure> FailedClips => failedClips;
}
