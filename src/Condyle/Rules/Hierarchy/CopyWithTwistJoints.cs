using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY4003: a copy is for what poses a limb; the twist joints between its bones have no part in that.</summary>
internal sealed class CopyWithTwistJoints : RuleOfMoves
{
    public override string Id => "CDY4003";

    public override string Title => "Copy that drags twist joints along";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "without them";

    protected override IEnumerable<Finding> Check(RigModel model, Moves moves, Conventions conventions)
    {
        var twoBoned = new HashSet<RigCopy?>(model.TwoBones.Select(solver => solver.Copy)); // too many joints are a slip of its own there
        foreach (var copies in model.Copies.Where(copy => !copy.IsUnknown && copy.Chain.Joints is not null).GroupBy(copy => copy.Chain))
        {
            var chain = copies.Key;
            var twists = chain.Joints!.Where(TwistJoints.Is).ToList();
            // A twist joint whose copy is moved on its own was meant; and a chain of twist joints alone is one of its kind.
            if (twists.Count == 0 || twists.Count == chain.Joints!.Count || moves.AreOpen || copies.Any(twoBoned.Contains) || HasBoneWithoutLength(chain) || copies.SelectMany(copy => copy.Joints).Any(joint => twists.Contains(joint.Original!) && IsMovedAlone(joint, moves)))
                continue;
            var names = twists.Count == 1 ? $"the twist joint {twists[0].Title}" : $"{twists.Count} twist joints such as {twists[0].Title}";
            var tags = string.Join(" and ", copies.Select(copy => $"'{copy.Tag}'").Distinct());
            yield return new Finding(
                this,
                copies.First(),
                $"{(copies.Count() == 1 ? $"Copy {tags}" : $"The copies {tags}")} of {chain.Title} {(copies.Count() == 1 ? "takes" : "take")} {names} along: a solver bends the limb there as if it were an elbow or a knee, and a blend sets what only the bone's roll should. Take {(twists.Count == 1 ? "it" : "them")} out of the chain.",
                copies.First().Place)
            {
                Related = [.. copies.Select(copy => copy.Place).Append(chain.Place).Where(place => place != copies.First().Place).Distinct()],
                Repairs = [TwistJoints.LeftOut(chain, $"Take {names} out of the chain", model)],
            };
        }
    }

    // Which a solver can't turn: that rule tells to leave the twist joint out as well.
    private static bool HasBoneWithoutLength(RigChain chain) =>
        chain.Joints!.Skip(1).Any(joint => joint.Rest.TryKnown(out var rest) && rest.Translation.LengthSquared() < 1e-8f);

    private static bool IsMovedAlone(RigNode joint, Moves moves) => moves.Of(joint).Any(move => move.Sentence is not (RigSolver or RigCurve or RigFalloff));
}
