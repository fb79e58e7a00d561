using Condyle.Analyzers.Reporting;
using Condyle.Analyzers.Tests.Reading;
using Condyle.Rules;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>Where a finding lies that brings several repairs along, of which not each can be made.</summary>
public class RepairPlannerTests
{
    private const string Code = """
        var name = "lamp";
        rig.Control(name);
        rig.Control("hook");
        """;

    [Fact]
    public void The_first_repair_that_can_be_made_says_where_the_finding_lies() => Assert.Equal("\"hook\"", PlaceOf(first: new("lamp", LiesElsewhere: true), second: new("hook", LiesElsewhere: false)));

    [Fact]
    public void One_that_lies_elsewhere_leaves_it_where_it_is() => Assert.Equal("Control(name)", PlaceOf(first: new("lamp", LiesElsewhere: false), second: new("hook", LiesElsewhere: true)));

    /// <summary>The code that a finding of the lamp is shown at, whose repairs rename two controls. The lamp's name isn't written in its call, so it can't be renamed there.</summary>
    private static string PlaceOf(Renamed first, Renamed second)
    {
        var compilation = CompiledCode.Compile(("rig.cs", Oracle.Rig(Code)));
        var tree = compilation.SyntaxTrees.Single(file => file.FilePath == "rig.cs");
        var read = Oracle.Read(compilation, "TestRig");
        var path = Assert.Single(read.Paths);
        var lamp = path.Model.Nodes.Single(node => node.Name.ToString() == "lamp");
        var finding = new Finding(RuleBook.Find("CDY1004")!, lamp, "A finding.", lamp.Place) { Repairs = [RepairOf(first), RepairOf(second)] };
        var readings = new FileReadings(tree, [read with { Paths = [path with { Findings = [finding] }] }], HasAll: true, file => compilation.GetSemanticModel(file));
        var planned = Assert.Single(RepairPlanner.Plan(readings, _ => readings, CancellationToken.None));
        Assert.Single(planned.Repairs);
        return tree.GetText().ToString(planned.Place.Span);

        Repair RepairOf(Renamed renamed) => new ReplaceText(path.Model.Nodes.Single(node => node.Name.ToString() == renamed.Name).Id, 0, "light", "Rename it") { LiesElsewhere = renamed.LiesElsewhere };
    }

    private sealed record Renamed(string Name, bool LiesElsewhere);
}
