using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY2004: where joints of a chain follow its copies one by one, all of them do.</summary>
internal sealed class PartOfChainFollows : ModelRule
{
    public override string Id => "CDY2004";

    public override string Title => "Part of a chain follows its copy, part doesn't";

    public override Severity Severity => Severity.Error;

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        if (!model.IsWhole || model.Blends.Exists(blend => blend.IsUnknown || blend is { Chain: null, Node: null }) || model.Drives.Exists(drive => drive.IsUnknown || drive.Target is null or { IsUnknown: true }))
            yield break;
        var written = new HashSet<RigNode>(model.Blends.SelectMany(blend => blend.Chain?.Joints ?? (blend.Node is { } node ? [node] : [])));
        written.UnionWith(model.Drives.Select(drive => drive.Target!));
        var told = new HashSet<RigNode>();
        foreach (var copy in model.Copies.Where(copy => copy is { IsUnknown: false, Chain: { IsUnknown: false, Joints: not null } }))
        {
            var joints = copy.Chain.Joints!;
            var left = joints.Where(joint => !written.Contains(joint)).ToList();
            if (left.Count == 0 || left.Count == joints.Count || Followers(joints, model) is not { Count: > 0 } followers || !left.TrueForAll(told.Add))
                continue;
            var last = followers[followers.Count - 1];
            yield return new Finding(
                this,
                last,
                $"Of {copy.Chain.Title}, {Wording.Joined([.. left.Select(joint => joint.Title)])} {(left.Count == 1 ? "follows" : "follow")} nothing while the others follow their copies: {(left.Count == 1 ? "it stays" : "they stay")} stiff where the limb bends. Let {(left.Count == 1 ? "it" : "them")} follow too, or leave {(left.Count == 1 ? "it" : "them")} out of the chain.",
                last.Place)
            {
                Related = [copy.Chain.Place, .. left.Select(joint => joint.Place)],
            };
        }
    }

    // What makes single joints of the chain follow a copy of theirs.
    private static List<RigElement> Followers(IReadOnlyList<RigNode> joints, RigModel model)
    {
        var those = new HashSet<RigNode>(joints);
        return
        [
            .. model.Drives.Where(drive => those.Contains(drive.Target!) && drive.Sources.Exists(source => source.Source is { Original: { } original } && those.Contains(original)))
                .Concat<RigElement>(model.Blends.Where(blend => blend.Node is { } node && those.Contains(node) && blend.Sources.Exists(source => source.Node is { Original: { } original } && those.Contains(original))))
                .OrderBy(sentence => sentence.Id),
        ];
    }
}
