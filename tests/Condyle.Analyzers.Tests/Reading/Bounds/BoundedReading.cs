using Condyle.Analyzers.Reporting;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Reading.Bounds;

/// <summary>Analyses files on the test's own thread and keeps count of the memory that this takes.</summary>
internal sealed class BoundedReading
{
    /// <summary>No reading of a path allocates more, all that is dropped again included.</summary>
    private const long MostBytes = 1_500_000_000;

    private readonly IReadOnlyList<(string Path, string Source)> files;

    public BoundedReading(params (string Path, string Source)[] files)
    {
        this.files = files;
        var compilation = CompiledCode.Compile(files);
        var models = compilation.SyntaxTrees.ToDictionary(tree => tree, tree => compilation.GetSemanticModel(tree));
        var session = new ReadingSession(compilation, compilation.GetTypeByMetadataName("Condyle.IRigDefinition")!, isLive: false, tree => models[tree]);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Found = [.. models.Keys.SelectMany(tree => session.FindingsIn(tree, CancellationToken.None))];
        var bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(bytes < MostBytes, $"{bytes} bytes were allocated");
    }

    public IReadOnlyList<PlannedFinding> Found { get; }

    /// <summary>A rig with a slip, and then code that can't be read to its end.</summary>
    public static BoundedReading Of(string code, string members = "", string more = "") =>
        new(("rig.cs", Oracle.Rig("rig.Group(\"crate\"); " + code, members)), ("more.cs", Oracle.Usings + more));

    /// <summary>The slip before the code is found, and it is said where the reading stopped and why.</summary>
    public void StopsAt(string place, string because, string file = "rig.cs")
    {
        var stops = Found.Where(finding => finding.Rule.Id == "CDY9002").Select(Shown).ToList();
        Assert.Contains($"{file} {place}: Slips in the rig 'TestRig' may go unseen, as it isn't read whole: {because}.", stops);
        FindsTheSlip();
    }

    /// <summary>The same, where only the file matters.</summary>
    public void StopsIn(string file, string because)
    {
        var stops = Found.Where(finding => finding.Rule.Id == "CDY9002").ToList();
        Assert.NotEmpty(stops);
        Assert.All(stops, stop => Assert.Equal(file, stop.Place.Path));
        Assert.All(stops, stop => Assert.EndsWith($": {because}.", stop.Message, StringComparison.Ordinal));
        FindsTheSlip();
    }

    public void FindsTheSlip() => Assert.Contains(Found, finding => finding.Rule.Id == "CDY1001" && TextAt(finding) == "\"crate\"");

    private string Shown(PlannedFinding finding) => $"{finding.Place.Path} {TextAt(finding)}: {finding.Message}";

    private string TextAt(PlannedFinding finding) =>
        files.Single(file => file.Path == finding.Place.Path).Source.Substring(finding.Place.Span.Start, finding.Place.Span.Length);
}
