namespace Condyle.Tests.Shared;

/// <content>Dials, choices, measured angles, and what they set.</content>
internal sealed partial class RandomRig
{
    private readonly List<Dial> dials = [];
    private readonly List<(Choice Choice, string[] Options)> picks = [];
    private readonly HashSet<Control> spaced = [];

    private void AddSettings(RigDraft rig)
    {
        Times(choices.Below(4), () => AddDial());
        Times(choices.Below(3), () => AddChoice());
        Times(choices.Below(7), () => AddResponse(rig));
        Times(choices.Below(4), () => AddSpace(rig));
        if (picks.Count > 0 && choices.Chance(0.5))
            AddPickedBlend(rig);
    }

    private void AddDial()
    {
        var (from, to) = (choices.Between(-2f, 0f), choices.Between(0.1f, 2f));
        var dial = choices.Of(controls).Dial(Name("dial"), from, to, choices.Chance(0.5) ? 0 : choices.Between(from, to));
        dials.Add(choices.Chance(0.2) ? dial.AlsoOn(choices.Of(controls)) : dial);
    }

    private void AddChoice()
    {
        var options = Enumerable.Range(0, choices.Between(1, 4)).Select(option => $"option_{option}").ToArray();
        picks.Add((choices.Of(controls).Choice(Name("choice"), options), options));
    }

    /// <summary>A curve of a few keys onto channels and morph targets, from a dial, a switch or an angle.</summary>
    private void AddResponse(RigDraft rig)
    {
        Node? measured = choices.Chance(0.4) ? RandomNode() : null;
        var response = measured is { } node ? rig.Response(rig.Angle(node).About(RandomAxis()))
            : dials.Count > 0 && choices.Chance(0.7) ? rig.Response(choices.Of(dials))
            : switches.Count > 0 ? rig.Response(choices.Of(switches))
            : rig.Response(rig.Control(Name("control")).Switch("amount"));
        var turns = choices.Chance(0.6);
        var (range, most, keys) = (measured is null ? 2 : 180f, turns ? 60 : 0.5f, choices.Between(1, 4));
        for (var key = 0; key < keys; key++)
        {
            var at = ((2 * (key + choices.Between(0.2f, 0.8f)) / keys) - 1) * range;
            response.Key(at, choices.Between(-most, most), choices.Chance(0.5) ? null : choices.Between(-most, most) / range);
        }

        if (choices.Chance(0.4))
            response.Continued();
        if (choices.Chance(0.3))
            response.OntoMorph("mesh", $"morph_{choices.Below(3)}");
        Times(choices.Between(1, 3), () => AddTarget(response, measured, turns, rig));
    }

    private void AddTarget(Response response, Node? measured, bool turns, RigDraft rig)
    {
        var target = choices.Chance(0.3) ? AddGroup(rig) : RandomTarget();
        if (measured is { } node)
        {
            if (NeedsToKnow(node, target))
                return;
            Follow(target, node);
        }

        if (turns)
            response.OntoTurn(target, RandomAxis());
        else if (choices.Chance(0.6))
            response.OntoMove(target, RandomAxis());
        else
            response.OntoScale(target, RandomAxis());
    }

    private void AddSpace(RigDraft rig)
    {
        var control = controls[choices.Below(controls.Count)];
        var (given, options) = picks.Count > 0 && choices.Chance(0.5) ? choices.Of(picks) : default;
        var named = options ?? [.. Enumerable.Range(0, choices.Between(1, 3)).Select(option => $"option_{option}")];
        var parents = named.Select(option => (Option: option, Node: RandomNode())).Where(parent => !NeedsToKnow(parent.Node, control) && choices.Chance(0.9)).ToList();
        if (options is null && (parents.Count == 0 || !spaced.Add(control)))
            return;
        var space = options is null ? rig.Space(control) : rig.Space(control, given);
        foreach (var (option, node) in parents)
        {
            Follow(control, node);
            space.In(option, node);
        }
    }

    private void AddPickedBlend(RigDraft rig)
    {
        var (choice, options) = choices.Of(picks);
        var target = RandomTarget();
        var blend = rig.Blend(target);
        foreach (var option in options)
        {
            var source = RandomNode();
            if (NeedsToKnow(source, target))
                continue;
            Follow(target, source);
            blend.From(source, choice.Is(option));
        }
    }

    private Axis RandomAxis() => (Axis)choices.Below(3);
}
