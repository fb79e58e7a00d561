using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1002: two controls can't have one name, nor two joints, since clips and games find them by it.</summary>
internal sealed class NameTwice : ModelRule
{
    public override string Id => "CDY1002";

    public override string Title => "Two controls or joints with one name";

    public override Severity Severity => Severity.Error;

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions) =>
        from pair in Namesakes.In(model)
        where pair.AreFoundByName
        select new Finding(
            this,
            pair.Node,
            $"There is a {Namesakes.KindOf(pair.Node)} called {pair.Node.Title} already: a clip that moves one by its name can't tell which, so the rig can't be played. Give this one a name of its own.",
            pair.Node.Place)
        {
            Related = [pair.Other.Place],
        };
}
