using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Clips.Files;

/// <summary>What a node of a clip's file stands for.</summary>
internal enum NodeUse
{
    Control,
    Switch,
    Dial,
    Choice,
}

/// <summary>A control, switch, dial or choice of a rig, by its name and its index.</summary>
internal readonly record struct ControlNode(NodeUse Use, int Index, string Name);

/// <summary>Which node of a file stands for what of a rig.</summary>
internal sealed class ControlNodes
{
    /// <summary>The members of a node's extras that say what it stands for, by use.</summary>
    public static readonly IReadOnlyList<string> Members = ["condyleControl", "condyleSwitch", "condyleDial", "condyleChoice"];

    /// <summary>What the name of a control's node ends in where the character has a node of the control's name.</summary>
    public const string Suffix = "_control";

    private readonly NodeTree tree;
    private readonly ControlNode?[] uses;
    private readonly bool[] marked;

    public ControlNodes(NodeTree tree, CompiledRig rig)
    {
        this.tree = tree;
        uses = new ControlNode?[tree.Nodes.Count];
        marked = new bool[tree.Nodes.Count];
        var known = Everything(rig);
        MarkByExtras(known);
        FindByNames(known, rig);
    }

    /// <summary>What a node stands for; nothing of the rig: null.</summary>
    public ControlNode? this[int node] => uses[node];

    /// <summary>Whether the node's extras say what it stands for, so that where it stands without being animated is meant too.</summary>
    public bool IsMarked(int node) => marked[node];

    private static List<ControlNode> Everything(CompiledRig rig) =>
    [
        .. rig.Controls.Select(control => new ControlNode(NodeUse.Control, control.Index, control.Name)),
        .. rig.Switches.SelectMany(given => given.AlsoKnownAs.Prepend(given.Name).Select(name => new ControlNode(NodeUse.Switch, given.Index, name))),
        .. rig.Dials.SelectMany(dial => dial.AlsoKnownAs.Prepend(dial.Name).Select(name => new ControlNode(NodeUse.Dial, dial.Index, name))),
        .. rig.Choices.SelectMany(choice => choice.AlsoKnownAs.Prepend(choice.Name).Select(name => new ControlNode(NodeUse.Choice, choice.Index, name))),
    ];

    private void MarkByExtras(List<ControlNode> known)
    {
        var byUse = known.ToDictionary(item => (item.Use, item.Name));
        for (var node = 0; node < uses.Length; node++)
        {
            if (tree.Nodes[node]["extras"].Value is not JsonObject extras)
                continue;
            foreach (var (use, member) in Members.Index())
            {
                if (extras[member] is JsonValue value && value.TryGetValue(out string? name) && byUse.TryGetValue(((NodeUse)use, name), out var found))
                    (uses[node], marked[node]) = (found, true);
            }
        }
    }

    // Some programs take dots out of names, or put underscores there.
    private void FindByNames(List<ControlNode> known, CompiledRig rig)
    {
        var taken = uses.OfType<ControlNode>().Select(use => (use.Use, use.Index)).ToHashSet();
        var names = new Dictionary<string, ControlNode>(StringComparer.Ordinal);
        foreach (var spelt in (ReadOnlySpan<Func<string, string>>)[name => name, name => name.Replace(".", "", StringComparison.Ordinal), name => name.Replace('.', '_'), name => name + Suffix])
        {
            foreach (var item in known.Where(item => !taken.Contains((item.Use, item.Index))))
                names.TryAdd(spelt(item.Name), item);
        }

        var joints = rig.Joints.Select(joint => joint.Name).ToHashSet(StringComparer.Ordinal);
        for (var node = 0; node < uses.Length; node++)
        {
            if (uses[node] is not null || tree.Nodes[node]["name"].Text is not { } name || !names.TryGetValue(name, out var found))
                continue;
            if (!tree.MovesSkin(node) && !(joints.Contains(name) && tree.HasSkins))
                uses[node] = found;
        }
    }
}
