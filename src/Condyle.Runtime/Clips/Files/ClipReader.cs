using System.Numerics;
using System.Text.Json.Nodes;
using Condyle.Naming;
using Condyle.Runtime.Baking;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Clips.Files;

/// <summary>Reads the animations of a file as clips of a rig.</summary>
internal sealed class ClipReader
{
    private const int MostNames = 5;

    /// <summary>How long a clip is whose keys are all at its start, in seconds.</summary>
    private const float OneFrame = 1 / 30f;

    /// <summary>A node that isn't animated is at rest when it is this close: metres, and the vector part of its rotation.</summary>
    private const float SameMove = 1e-5f, SameTurn = 1e-5f;

    private readonly GltfFile file;
    private readonly CompiledRig rig;
    private readonly JsonSpot root;
    private readonly NodeTree tree;
    private readonly ControlNodes nodes;
    private readonly SortedSet<string> notInRig = new(StringComparer.Ordinal);

    public ClipReader(GltfFile file, CompiledRig rig)
    {
        (this.file, this.rig) = (file, rig);
        root = new JsonSpot(file.Path, "", file.ParseJson());
        tree = new NodeTree(root);
        nodes = new ControlNodes(tree, rig);
    }

    public IReadOnlyList<string> NotInRig => [.. notInRig];

    /// <exception cref="BadInputException">No animation moves a control, or one can't be used.</exception>
    public List<Clip> Clips()
    {
        var animations = root["animations"].Items;
        if (animations.Length == 0)
            throw new BadInputException(file.Path, "it holds no animation", "Animate the controls, and export the file with what moves them");
        var clips = new List<Clip>();
        foreach (var (index, animation) in animations.Index())
        {
            if (Read(animation, index) is { } clip)
                clips.Add(clip);
        }

        if (clips.Count == 0)
            throw new BadInputException(file.Path, $"no animation moves a control of the rig '{rig.Name}'{Instead()}", "Name the nodes after the controls, or start from the controls file of the rig");
        if (clips.GroupBy(clip => clip.Name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { Key: var twice })
            throw new BadInputException(file.Path, $"two animations are named '{twice}'", "Give each its own name");
        return clips;
    }

    private Clip? Read(JsonSpot animation, int index)
    {
        var samplers = animation["samplers"].Items;
        var parts = new List<(AnimatedPart Part, JsonSpot Sampler)>();
        foreach (var channel in animation["channels"].Items)
        {
            if (AnimatedPart.Of(channel, tree.Nodes.Count) is { } part)
                parts.Add((part, samplers[channel["sampler"].IndexInto(samplers.Length, "samplers in this animation")]));
        }

        Note(parts.Select(part => part.Part.Node));
        parts.RemoveAll(part => nodes[part.Part.Node] is null);
        if (parts.Count == 0)
            return null;
        var read = new Dictionary<string, Sampler>(StringComparer.Ordinal);
        foreach (var (part, sampler) in parts)
            read.TryAdd(sampler.Pointer, Sampler.Of(file, root, sampler with { Node = NameOf(part.Node) }));
        var seconds = read.Values.Max(sampler => sampler.Times[^1]);
        var clip = new Clip(NameOf(animation, index), seconds > 0 ? seconds : OneFrame) { File = file.Path };

        var tracks = new ControlTracks(rig, clip);
        var taken = new Dictionary<(NodeUse, int, string), int>();
        foreach (var (part, sampler) in parts)
        {
            var use = nodes[part.Node]!.Value;
            var key = KeyOf(use, part.Path);
            if (!taken.TryAdd(key, part.Node))
                throw sampler.Wrong($"moves '{use.Name}' by the {part.Path} of {Title(part.Node)}, and so does {Title(taken[key])}", "Animate one of them");
            Take(tracks, use, part, read[sampler.Pointer], sampler with { Node = NameOf(part.Node) });
        }

        TakeStill(tracks, [.. taken.Keys]);
        tracks.RefuseLocked();
        TakeMarkers(clip, animation);
        return clip.IsEmpty ? null : clip;
    }

    private static void Take(ControlTracks tracks, ControlNode use, AnimatedPart part, Sampler sampler, JsonSpot spot)
    {
        switch (use.Use, part.Path)
        {
            case (NodeUse.Control, "translation"): tracks.Move(use.Index, sampler.Vectors(), spot); break;
            case (NodeUse.Control, "rotation"): tracks.Turn(use.Index, sampler.Turns(), spot); break;
            case (NodeUse.Control, "scale"): tracks.Scale(use.Index, sampler.Vectors(), spot); break;
            case (not NodeUse.Control, "translation"): Set(tracks, use, sampler.Vectors().Select(value => value.X), spot); break;
            case (not NodeUse.Control, AnimatedPart.Value): Set(tracks, use, sampler.Numbers(), spot); break;
        }
    }

    private static void Set(ControlTracks tracks, ControlNode use, Keys<float> keys, JsonSpot spot)
    {
        switch (use.Use)
        {
            case NodeUse.Switch: tracks.Switch(use.Name, keys, spot); break;
            case NodeUse.Dial: tracks.Dial(use.Index, use.Name, keys, spot); break;
            case NodeUse.Choice: tracks.Choice(use.Index, use.Name, keys, spot); break;
        }
    }

    /// <summary>What a track moves. A switch, a dial or a choice has one value, whichever way the file gives it.</summary>
    private static (NodeUse, int, string) KeyOf(ControlNode use, string path) =>
        (use.Use, use.Index, use.Use != NodeUse.Control && path == "translation" ? AnimatedPart.Value : path);

    /// <summary>
    /// A control that is posed but not animated keeps its pose: many programs leave out tracks whose values are all the same. Of a control's copies the animated one counts, or else the first that is posed.
    /// </summary>
    private void TakeStill(ControlTracks tracks, HashSet<(NodeUse, int, string)> taken)
    {
        for (var node = 0; node < tree.Nodes.Count; node++)
        {
            if (nodes[node] is not { } use || !nodes.IsMarked(node))
                continue;
            var spot = tree.Nodes[node];
            var stands = NodeTransform.Of(spot);
            if (use.Use != NodeUse.Control)
            {
                if (Math.Abs(stands.Translation.X - AtRest(use)) > SameMove && taken.Add(KeyOf(use, "translation")))
                    Set(tracks, use, Held(stands.Translation.X), spot);
                continue;
            }

            if (stands.Translation.Length() > SameMove && taken.Add(KeyOf(use, "translation")))
                tracks.Move(use.Index, Held(stands.Translation), spot);
            if (new Vector3(stands.Rotation.X, stands.Rotation.Y, stands.Rotation.Z).Length() > SameTurn && taken.Add(KeyOf(use, "rotation")))
                tracks.Turn(use.Index, Held(stands.Rotation), spot);
            if (Vector3.Distance(stands.Scale, Vector3.One) > SameMove && taken.Add(KeyOf(use, "scale")))
                tracks.Scale(use.Index, Held(stands.Scale), spot);
        }
    }

    private static Keys<T> Held<T>(T value)
        where T : struct => new([0], [value], null, Interpolation.Step);

    private float AtRest(ControlNode use) => use.Use switch
    {
        NodeUse.Switch => rig.Switches[use.Index].AtRest,
        NodeUse.Dial => rig.Dials[use.Index].AtRest,
        _ => 0,
    };

    private static void TakeMarkers(Clip clip, JsonSpot animation)
    {
        if (animation["extras"] is not { Value: JsonObject } extras || extras[ClipExtras.Markers] is not { Value: JsonArray } markers)
            return;
        foreach (var marker in markers.Items)
        {
            if (marker.Value is JsonObject && marker["name"].Text is { } name)
                clip.Mark((float)Math.Clamp(marker["at"].Number(), 0, clip.Seconds), name);
        }
    }

    private void Note(IEnumerable<int> animated)
    {
        foreach (var node in animated.Where(node => nodes[node] is null && !tree.MovesSkin(node)))
        {
            if (NameOf(node) is var name && !rig.Joints.Any(joint => joint.Name == name))
                notInRig.Add(name);
        }
    }

    private string NameOf(JsonSpot animation, int index) =>
        animation["name"].Text is { Length: > 0 } name && !string.IsNullOrWhiteSpace(name) ? name
        : Path.GetFileNameWithoutExtension(file.Path) + (index == 0 ? "" : $"_{index}");

    private string NameOf(int node) => tree.Nodes[node]["name"].Text is { Length: > 0 } name ? name : $"node_{node}";

    private string Title(int node) => $"node {node} '{NameOf(node)}'";

    private string Instead()
    {
        if (notInRig.Count == 0)
            return "";
        var names = notInRig.Take(MostNames).Select(name => NearestNames.To(name, rig.Controls.Select(control => control.Name), 1) is [var near] ? $"'{name}' (nearest: '{near}')" : $"'{name}'");
        return $"; what moves is {string.Join(", ", names)}{(notInRig.Count > MostNames ? $" and {notInRig.Count - MostNames} more" : "")}";
    }
}
