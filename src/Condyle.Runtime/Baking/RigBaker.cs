using Condyle.Runtime.Baking;
using Condyle.Runtime.Gltf;

namespace Condyle.Runtime;

/// <summary>
/// Bakes clips of a rig into the file that its skeleton was delivered in. <see cref="Prepare(CompiledRig, string, IReadOnlyList{Clip}, BakeSettings?)"/> finds all that can be wrong with the input;
/// only then is anything baked, and only a finished file is written.
/// </summary>
public sealed class RigBaker
{
    private readonly CompiledRig rig;
    private readonly GltfFile delivered;
    private readonly SkeletonMatch match;
    private readonly MorphMatch morphs;
    private readonly IReadOnlyList<ClipPlayer> players;
    private readonly BakeSettings settings;
    private readonly Action<Clip, BadInputException>? failed;

    private RigBaker(CompiledRig rig, GltfFile delivered, IReadOnlyList<ClipPlayer> players, BakeSettings settings, Action<Clip, BadInputException>? failed)
    {
        (this.rig, this.delivered, this.players, this.settings, this.failed) = (rig, delivered, players, settings, failed);
        match = SkeletonMatch.Of(rig, delivered);
        morphs = MorphMatch.Of(rig, delivered);
        Rest = RestReport.Of(rig, match.Rest);
    }

    /// <summary>The file that the skeleton was delivered in.</summary>
    internal GltfFile Delivered => delivered;

    /// <summary>The clips that can be baked, as far as can be told before.</summary>
    internal IReadOnlyList<Clip> Clips => [.. players.Select(player => player.Clip)];

    /// <summary>Which node of it each joint is.</summary>
    internal SkeletonMatch Match => match;

    /// <summary>How the rig at rest compares with the skeleton as delivered.</summary>
    public RestReport Rest { get; }

    /// <summary>Joints of the file that the rig doesn't declare; they keep their rest.</summary>
    public IReadOnlyList<string> JointsNotInRig => match.NotInRig;

    /// <summary>Bakes clips and writes the delivered file with them: all in one call.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="skeletonFile">The <c>.gltf</c> or <c>.glb</c> file that its skeleton was delivered in.</param>
    /// <param name="clips">The clips, each with its own name.</param>
    /// <param name="output">The file to write, <c>.glb</c> or <c>.gltf</c>; not the delivered one.</param>
    /// <param name="settings">The frame rate and so on; defaults when null.</param>
    /// <param name="progress">Told how far each clip is.</param>
    /// <param name="cancellation">Stops the bake between frames; nothing is written then.</param>
    /// <returns>What was written, and how it compares with the live motion.</returns>
    /// <exception cref="BadInputException">A file, a clip or a setting can't be used; the message says which and why. Nothing is written.</exception>
    public static RigBakeResult Run(
        CompiledRig rig,
        string skeletonFile,
        IReadOnlyList<Clip> clips,
        string output,
        BakeSettings? settings = null,
        IProgress<BakeProgress>? progress = null,
        CancellationToken cancellation = default) => Prepare(rig, skeletonFile, clips, settings).Write(output, progress, cancellation);

    /// <summary>Reads the delivered file and checks that the rig and the clips fit it.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="skeletonFile">The file that its skeleton was delivered in.</param>
    /// <param name="clips">The clips, each with its own name.</param>
    /// <param name="settings">The frame rate and so on; defaults when null.</param>
    /// <returns>The baker, ready to write.</returns>
    /// <exception cref="BadInputException">A file, a clip or a setting can't be used; the message says which and why.</exception>
    public static RigBaker Prepare(CompiledRig rig, string skeletonFile, IReadOnlyList<Clip> clips, BakeSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(skeletonFile);
        ArgumentNullException.ThrowIfNull(clips);
        Runtime.Bake.CheckBakeable(rig);
        var players = Players(rig, clips, settings ??= new BakeSettings(), failed: null);
        return new RigBaker(rig, GltfFile.Read(skeletonFile), players, settings, failed: null);
    }

    /// <summary>The same for a file that was read.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="delivered">The file that its skeleton was delivered in.</param>
    /// <param name="clips">The clips.</param>
    /// <param name="settings">The frame rate and so on.</param>
    /// <param name="failed">Takes a clip that can't be baked, now or later, and why; null where that stops it all.</param>
    internal static RigBaker Prepare(CompiledRig rig, GltfFile delivered, IReadOnlyList<Clip> clips, BakeSettings settings, Action<Clip, BadInputException>? failed = null)
    {
        Runtime.Bake.CheckBakeable(rig);
        return new RigBaker(rig, delivered, Players(rig, clips, settings, failed), settings, failed);
    }

    /// <summary>Bakes the clips and writes nothing.</summary>
    internal List<BakedClip> Bake(IProgress<BakeProgress>? progress, CancellationToken cancellation)
    {
        var baked = new List<BakedClip>();
        foreach (var player in players)
        {
            try
            {
                baked.Add(Runtime.Bake.Run(player, match.Rest, settings, progress, cancellation));
            }
            catch (BadInputException problem) when (failed is not null)
            {
                failed(player.Clip, problem);
            }
        }

        return baked;
    }

    private GltfClip ToGltf(BakedClip clip)
    {
        var joints = match.ToGltf(clip);
        return joints with { Tracks = [.. joints.Tracks, .. morphs.Tracks(clip)] };
    }

    /// <summary>Checks that the rig fits a file, and has the joint whose way is asked for.</summary>
    /// <exception cref="BadInputException">It can't be baked into it.</exception>
    internal static void CheckFits(CompiledRig rig, GltfFile delivered, RootMotion way)
    {
        _ = Travel.Of(rig, way);
        Runtime.Bake.CheckBakeable(rig);
        _ = SkeletonMatch.Of(rig, delivered);
        _ = MorphMatch.Of(rig, delivered);
    }

    private static List<ClipPlayer> Players(CompiledRig rig, IReadOnlyList<Clip> clips, BakeSettings settings, Action<Clip, BadInputException>? failed)
    {
        if (clips.Count == 0 && failed is null)
            throw new BadInputException($"rig '{rig.Name}'", "there is no clip to bake", "Give at least one clip");
        _ = Travel.Of(rig, settings.RootMotion);
        var (players, names) = (new List<ClipPlayer>(), new HashSet<string>(StringComparer.Ordinal));
        foreach (var clip in clips)
        {
            try
            {
                if (!names.Add(clip.Name))
                    throw new BadInputException($"rig '{rig.Name}'", $"two clips are named '{clip.Name}'", "Give each clip its own name");
                var player = new ClipPlayer(rig, clip);
                _ = FrameTimes.Of(clip, settings);
                players.Add(player);
            }
            catch (BadInputException problem) when (failed is not null)
            {
                failed(clip, problem);
            }
        }

        return players;
    }

    /// <summary>Bakes the clips, appends them to the delivered file and writes the result.</summary>
    /// <param name="output">The file to write, <c>.glb</c> or <c>.gltf</c>; not the delivered one.</param>
    /// <param name="progress">Told how far each clip is.</param>
    /// <param name="cancellation">Stops the bake between frames; nothing is written then.</param>
    /// <returns>What was written, and how it compares with the live motion.</returns>
    /// <exception cref="BadInputException">A joint gets a value that is no finite number, or the file can't be written. Nothing is written.</exception>
    public RigBakeResult Write(string output, IProgress<BakeProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(output);
        if (Path.GetFullPath(output) == Path.GetFullPath(delivered.Path))
            throw new BadInputException(output, "the output is the delivered file itself", "Write to another place: the delivered file is what the next bake starts from");
        return Write(output, Bake(progress, cancellation));
    }

    /// <summary>Appends baked clips to the delivered file and writes the result.</summary>
    internal RigBakeResult Write(string output, IReadOnlyList<BakedClip> baked)
    {
        delivered.Append([.. baked.Select(ToGltf)], settings.ReplaceClips).Write(output);
        return new RigBakeResult(rig.Name, output, new FileInfo(output).Length, Rest, [.. baked.Select(clip => clip.Report)], JointsNotInRig);
    }
}
