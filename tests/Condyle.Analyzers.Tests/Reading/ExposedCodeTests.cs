namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Unknown code runs what it is handed: an object's text and equality, its properties, the code behind a query.</summary>
public class ExposedCodeTests
{
    private const string More = """
        public sealed class Told(Action? said = null)
        {
            public static string Name = "a", Kept = "kept";
            public int Size { get { Name = "size_group"; said?.Invoke(); return 1; } }
            public override string ToString() { Name = "text_group"; said?.Invoke(); return "told"; }
            public override bool Equals(object? other) { Name = "same_group"; said?.Invoke(); return true; }
            public override int GetHashCode() => 1;
        }
        public sealed class Quiet(int size)
        {
            public int Size => size;
            public override string ToString() => "quiet" + Told.Name;
        }
        public sealed class Named { public string Name { get; set; } = "a"; }
        public sealed class Parts(Action told) : System.Collections.IEnumerable
        {
            public System.Collections.IEnumerator GetEnumerator() { told(); yield return 1; }
        }
        """;

    [Theory]
    [InlineData("Console.Error.WriteLine(new Told()); rig.Group(Told.Name);")]
    [InlineData("System.Text.Json.JsonSerializer.Serialize(new Told()); rig.Group(Told.Name);")]
    [InlineData("System.Text.Json.JsonSerializer.Serialize(new List<object> { new Told() }); rig.Group(Told.Name);")]
    [InlineData("System.Collections.StructuralComparisons.StructuralEqualityComparer.Equals(new Told(), new Told()); rig.Group(Told.Name);")]
    [InlineData("var name = \"a\"; Console.Error.WriteLine(new Told(() => name = \"x_group\")); rig.Group(name);")]
    [InlineData("var name = \"a\"; System.Text.Json.JsonSerializer.Serialize(new[] { 1, 2 }.Select(turn => { name = \"x_group\"; return turn; })); rig.Group(name);")]
    [InlineData("var name = \"a\"; IEnumerable<int> Turns() { name = \"x_group\"; yield return 1; } System.Text.Json.JsonSerializer.Serialize(Turns()); rig.Group(name);")]
    [InlineData("var name = \"a\"; System.Text.Json.JsonSerializer.Serialize(new Lazy<int>(() => { name = \"x_group\"; return 1; })); rig.Group(name);")]
    [InlineData("var name = \"a\"; System.Text.Json.JsonSerializer.Serialize(new Parts(() => name = \"x_group\")); rig.Group(name);")]
    [InlineData("var one = new Named(); System.Text.Json.JsonSerializer.Serialize(new[] { one }.Select(named => named)); rig.Group(one.Name);")]
    [InlineData("var all = new List<Told>(); foreach (var word in Environment.GetCommandLineArgs()) all.Add(new()); var name = \"a\"; _ = all.Contains(new Told(() => name = \"x_group\")); rig.Group(name);")]
    public async Task What_it_may_have_changed_is_not_known(string code) =>
        Assert.DoesNotContain(await Findings.In(code, more: More), finding => !finding.StartsWith("CDY9002", StringComparison.Ordinal));

    [Theory]
    [InlineData("Console.Error.WriteLine(new Told()); rig.Group(Told.Kept);", "Told.Kept")]
    [InlineData("Console.Error.WriteLine(new Quiet(3)); rig.Group(Told.Name);", "Told.Name")]
    [InlineData("var name = \"a\"; Console.Error.WriteLine(Enumerable.Range(0, 3).Select(turn => name + turn)); rig.Group(name);", "name")]
    [InlineData("IEnumerable<int> Forever() { for (var turn = 0; ; turn++) yield return turn; } System.Text.Json.JsonSerializer.Serialize(Forever().Take(2)); rig.Group(\"a\");", "\"a\"")]
    public async Task What_it_can_not_have_changed_stays_known(string code, string at) =>
        Assert.Equal([$"CDY1001 {at}"], await Findings.In(code, more: More));

    [Fact]
    public void What_is_written_to_the_console_is_made_into_text() =>
        Oracle.Agrees("Console.Write(new Told()); rig.Group(Told.Name); Console.WriteLine(\"{0}\", new Told(() => Told.Name = \"x_group\")); rig.Group(Told.Name);", more: More);
}
