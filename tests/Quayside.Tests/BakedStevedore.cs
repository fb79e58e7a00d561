using System.Text.Json.Nodes;
using Condyle.Runtime;
using Quayside.Clips;

namespace Quayside.Tests;

/// <summary>The dock worker with all his clips, baked once for all tests into a folder that is gone afterwards.</summary>
public sealed class BakedStevedore : IDisposable
{
    private static readonly string Delivered = Path.Combine(AppContext.BaseDirectory, "stevedore.gltf");

    private readonly List<string?> nodes = [.. JsonNode.Parse(System.IO.File.ReadAllText(Delivered))!["nodes"]!.AsArray().Select(node => (string?)node!["name"])];
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("quayside-");

    public BakedStevedore()
    {
        Rig = RigCompiler.Compile(Condyle.Rig.Build(new Stevedore()));
        Clips = [RangeOfMotion.Of(Rig), .. new StevedoreClips().Clips()];
        File = Path.Combine(folder.FullName, "stevedore.glb");
        Result = RigBaker.Run(Rig, Delivered, Clips, File);
    }

    public CompiledRig Rig { get; }

    public IReadOnlyList<Clip> Clips { get; }

    public string File { get; }

    public RigBakeResult Result { get; }

    public Clip Clip(string name) => Clips.Single(clip => clip.Name == name);

    /// <summary>The index of a joint's node, which is the same in the delivered file and in the baked one.</summary>
    public int NodeOf(string joint) => nodes.IndexOf(joint);

    public void Dispose() => folder.Delete(recursive: true);
}
