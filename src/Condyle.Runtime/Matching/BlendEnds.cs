using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>The values of switches at which a blend takes all from one source: found by trying both ends of each.</summary>
internal static class BlendEnds
{
    private const int MostSwitches = 4;
    private const double Same = 1e-6;

    /// <summary>None where no ends of its switches do that, or there are too many to try.</summary>
    public static IReadOnlyList<(int Switch, float Value)>? For(RigModel model, RigBlend blend, BlendSource wanted)
    {
        var weights = blend.Sources.Select(source => (Source: source, Weight: Facts.Known(source.Weight, "A weight"))).ToList();
        var switches = weights.SelectMany(weight => weight.Weight.Switches).Distinct().Where(id => model.Switches.Exists(given => given.Id == id)).ToList();
        if (switches.Count > MostSwitches)
            return null;
        for (var ends = 0; ends < 1 << switches.Count; ends++)
        {
            double ValueOf(int id) => switches.IndexOf(id) is var at and >= 0 ? (ends >> at) & 1 : AtRest(id);
            if (weights.All(weight => Math.Abs(weight.Weight.At(ValueOf) - (weight.Source == wanted ? 1 : 0)) < Same))
                return [.. switches.Select((id, at) => (model.Switches.FindIndex(given => given.Id == id), (float)((ends >> at) & 1)))];
        }

        return null;

        double AtRest(int id) => model.Options.Find(option => option.Id == id) is { } option ? Pose.RestOf(option) : 0;
    }

    /// <summary>The same for a copy, of a blend of chains.</summary>
    public static IReadOnlyList<(int Switch, float Value)>? For(RigModel model, RigBlend blend, RigCopy? copy) =>
        blend.Sources.Find(source => source.Copy == copy) is { } source ? For(model, blend, source) : null;
}
