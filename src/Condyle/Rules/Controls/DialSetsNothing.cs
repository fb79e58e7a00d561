using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY5001: what an animator sets on a dial changes the rig.</summary>
internal sealed class DialSetsNothing : Rule
{
    public override string Id => "CDY5001";

    public override string Title => "Dial that sets nothing";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var model = rig.Model;
        var flat = model.Responses.Where(IsFlat).ToList();
        foreach (var response in flat)
        {
            yield return new Finding(
                this,
                response,
                $"{Wording.First(response.Title)} has the value {Level(response)} all along its curve, so it changes nothing of {Targets(response)}. Give its curve a key with another value.",
                response.Keys[0].Place)
            {
                ActsOn = (response.Source as RigSetting)?.Control ?? (response.Source as RigMeasure)?.Node,
                Related = [.. response.Keys.Skip(1).Select(key => key.Place)],
            };
        }

        if (!model.IsWhole || model.Responses.Exists(response => response.Source is null) || model.TwoBones.Exists(solver => solver.PlaneTurn.IsOpen))
            yield break;
        var used = new HashSet<RigElement?>(model.Responses.Select(response => response.Source).Concat(model.TwoBones.Select(solver => solver.PlaneTurn.TryKnown(out var by) ? by : null)));
        var idle = model.Dials.FindAll(dial => !dial.PlacesAreOpen && !used.Contains(dial));
        var passedOver = idle.Count == 0 ? [] : new HashSet<RigElement>(SourceOnTheOtherSide.PassedOver(rig)); // which CDY3004 says
        foreach (var dial in idle.Where(dial => !passedOver.Contains(dial)))
        {
            yield return new Finding(
                this,
                dial,
                $"{Wording.First(dial.Title)} on {dial.Control?.Title ?? "a control"} sets nothing: no response takes it on. An animator turns it and sees nothing happen. Say what it sets with rig.Response(...), or take it out.",
                dial.Place)
            {
                ActsOn = dial.Control,
            };
        }
    }

    // Onto a channel a response counts from rest; onto a morph target it counts from zero. One without keys is unfinished.
    private static bool IsFlat(RigResponse response) =>
        !response.KeysAreOpen && !response.TargetsAreOpen && response.Targets.Count > 0 && response.Keys.Count > 0 && response.Source is not null
        && response.Keys[0].Value.TryKnown(out var first)
        && response.Keys.TrueForAll(key => key.Value.TryKnown(out var value) && value == first && key.Slope.TryKnown(out var slope) && slope is null or 0)
        && (first == 0 || response.Targets.TrueForAll(target => target.Way != ResponseWay.Morph));

    private static string Level(RigResponse response) => response.Keys[0].Value.TryKnown(out var value) ? Invariant.Short(value) : Text.Hole;

    private static string Targets(RigResponse response) => Wording.Joined([.. response.Targets.Select(target => target.Node?.Title ?? $"'{target.Morph.Target}'").Distinct()]);
}
