using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>Which control each control is under: the nearest one that carries what it hangs under, or the first of its spaces.</summary>
internal sealed class ControlTree
{
    private const int None = -1;

    private readonly int[] above;

    public ControlTree(LimbTable rig) => above = [.. rig.Controls.Select(control => rig.HandleOf(WhatCarries(control, rig.Model))?.Index ?? None)];

    /// <summary>The control that a control is under.</summary>
    public int? Above(int control) => above[control] is var found and not None ? found : null;

    /// <summary>How many controls a control is under.</summary>
    public int DepthOf(int control)
    {
        var depth = 0;
        while (depth <= above.Length && above[control] != None)
            (control, depth) = (above[control], depth + 1);
        return depth;
    }

    /// <summary>Whether a control is another one or under it, by their indices in <see cref="CompiledRig.Controls"/>.</summary>
    public bool IsUnder(int control, int top)
    {
        for (var steps = 0; control != None && steps <= above.Length; control = above[control], steps++)
        {
            if (control == top)
                return true;
        }

        return false;
    }

    private static RigNode? WhatCarries(RigNode control, RigModel model) =>
        model.Spaces.FirstOrDefault(space => space.Control == control) is { Parents: [{ Node: { } first }, ..] }
            ? first
            : Facts.Known(control.Parent, $"What {control.Title} hangs under");
}
