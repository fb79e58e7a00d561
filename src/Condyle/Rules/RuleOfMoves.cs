using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>A rule that asks what moves nodes.</summary>
internal abstract class RuleOfMoves : Rule
{
    public sealed override IEnumerable<Finding> Check(CheckedRig rig) => Check(rig.Model, rig.Moves, rig.Conventions);

    protected abstract IEnumerable<Finding> Check(RigModel model, Moves moves, Conventions conventions);
}
