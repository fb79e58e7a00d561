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

    // Told by what is allocated, which is the same on every machine: were the table looked at anew for each row, four times the rows would take sixteen times as much.
    [Theory]
    [InlineData(2)]
    [InlineData(1)]
    public void A_long_table_is_planned_row_by_row(int wrongOf)
    {
        Allocated(rows: 10, wrongOf);
        Assert.InRange(Allocated(rows: 400, wrongOf), 0, 8 * Allocated(rows: 100, wrongOf));
    }

    private static long Allocated(int rows, int wrongOf)
    {
        var table = string.Join(", ", Enumerable.Range(0, rows).Select(row => $"(\"lamp_{row}_group\", {(row % wrongOf == 0 ? "on" : "on.Inverse")})"));
        var compilation = CompiledCode.Compile(("rig.cs", Oracle.Rig($$"""
            var (quay, boat) = (rig.Control("quay"), rig.Control("boat"));
            var on = boat.Switch("boat");
            foreach (var (name, weight) in new[] { {{table}} })
                rig.Blend(rig.Group(name)).From(quay, weight).From(boat, on);
            """)));
        var models = compilation.SyntaxTrees.ToDictionary(tree => tree, tree => compilation.GetSemanticModel(tree));
        var session = new ReadingSession(compilation, compilation.GetTypeByMetadataName("Condyle.IRigDefinition")!, isLive: false, tree => models[tree]);
        session.ReadingsOf(compilation.SyntaxTrees[0], CancellationToken.None);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var found = session.FindingsIn(compilation.SyntaxTrees[0], CancellationToken.None);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Equal(wrongOf == 1 ? 1 : rows / wrongOf, found.Count(finding => finding is { Rule.Id: "CDY2001", Repairs.Count: > 0 }));
        return allocated;
    }

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
