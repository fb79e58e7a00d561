using System.Numerics;
using Condyle.Runtime.Gltf;

namespace Condyle.Host.Tests;

/// <summary>Files of clips as an animator's program leaves them: nodes that are the hoist's controls, and an animation of them.</summary>
internal static class ClipFiles
{
    private const string Controls = """
        {
          "asset": { "version": "2.0" },
          "scene": 0,
          "scenes": [ { "nodes": [0] } ],
          "nodes": [ { "name": "slew", "children": [1] }, { "name": "drop" } ]
        }
        """;

    private static readonly string WithLuff = Controls.Replace("[0]", "[0, 2]", StringComparison.Ordinal).Replace("{ \"name\": \"drop\" }", "{ \"name\": \"drop\" }, { \"name\": \"luff\" }", StringComparison.Ordinal);

    /// <summary>Writes a file in which the hoist slews so far, and if it is said also luffs, for which it has no control.</summary>
    public static string Write(TestProgram program, string name, float degrees, float seconds = 1, bool luffs = false, string? clip = null)
    {
        var bare = program.Write($"{name}.bare.gltf", luffs ? WithLuff : Controls);
        var turn = Quaternion.CreateFromAxisAngle(Vector3.UnitY, degrees * (MathF.PI / 180));
        var path = program[$"clips/{name}.glb"];
        GltfFile.Read(bare).Append([new GltfClip(clip ?? name, [0, seconds], [.. (luffs ? [0, 2] : (int[])[0]).Select(node => new GltfTrack(node, Rotations: [Quaternion.Identity, turn]))])]).Write(path);
        File.Delete(bare);
        return path;
    }
}
