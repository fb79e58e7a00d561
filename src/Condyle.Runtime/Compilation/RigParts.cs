using Condyle.Model;

namespace Condyle.Runtime.Compilation;

/// <summary>What the outside sees of a compiled rig, and the names by which it finds it.</summary>
internal sealed class RigParts
{
    private RigParts(RigModel model)
    {
        Controls = [.. model.Nodes.Where(node => node.Kind == NodeKind.Control).Select(ControlOf)];
        Switches = [.. model.Switches.Select(SwitchOf)];
        Joints = JointsOf(model);
        Labels = [.. model.Labels.Select((label, index) =>
            new CompiledLabel(index, Facts.Known(label.Name, "The name of a label"), Facts.Known(label.Shows, $"The text of {label.Title}")))];
        ControlNames = NameTable.Of("control", Controls.Select(control => control.Name));
        SwitchNames = NameTable.Of("switch", Switches.Select(given => given.AlsoKnownAs.Prepend(given.Name)));
        JointNames = NameTable.Of("joint", Joints.Select(joint => joint.Name));
    }

    public IReadOnlyList<CompiledControl> Controls { get; }

    public IReadOnlyList<CompiledSwitch> Switches { get; }

    public IReadOnlyList<CompiledJoint> Joints { get; }

    public IReadOnlyList<CompiledLabel> Labels { get; }

    public NameTable ControlNames { get; }

    public NameTable SwitchNames { get; }

    public NameTable JointNames { get; }

    /// <exception cref="RigGeometryException">Something isn't known, or two things of one kind have the same name.</exception>
    public static RigParts Of(RigModel model) => new(model);

    private static CompiledControl ControlOf(RigNode control, int index)
    {
        if (control.LimitsAreOpen)
            throw new RigGeometryException($"The limits of {control.Title} aren't known.");
        return new(index, NameOf(control), Facts.Known(control.Locked, $"What is locked on {control.Title}"), [.. control.Limits.Select(limit =>
            new CompiledLimit(limit.Turns, limit.Axis, Facts.Known(limit.From, $"A limit of {control.Title}"), Facts.Known(limit.To, $"A limit of {control.Title}")))]);
    }

    private static CompiledSwitch SwitchOf(RigSwitch given, int index)
    {
        if (given.PlacesAreOpen || given.Control is not { } control)
            throw new RigGeometryException($"The controls that {given.Title} is shown on aren't known.");
        var atRest = Facts.Known(given.AtRest, $"The default of {given.Title}");
        if (!(atRest >= 0 && atRest <= 1))
            throw new RigGeometryException($"{given.Title} on {control.Title} is {Invariant.Print(atRest)} at rest. Give a default from 0 to 1.");
        var name = Facts.Known(given.Name, $"The name of a switch on {control.Title}");
        return new(index, $"{NameOf(control)}.{name}", [.. given.AlsoOn.Distinct().Where(other => other != control).Select(other =>
            $"{NameOf(other ?? throw new RigGeometryException($"A control that {given.Title} is shown on isn't known."))}.{name}")], atRest);
    }

    private static List<CompiledJoint> JointsOf(RigModel model)
    {
        var joints = new List<CompiledJoint>();
        var indices = new Dictionary<RigNode, int>();
        foreach (var joint in model.Nodes.Where(node => node.IsExported))
        {
            var parent = Facts.Known(joint.Parent, $"What {joint.Title} hangs under") is { } above ? indices[above] : -1;
            var rest = Facts.Known(joint.Rest, $"The rest of {joint.Title}");
            indices[joint] = joints.Count;
            joints.Add(new(joints.Count, NameOf(joint), parent, Facts.Known(joint.Role, $"What {joint.Title} is for"), rest.Translation, rest.Rotation, rest.Scale));
        }

        return joints;
    }

    private static string NameOf(RigNode node) => Facts.Known(node.Name, "The name of a node");
}
