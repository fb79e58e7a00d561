using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY2003: a joint follows the copy of itself, not that of another joint of the same chain.</summary>
internal sealed class SourceOfAnotherJoint : ModelRule
{
    public override string Id => "CDY2003";

    public override string Title => "Source from another place in the chain";

    public override Severity Severity => Severity.Error;

    public override string Fix => "take the joint's own copy";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        foreach (var blend in model.Blends.Where(blend => blend is { IsUnknown: false, Node: not null }))
        {
            foreach (var source in blend.Sources)
            {
                if (Own(source.Node, blend.Node!) is { } own)
                    yield return Of(blend, blend.Node!, source.Node!, own, source.Event, source.Place);
            }
        }

        foreach (var drive in model.Drives.Where(drive => drive is { IsUnknown: false, Target: not null, KeepsOffset.IsOpen: false }))
        {
            foreach (var source in drive.Sources)
            {
                // A joint that keeps its offset may well hang on the one above.
                if (drive.KeepsOffset.TryKnown(out var keeps) && !keeps && Own(source.Source, drive.Target!) is { } own)
                    yield return Of(drive, drive.Target!, source.Source!, own, source.Event, source.Place);
            }
        }
    }

    private Finding Of(RigElement sentence, RigNode target, RigNode source, RigNode own, int said, PlaceId place) =>
        new(
            this,
            sentence,
            $"{target.Title} follows {source.Title}, the copy of another joint: it leaves its place and lands on {source.Original!.Title}. Take {own.Title}, its own copy.",
            place)
        {
            ActsOn = target,
            Related = sentence.Place == place ? [] : [sentence.Place],
            Repairs = [new CopyOfTarget(said, 0, sentence.Id, 0, $"Follow '{own.Name}'")],
        };

    /// <summary>The copy of the target in the copy that the source is of, where that is another joint's.</summary>
    private static RigNode? Own(RigNode? source, RigNode target)
    {
        var joint = target.Original ?? target;
        return source is not { IsUnknown: false, Copy: { IsUnknown: false } copy, Original: { } original } || target.IsUnknown || joint.Kind != NodeKind.Joint || original == joint || target.Copy == copy
            ? null
            : copy.Joints.Find(each => each.Original == joint);
    }
}
