using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Compilation;

/// <summary>What the outside sees of a compiled rig, and the names by which it finds it.</summary>
internal sealed class RigParts
{
    private RigParts(RigModel model)
    {
        List<RigNode> controls = [.. model.Nodes.Where(node => node.Kind == NodeKind.Control)];
        Controls = [.. controls.Select(ControlOf)];
        Switches = [.. model.Switches.Select(SwitchOf)];
        Dials = [.. model.Dials.Select(DialOf)];
        Choices = [.. model.Choices.Select(ChoiceOf)];
        Morphs = [.. RigResponses.Of(model).Morphs.Select(MorphOf)];
        Joints = JointsOf(model);
        Labels = [.. model.Labels.Select((label, index) =>
            new CompiledLabel(index, Facts.Known(label.Name, "The name of a label"), Facts.Known(label.Shows, $"The text of {label.Title}")))];
        ControlNames = NameTable.Of("control", Controls.Select(control => control.Name), controls);
        SwitchNames = NameTable.Of("switch", Switches.Select(given => given.AlsoKnownAs.Prepend(given.Name)), model.Switches);
        DialNames = NameTable.Of("dial", Dials.Select(dial => dial.AlsoKnownAs.Prepend(dial.Name)), model.Dials);
        ChoiceNames = NameTable.Of("choice", Choices.Select(choice => choice.AlsoKnownAs.Prepend(choice.Name)), model.Choices);
        MorphNames = NameTable.Of("morph target", Morphs.Select(morph => $"{morph.Mesh}.{morph.Target}"));
        NameTable.Of("switch, dial or choice", Switches.SelectMany(given => given.AlsoKnownAs.Prepend(given.Name))
            .Concat(Dials.SelectMany(dial => dial.AlsoKnownAs.Prepend(dial.Name)))
            .Concat(Choices.SelectMany(choice => choice.AlsoKnownAs.Prepend(choice.Name))));
        JointNames = NameTable.Of("joint", Joints.Select(joint => joint.Name));
    }

    public IReadOnlyList<CompiledControl> Controls { get; }

    public IReadOnlyList<CompiledSwitch> Switches { get; }

    public IReadOnlyList<CompiledDial> Dials { get; }

    public IReadOnlyList<CompiledChoice> Choices { get; }

    public IReadOnlyList<CompiledMorph> Morphs { get; }

    public IReadOnlyList<CompiledJoint> Joints { get; }

    public IReadOnlyList<CompiledLabel> Labels { get; }

    public NameTable ControlNames { get; }

    public NameTable SwitchNames { get; }

    public NameTable DialNames { get; }

    public NameTable ChoiceNames { get; }

    public NameTable MorphNames { get; }

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
        var (name, others) = NamesOf(given);
        var atRest = Facts.Known(given.AtRest, $"The default of {given.Title}");
        return atRest >= 0 && atRest <= 1
            ? new(index, name, others, atRest)
            : throw new RigGeometryException($"{given.Title} on {given.Control!.Title} is {Invariant.Print(atRest)} at rest. Give a default from 0 to 1.", given);
    }

    private static CompiledDial DialOf(RigDial dial, int index)
    {
        var ((name, others), range) = (NamesOf(dial), DialRange.Of(dial));
        return new(index, name, others, Facts.Known(dial.Unit, $"The unit of {dial.Title}"), range.From, range.To, range.AtRest);
    }

    private static CompiledChoice ChoiceOf(RigChoice choice, int index)
    {
        var (name, others) = NamesOf(choice);
        if (choice.OptionsAreOpen)
            throw new RigGeometryException($"The options of {choice.Title} aren't known.");
        if (choice.Options.Count == 0)
            throw new RigGeometryException($"{choice.Title} on {choice.Control!.Title} has no option. Give it one, or remove it.", choice);
        List<string> options = [.. choice.Options.Select(option => Facts.Known(option.Name, $"An option of {choice.Title}"))];
        NameTable.Of($"option of {choice.Title}", options);
        return new(index, name, others, options);
    }

    private static CompiledMorph MorphOf(MorphResponses morph, int index) =>
        new(index, Facts.Known(morph.Name.Mesh, "The name of a mesh"), Facts.Known(morph.Name.Target, "The name of a morph target"));

    /// <summary>The name of a setting with the control that it was made on, and with each further one.</summary>
    private static (string Name, IReadOnlyList<string> Others) NamesOf(RigSetting setting)
    {
        if (setting.PlacesAreOpen || setting.Control is not { } control)
            throw new RigGeometryException($"The controls that {setting.Title} is shown on aren't known.");
        var name = Facts.Known(setting.Name, $"The name of a setting on {control.Title}");
        return ($"{NameOf(control)}.{name}", [.. setting.AlsoOn.Distinct().Where(other => other != control).Select(other =>
            $"{NameOf(other ?? throw new RigGeometryException($"A control that {setting.Title} is shown on isn't known."))}.{name}")]);
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
