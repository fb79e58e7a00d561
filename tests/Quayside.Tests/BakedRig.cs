using System.Text.Json.Nodes;
using Condyle;
using Condyle.Host;
using Condyle.Runtime;
using Quayside.Clips;

namespace Quayside.Tests;

/// <summary>A rig of the quay with all its clips, baked once for all tests into a folder that is gone afterwards.</summary>
public abstract class BakedRig : IDisposable
{
    private readonly List<string?> nodes;
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("quayside-");

    protected BakedRig(IRigDefinition definition, string delivered, IRigClips clips)
    {
        delivered = Path.Combine(AppContext.BaseDirectory, delivered);
        nodes = [.. JsonNode.Parse(System.IO.File.ReadAllText(delivered))!["nodes"]!.AsArray().Select(node => (string?)node!["name"])];
        Rig = RigCompiler.Compile(Condyle.Rig.Build(definition));
        Clips = [RangeOfMotion.Of(Rig), .. clips.Clips()];
        File = Path.Combine(folder.FullName, "baked.glb");
        Result = RigBaker.Run(Rig, delivered, Clips, File);
    }

    public CompiledRig Rig { get; }

    public IReadOnlyList<Clip> Clips { get; }

    public string File { get; }

    public RigBakeResult Result { get; }

    public Clip Clip(string name) => Clips.Single(clip => clip.Name == name);

    /// <summary>The index of a joint's node, which is the same in the delivered file and in the baked one.</summary>
    public int NodeOf(string joint) => nodes.IndexOf(joint);

    /// <summary>The live rig at frames of a clip, at 30 a second; it is one instance, evaluated anew for each.</summary>
    public IEnumerable<(float Time, RigInstance Live)> Frames(string name, float from = 0, float to = float.PositiveInfinity, int every = 1)
    {
        var clip = Clip(name);
        var (live, player) = (Rig.NewInstance(), new ClipPlayer(Rig, clip));
        for (var frame = MathF.Round(from * 30); frame <= MathF.Round(Math.Min(to, clip.Seconds) * 30); frame += every)
        {
            player.Pose(live, frame / 30);
            live.Evaluate();
            yield return (frame / 30, live);
        }
    }

    public void Dispose()
    {
        folder.Delete(recursive: true);
        GC.SuppressFinalize(this);
    }
}

/// <summary>The dock worker.</summary>
public sealed class BakedStevedore() : BakedRig(new Stevedore(), "stevedore.gltf", new StevedoreClips());

/// <summary>The gull.</summary>
public sealed class BakedGull() : BakedRig(new Gull(), "gull.gltf", new GullClips());

/// <summary>The crane.</summary>
public sealed class BakedCrane() : BakedRig(new Crane(), "crane.gltf", new CraneClips());

/// <summary>All tests of a rig take the same bake.</summary>
[CollectionDefinition("stevedore")]
public sealed class StevedoreCollection : ICollectionFixture<BakedStevedore>;

/// <inheritdoc cref="StevedoreCollection"/>
[CollectionDefinition("gull")]
public sealed class GullCollection : ICollectionFixture<BakedGull>;

/// <inheritdoc cref="StevedoreCollection"/>
[CollectionDefinition("crane")]
public sealed class CraneCollection : ICollectionFixture<BakedCrane>;
