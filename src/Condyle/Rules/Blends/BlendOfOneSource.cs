using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY2002: a node that has one source all the time follows it; a blend of one says so in a roundabout way.</summary>
internal sealed class BlendOfOneSource : ModelRule
{
    public override string Id => "CDY2002";

    public override string Title => "Blend of one source";

    public override Severity Severity => Severity.Info;

    public override string Fix => "drive it by channels";

    // A chain has no other way to follow its copy than a blend of one.
    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions) =>
        from blend in model.Blends
        where blend is { IsUnknown: false, SourcesAreOpen: false, Node: not null, Sources.Count: 1 }
        let source = blend.Sources[0]
        where source.Weight.TryKnown(out var weight) && weight.Equals(WeightPolynomial.One)
        select new Finding(
            this,
            blend,
            $"{blend.Node!.Title} is blended from one source alone, {source.Title}: it always follows that, and whoever reads this looks for the other source. Say 'rig.Drive(…).ByChannels(…)', or add the source that is missing.",
            source.Place)
        {
            ActsOn = blend.Node,
            Related = blend.Place == source.Place ? [] : [blend.Place],
            Repairs = [new DriveInstead(source.Event, blend.Id, $"Drive {blend.Node.Title} by {source.Title}")],
        };
}
