using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY8002: a limb that is handed over keeps its bones' lengths, and neither folds nor flips on the way.</summary>
internal sealed class LimbBreaksOverSwitch : EvaluatedRule
{
    public override string Id => "CDY8002";

    public override string Title => "Limb changes length, folds or flips over a switch";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        if (BlendedLimb.In(rig) is not { Count: > 0 } limbs || rig.Evaluated is not { } evaluated)
            yield break;
        foreach (var (limb, found) in LimbSweep.Broken(rig.Model, evaluated, limbs))
        {
            var blend = found.Bone.Blend;
            yield return new Finding(this, blend, $"{Sentence(found, Switches(limb, rig.Model))} {Advice(blend)}", blend.Place)
            {
                ActsOn = found.Bone.To,
                Related = [.. limb.Bones.Select(bone => bone.Blend).Distinct().SelectMany(each => each.Sources.Select(source => source.Place).Prepend(each.Place)).Where(place => place != blend.Place).Distinct()],
            };
        }
    }

    private static string Sentence(LimbBreak found, string switches)
    {
        var (from, to) = (found.Bone.From.Name, found.Bone.To.Name);
        var at = $"with {switches} at {Invariant.Short(found.At)}";
        return found.Kind switch
        {
            BreakKind.Length => $"The bone from '{from}' to '{to}' changes its length over {switches}: with every control turned by up to 30° it is {Lengths.Of(found.Value)} long {at}, and {Ends(Lengths.Of(found.First), Lengths.Of(found.Last))}. The limb {(found.Value < found.First ? "shrinks" : "grows")} while it is handed over.",
            BreakKind.Fold => $"The limb folds at '{to}' over {switches}: with every control turned by up to 30° its bend is {Whole(found.Value)}° {at}, and {Ends($"{Whole(found.First)}°", $"{Whole(found.Last)}°")}.",
            _ => $"'{from}' flips over {switches}: with every control turned by up to 30° it turns by {Whole(found.Value)}° all at once between {Invariant.Short(found.At - 0.25)} and {Invariant.Short(found.At)}.",
        };
    }

    private static string Whole(double degrees) => Invariant.Print(Math.Round(degrees));

    private static string Ends(string first, string last) => first == last ? $"{first} at either end" : $"{first} and {last} at the ends";

    private static string Advice(RigBlend blend) => blend.Chain is null
        ? "Blend the chain as a whole, from copies of it: then the bones keep their length and the joints turn together."
        : "Look at how its copies are solved and driven at that value.";

    private static string Switches(BlendedLimb limb, RigModel model) =>
        Wording.Joined([.. limb.Variables.Select(id => model.SwitchOf(id)?.Title ?? model.OptionOf(id)?.Title ?? "a switch").Distinct()], limb.Variables.Count);
}
