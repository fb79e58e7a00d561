using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY2009: a chain is blended from copies of its own joints.</summary>
internal sealed class CopyOfAnotherChain : Rule
{
    public override string Id => "CDY2009";

    public override string Title => "Blend from a copy of another chain";

    public override Severity Severity => Severity.Error;

    public override string Fix => "take this chain's copy, where it has a name";

    public override IEnumerable<Finding> Check(CheckedRig rig) => rig.Once(In).Select(found => FindingOf(found, rig.Model));

    /// <summary>The sources that copy none of the joints that they are to move; a chain's joints move only where every source copies them.</summary>
    public static IEnumerable<StrangeSource> In(CheckedRig rig)
    {
        foreach (var blend in rig.Model.Blends)
        {
            if (blend is not { IsUnknown: false, SourcesAreOpen: false, Chain: { IsUnknown: false, Joints: { Count: > 0 } joints } } || joints.Any(joint => joint.IsUnknown))
                continue;
            foreach (var source in blend.Sources)
            {
                if (source.Copy is { IsUnknown: false, Chain: { IsUnknown: false, Joints: { Count: > 0 } theirs } } && !theirs.Any(joint => joint.IsUnknown) && !theirs.Intersect(joints).Any())
                    yield return new(blend, source);
            }
        }
    }

    private Finding FindingOf(StrangeSource found, RigModel model)
    {
        var (blend, source) = found;
        var meant = Meant(found, model);
        return new Finding(
            this,
            blend,
            $"{Wording.First(blend.Chain!.Title)} is blended from {source.Copy!.Title}, which has none of its joints: nothing of it moves, whatever its other sources do. Take {meant?.Title ?? "a copy of its own"}.",
            source.Place)
        {
            Repairs = meant is null ? [] : [new TakeInstead(source.Event, 0, meant.Id, $"Take {meant.Title}")],
            Related = [.. new[] { blend.Place, source.Copy.Place }.Where(place => place != source.Place && place != PlaceId.None).Distinct()],
        };
    }

    // The one copy of these joints with the same tag that the blend doesn't have yet.
    private static RigCopy? Meant(StrangeSource found, RigModel model)
    {
        var (blend, source) = found;
        var fitting = model.Copies.Where(copy => copy is { IsUnknown: false, Chain: { IsUnknown: false, Joints: { } theirs } } && !blend.Chain!.Joints!.Except(theirs).Any()
            && copy.Tag.SameAs(source.Copy!.Tag) == Answer.Yes && !blend.Sources.Exists(other => other.Copy == copy));
        return fitting.Take(2).ToList() is [var only] ? only : null;
    }
}

/// <summary>A source of a blend that copies none of the chain's joints.</summary>
internal sealed record StrangeSource(RigBlend Blend, BlendSource Source);
