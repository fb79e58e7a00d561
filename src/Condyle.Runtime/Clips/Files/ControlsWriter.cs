using System.Numerics;
using System.Text.Json.Nodes;
using Condyle.Evaluation;
using Condyle.Runtime.Gltf;

namespace Condyle.Runtime.Clips.Files;

/// <summary>Adds a rig's controls to a delivered file, at the level of its JSON.</summary>
internal sealed class ControlsWriter
{
    /// <summary>The node that holds all controls.</summary>
    private const string Holder = "condyle_controls";

    private readonly CompiledRig rig;
    private readonly JsonObject json;
    private readonly HashSet<string> taken;
    private readonly OutlineMeshes meshes;
    private readonly Dictionary<(NodeUse, int), int> nodeOf = [];

    private ControlsWriter(CompiledRig rig, GltfFile delivered)
    {
        this.rig = rig;
        json = delivered.ParseJson();
        meshes = new OutlineMeshes(json);
        taken = [.. List("nodes").Select(node => node!["name"] is JsonValue name && name.TryGetValue(out string? text) ? text : "")];
    }

    public static GltfFile Add(CompiledRig rig, GltfFile delivered, IReadOnlyList<Clip> clips)
    {
        var writer = new ControlsWriter(rig, delivered);
        writer.AddNodes();
        var outlines = writer.meshes.Buffer();
        var motion = new ControlAnimations(writer.json, rig, (use, index) => writer.nodeOf[(use, index)]).Add(clips);
        return delivered.With(writer.json, [.. delivered.Buffers, outlines, .. motion is null ? Array.Empty<GltfBuffer>() : [motion]]);
    }

    private void AddNodes()
    {
        var holder = Add(Unique(Holder), null);
        Node(holder)["extras"] = new JsonObject { ["condyleRig"] = rig.Name };
        Show(holder);
        var looks = new ControlLooks(rig);
        var controls = rig.LimbTable.Controls.ToList();
        var worlds = controls.Select(control => rig.LimbTable.Rest.WorldOf(control)).ToList();
        foreach (var control in rig.Controls.OrderBy(control => rig.ControlTree.DepthOf(control.Index)))
        {
            var above = rig.ControlTree.Above(control.Index);
            var local = above is { } carrier ? worlds[carrier].Inverse() * worlds[control.Index] : worlds[control.Index];
            var placement = Add(Unique($"{control.Name}_placement"), above is null ? holder : nodeOf[(NodeUse.Control, above.Value)]);
            Place(placement, local);
            var node = Add(Unique(control.Name, ControlNodes.Suffix), placement);
            nodeOf[(NodeUse.Control, control.Index)] = node;
            AddControl(Node(node), control, looks.Of(control, controls[control.Index]));
        }

        foreach (var sw in rig.Switches)
            AddSetting(sw.Name, sw.AtRest, NodeUse.Switch, sw.Index, sw.AlsoKnownAs, new JsonObject { ["condyleFrom"] = 0, ["condyleTo"] = 1 });
        foreach (var dial in rig.Dials)
            AddSetting(dial.Name, dial.AtRest, NodeUse.Dial, dial.Index, dial.AlsoKnownAs, new JsonObject { ["condyleFrom"] = dial.From, ["condyleTo"] = dial.To, ["condyleUnit"] = Word(dial.Unit) });
        foreach (var choice in rig.Choices)
            AddSetting(choice.Name, 0, NodeUse.Choice, choice.Index, choice.AlsoKnownAs, new JsonObject { ["condyleOptions"] = new JsonArray([.. choice.Options.Select(option => (JsonNode)option)]) });
    }

    private void AddControl(JsonObject node, CompiledControl control, ControlLook look)
    {
        node["mesh"] = meshes.For(look);
        var extras = new JsonObject { [ControlNodes.Members[(int)NodeUse.Control]] = control.Name };
        if (control.Locked != Channels.None)
            extras["condyleLocked"] = new JsonArray([.. ChannelNames.Each(control.Locked).Select(channel => (JsonNode)ChannelNames.Say(channel))]);
        if (control.Limits.Count > 0)
            extras["condyleLimits"] = new JsonArray([.. control.Limits.Select(Limit)]);
        if (look.Layer.Length > 0)
            extras["condyleLayer"] = look.Layer;
        extras["condyleShape"] = Word(look.Shape);
        extras["condyleTint"] = Word(look.Tint);
        node["extras"] = extras;
    }

    private static JsonNode Limit(CompiledLimit limit)
    {
        var written = new JsonObject { ["channel"] = ChannelNames.Say(limit.Turns ? ChannelNames.Turn(limit.Axis) : ChannelNames.Move(limit.Axis)) };
        if (float.IsFinite(limit.From))
            written["from"] = limit.From;
        if (float.IsFinite(limit.To))
            written["to"] = limit.To;
        return written;
    }

    private void AddSetting(string name, float atRest, NodeUse use, int index, IReadOnlyList<string> otherNames, JsonObject extras)
    {
        var control = rig.ControlIndex(name[..name.LastIndexOf('.')]);
        nodeOf[(use, index)] = Add(Unique(name), nodeOf[(NodeUse.Control, control)]);
        var node = Node(nodeOf[(use, index)]);
        if (atRest != 0)
            node["translation"] = new JsonArray(atRest, 0, 0);
        extras.Insert(0, ControlNodes.Members[(int)use], name);
        extras["condyleAtRest"] = atRest;
        extras["condyleValue"] = atRest;
        if (otherNames.Count > 0)
            extras["condyleAlsoKnownAs"] = new JsonArray([.. otherNames.Select(other => (JsonNode)other)]);
        node["extras"] = extras;
    }

    private void Place(int index, Affine3d local)
    {
        var stands = local.ToTrs(Vector3d.One);
        var (t, r, s) = (stands.Translation.ToSingle(), Quaternion.Normalize(stands.Rotation.ToSingle()), stands.Scale.ToSingle());
        if (t != Vector3.Zero)
            Node(index)["translation"] = new JsonArray(t.X, t.Y, t.Z);
        if (r != Quaternion.Identity)
            Node(index)["rotation"] = new JsonArray(r.X, r.Y, r.Z, r.W);
        if (s != Vector3.One)
            Node(index)["scale"] = new JsonArray(s.X, s.Y, s.Z);
    }

    private int Add(string name, int? parent)
    {
        var nodes = List("nodes");
        nodes.Add(new JsonObject { ["name"] = name });
        if (parent is { } above)
        {
            if (Node(above)["children"] is not JsonArray children)
                Node(above)["children"] = children = [];
            children.Add(nodes.Count - 1);
        }

        return nodes.Count - 1;
    }

    /// <summary>Puts a node into the scene that programs show.</summary>
    private void Show(int node)
    {
        var scenes = List("scenes");
        if (scenes.Count == 0)
        {
            scenes.Add(new JsonObject());
            json["scene"] = 0;
        }

        var shown = scenes[(int)(json["scene"]?.GetValue<double>() ?? 0)]!.AsObject();
        if (shown["nodes"] is not JsonArray nodes)
            shown["nodes"] = nodes = [];
        nodes.Add(node);
    }

    private string Unique(string name, string suffix = "")
    {
        if (taken.Add(name))
            return name;
        name += suffix;
        for (var number = suffix.Length > 0 ? 1 : 2; ; number++)
        {
            var candidate = number == 1 ? name : $"{name}_{number}";
            if (taken.Add(candidate))
                return candidate;
        }
    }

    private JsonObject Node(int index) => List("nodes")[index]!.AsObject();

    private JsonArray List(string name)
    {
        if (json[name] is not JsonArray list)
            json[name] = list = [];
        return list;
    }

    private static string Word(Enum value) => value.ToString().ToLowerInvariant();
}
