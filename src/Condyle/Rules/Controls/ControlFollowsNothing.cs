namespace Condyle.Rules;

/// <summary>CDY5005: where one control carries a character, none that moves a part of it stays behind in the world.</summary>
internal sealed class ControlFollowsNothing : Rule
{
    public override string Id => "CDY5005";

    public override string Title => "Control that follows nothing while the character moves";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var motion = rig.Motion;
        if (!motion.IsWhole || CarriedRig.Of(rig.Model, motion) is not { } carried)
            yield break;
        foreach (var control in carried.LeftBehind)
        {
            // Where the other side's follows something, the sides differ, and that is the slip.
            if (rig.Pairs.CounterpartOf(control) is { } other && rig.Motion.CarrierOf(other) is not null)
                continue;
            if ((carried.TornOff(control) ?? carried.LeftTurning(control)) is not { } consequence)
                continue;
            yield return new Finding(
                this,
                control,
                $"Control {control.Title} follows nothing: when {carried.Carrier.Title} carries the character away, it stays where it was, and {consequence}. Put it under the control that it belongs to, or give it a space.",
                control.Place)
            {
                Related = [carried.Carrier.Place],
            };
        }
    }
}
