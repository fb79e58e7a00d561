namespace Condyle.Tests.Shared;

/// <content>Solvers of copies, with any of their options.</content>
internal sealed partial class RandomRig
{
    private void Solve(RigDraft rig, Chain chain, Copy copy)
    {
        if (choices.Chance(0.3))
            Lay(rig, chain, copy);
        else if (RandomGoal(rig, chain, copy) is not { } goal)
            return;
        else if (chain.Count == 3 && choices.Chance(0.7))
            SolveTwoBones(rig, chain, copy, goal);
        else
            SolveManyBones(rig, chain, copy, goal);
    }

    private void SolveTwoBones(RigDraft rig, Chain chain, Copy copy, Control goal)
    {
        var solver = rig.TwoBone(copy).Reach(goal);
        if (RandomPole(rig, chain, copy) is { } pole)
            solver.Face(pole);
        if (choices.Chance(0.4))
            solver.Stretching(RandomWeight(), choices.Between(1f, 2f));
        if (choices.Chance(0.4))
            solver.Softening(choices.Between(0f, 0.1f));
        if (choices.Chance(0.4))
            TurnPlane(rig, copy, solver);
    }

    private void TurnPlane(RigDraft rig, Copy copy, TwoBone solver)
    {
        Node measured = choices.Of(controls);
        if (choices.Chance(0.5) && !NeedsToKnow(measured, copy.Root))
        {
            Follow(copy.Root, measured);
            solver.TurningPlane(rig.Angle(measured).About(RandomAxis()));
            return;
        }

        var dial = choices.Of(controls).Dial(Name("dial"), -200, 200, choices.Between(-90f, 90f), DialUnit.Degrees);
        dials.Add(dial);
        solver.TurningPlane(dial);
    }

    private void SolveManyBones(RigDraft rig, Chain chain, Copy copy, Control goal)
    {
        var solver = rig.ManyBone(copy).Reach(goal);
        if (RandomPole(rig, chain, copy) is { } pole)
            solver.Face(pole);
        if (choices.Chance(0.2))
            solver.Within(1e-6f, choices.Between(1, 40));
        foreach (var joint in chain.SkipLast(1).Where(_ => choices.Chance(0.1)))
            solver.Limiting(joint, choices.Between(0f, 180f));
    }

    private void Lay(RigDraft rig, Chain chain, Copy copy)
    {
        var curve = rig.Curve(copy);
        var led = new HashSet<Node>(); // through a node twice, a curve would turn back on itself
        Times(choices.Between(2, 4), () =>
        {
            Node node = choices.Chance(0.7) ? NewControl(rig, "node", choices.Of(chain)) : choices.Of(controls);
            if (NeedsToKnow(node, copy.Root) || !led.Add(node))
                return;
            Follow(copy.Root, node);
            curve.Through(node);
        });
        if (choices.Chance(0.5))
            curve.Stretching(RandomWeight());
    }

    private Control? RandomGoal(RigDraft rig, Chain chain, Copy copy)
    {
        var goal = controls[choices.Below(controls.Count)];
        if (choices.Chance(0.7) && !NeedsToKnow(goal, chain.Root))
            goal = NewControl(rig, "goal", chain.Tip);
        if (NeedsToKnow(goal, copy.Root))
            return null;
        Follow(copy.Root, goal);
        return goal;
    }

    private Control? RandomPole(RigDraft rig, Chain chain, Copy copy)
    {
        if (chain.Count < 3 || choices.Chance(0.3))
            return null;
        var pole = rig.Control(Name("pole")).PlacedAt(choices.Chance(0.5) ? copy.PolePoint(0.4f) : chain.PolePoint(0.2f));
        controls.Add(pole);
        Follow(copy.Root, pole);
        return pole;
    }

    private Control NewControl(RigDraft rig, string kind, Node at)
    {
        var control = rig.Control(Name(kind)).PlacedAt(at);
        controls.Add(control);
        return control;
    }
}
