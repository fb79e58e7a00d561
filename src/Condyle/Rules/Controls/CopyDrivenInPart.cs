using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY5004: where a blend takes a copy that controls drive, it takes one that they drive whole.</summary>
internal sealed class CopyDrivenInPart : Rule
{
    public override string Id => "CDY5004";

    public override string Title => "Copy of which only a part is driven";

    public override Severity Severity => Severity.Warning;

    // The first joints may be carried by what the copy hangs under, and the last ones are often only the end of a bone.
    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var motion = rig.Motion;
        if (!motion.IsWhole)
            yield break;
        HashSet<RigCopy>? blended = null;
        foreach (var copy in rig.Model.Copies)
        {
            if (copy.IsUnknown || copy.Scope != 0)
                continue;
            var isDriven = copy.Joints.ConvertAll(joint => motion.IsWritten(joint) || motion.IsRiding(joint));
            if (!isDriven.Contains(true) || !isDriven.Contains(false) || !(blended ??= Blended(rig.Model)).Contains(copy))
                continue;
            var (first, last) = (isDriven.IndexOf(true), isDriven.LastIndexOf(true));
            var idle = copy.Joints.Where((_, i) => i > first && i < last && !isDriven[i]).ToList();
            var driven = isDriven.Count(each => each);
            if (idle.Count > 0 && idle.Count < driven)
                yield return FindingOf(copy, idle, driven);
        }
    }

    private static HashSet<RigCopy> Blended(RigModel model) => [.. model.Blends.SelectMany(blend => blend.Sources).Select(source => source.Copy).OfType<RigCopy>()];

    private Finding FindingOf(RigCopy copy, List<RigNode> idle, int driven) => new(
        this,
        copy,
        $"Of {copy.Title}, {driven} joints are driven, and nothing drives {Wording.Joined([.. idle.Select(joint => joint.Title)])} between them: while the blend takes this copy, the chain stays stiff there and no control can bend it. Drive {(idle.Count == 1 ? "it" : "them")} as the others.",
        copy.Place)
    {
        ActsOn = idle[0],
        Related = [.. idle.Select(joint => joint.Original?.Place ?? joint.Place).Where(place => place != copy.Place).Distinct()],
    };
}
