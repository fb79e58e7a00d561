using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>A rule that needs no more than the model and the team's conventions.</summary>
internal abstract class ModelRule : Rule
{
    public sealed override IEnumerable<Finding> Check(CheckedRig rig) => Check(rig.Model, rig.Conventions);

    protected abstract IEnumerable<Finding> Check(RigModel model, Conventions conventions);
}
