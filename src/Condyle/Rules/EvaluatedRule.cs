using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>A rule that needs what is worked out once for all rules: where nodes rest or stand, or what moves what.</summary>
internal abstract class EvaluatedRule : Rule
{
    public sealed override IEnumerable<Finding> Check(RigModel model, Conventions conventions) => Check(new CheckedRig(model, conventions, CancellationToken.None));

    public abstract override IEnumerable<Finding> Check(CheckedRig rig);
}
