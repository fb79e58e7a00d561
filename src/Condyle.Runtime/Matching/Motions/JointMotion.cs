using Condyle.Evaluation;
using Condyle.Runtime.Capture;
using Condyle.Runtime.Clips.Files;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Reading;
using Condyle.Runtime.Matching.Motions;

namespace Condyle.Runtime;

/// <summary>Motion of a skeleton's joints as a file has it: of an older skeleton, of another character, of an actor. <see cref="MotionMatch"/> puts it onto a rig's controls.</summary>
public sealed class JointMotion
{
    internal JointMotion(string file, string name, float seconds, float? framesPerSecond, IReadOnlyList<SourceJoint> joints, double? lowest)
    {
        (File, Name, Seconds, FramesPerSecond, Joints, Lowest) = (file, name, seconds, framesPerSecond, joints, lowest);
        JointNames = [.. joints.Select(joint => joint.Name).Where(given => given.Length > 0)];
    }

    /// <summary>The file that it was read from.</summary>
    public string File { get; }

    /// <summary>The motion's name: the animation's, or that of the file.</summary>
    public string Name { get; }

    /// <summary>Its length in seconds.</summary>
    public float Seconds { get; }

    /// <summary>The frames per second at which it was recorded; none for an animation by keys.</summary>
    public float? FramesPerSecond { get; }

    /// <summary>The joints' names, parents before children.</summary>
    public IReadOnlyList<string> JointNames { get; }

    internal IReadOnlyList<SourceJoint> Joints { get; }

    /// <summary>How low the skeleton reaches at rest, where the file doesn't say how high it stands there: it is taken to stand on the ground at the origin.</summary>
    internal double? Lowest { get; }

    /// <summary>Reads motion capture in the BVH format. Its unit of length doesn't matter: moves are scaled by how high the hips are on both skeletons.</summary>
    /// <param name="path">The file.</param>
    /// <param name="up">The file's axis that points up: Y, as is usual, or Z.</param>
    /// <returns>The motion.</returns>
    /// <exception cref="BadInputException">The file can't be read; the message names the line.</exception>
    public static JointMotion FromBvh(string path, Axis up = Axis.Y)
    {
        ArgumentNullException.ThrowIfNull(path);
        return BvhReader.Read(path, up);
    }

    /// <summary>Reads an animation of a glTF file's joints.</summary>
    /// <param name="path">A <c>.gltf</c> or <c>.glb</c> file.</param>
    /// <param name="clip">The animation's name; null: the file has one only.</param>
    /// <returns>The motion.</returns>
    /// <exception cref="BadInputException">The file can't be read, or has no such animation.</exception>
    public static JointMotion FromGltf(string path, string? clip = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        var file = GltfFile.Read(path);
        var root = new JsonSpot(path, "", file.ParseJson());
        var animation = Choose(root, clip);
        var samplers = animation["samplers"].Items;
        var skeleton = GltfSkeleton.Read(file);
        var (nodes, joints) = (root["nodes"].Items.Length, skeleton.Joints.Select(joint => joint.Node).ToHashSet());
        var (moves, turns, seconds) = (new Dictionary<int, VectorTrack>(), new Dictionary<int, TurnTrack>(), 0f);
        foreach (var channel in animation["channels"].Items)
        {
            if (AnimatedPart.Of(channel, nodes) is not { Path: "translation" or "rotation" } part || !joints.Contains(part.Node))
                continue;
            var sampler = Sampler.Of(file, root, samplers[channel["sampler"].IndexInto(samplers.Length, "samplers in this animation")]);
            seconds = Math.Max(seconds, sampler.Times[^1]);
            if (part.Path == "translation")
                moves[part.Node] = sampler.Vectors().Fill(new VectorTrack());
            else
                turns[part.Node] = sampler.Turns().Fill(new TurnTrack { KeepsSigns = true });
        }

        var name = animation["name"].Text is { Length: > 0 } given ? given : Path.GetFileNameWithoutExtension(path);
        if (moves.Count + turns.Count == 0)
            throw new BadInputException(path, "moves no joint of the file's skeleton", "Name an animation of the joints", name);
        return new JointMotion(path, name, seconds, null, [.. skeleton.Joints.Select(joint => new SourceJoint(
            joint.Name,
            joint.Parent,
            new Trs(joint.Translation, ((Quaterniond)joint.Rotation).Normalized(), joint.Scale),
            moves.GetValueOrDefault(joint.Node),
            turns.GetValueOrDefault(joint.Node)))], lowest: null);
    }

    /// <summary>The joints' frames in the world, at a time or at rest, in the order of <see cref="Joints"/>.</summary>
    internal Affine3d[] Worlds(float? time)
    {
        var worlds = new Affine3d[Joints.Count];
        foreach (var (index, joint) in Joints.Index())
        {
            var local = (time is { } at ? joint.At(at) : joint.Rest).ToAffine();
            worlds[index] = joint.Parent < 0 ? local : worlds[joint.Parent] * local;
        }

        return worlds;
    }

    private static JsonSpot Choose(JsonSpot root, string? clip)
    {
        var all = root["animations"].Items;
        var names = all.Select(animation => animation["name"].Text ?? "").ToList();
        return clip is null && all.Length == 1 ? all[0]
            : clip is not null && names.IndexOf(clip) is var found and >= 0 ? all[found]
            : throw new BadInputException(
                root.File,
                clip is null ? $"it has {all.Length} animations" : $"it has no animation '{clip}'",
                all.Length == 0 ? "Name a file with an animation" : $"Say which, in the program by --animation: {string.Join(", ", names.Take(10).Select(name => $"'{name}'"))}");
    }
}
