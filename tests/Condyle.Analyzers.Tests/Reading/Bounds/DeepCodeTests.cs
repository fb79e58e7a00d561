using Condyle.Analyzers.Reading;

namespace Condyle.Analyzers.Tests.Reading.Bounds;

/// <summary>Code that lies deep inside itself, or is very long, neither exhausts the stack nor takes for ever.</summary>
public class DeepCodeTests
{
    private const int Many = 3000;

    // It takes the compiler itself minutes for thousands of these.
    private const int FewForTheCompiler = 20;

    public static TheoryData<string, string> DeepExpressions => new()
    {
        { "parentheses", Repeat("(", FewForTheCompiler * 20) + "1" + Repeat(")", FewForTheCompiler * 20) },
        { "negations", Repeat("- ", Many) + "1" },
        { "casts", Repeat("(int)", Many) + "n" },
        { "a sum to the right", Repeat("n + (", Many) + "1" + Repeat(")", Many) },
        { "conditions", Repeat("n > 0 ? n : ", Many) + "1" },
        { "calls", Repeat("F(", Many) + "1" + Repeat(")", Many) },
        { "a chain of calls", "n" + Repeat(".CompareTo(n)", Many) },
        { "members", "new Node()" + Repeat(".Next", Many) + ".Number" },
        { "lambdas", "((Func<int>)(" + Repeat("() => { ", Many) + Repeat("}", Many) + "))()" },
        { "tuples", Repeat("(", FewForTheCompiler * 8) + "1" + Repeat(", 2)", FewForTheCompiler * 8) + ".Item2" },
        { "switches", Repeat("n switch { 1 => ", Many) + "1" + Repeat(", _ => 2 }", Many) },
        { "arrays", Repeat("new object[] { ", Many) + "1" + Repeat(" }", Many) + ".Length" },
        { "collections", "((object[])" + Repeat("[", FewForTheCompiler) + "1" + Repeat("]", FewForTheCompiler) + ").Length" },
        { "patterns", "new Node() is " + Repeat("{ Next: ", Many) + "null" + Repeat(" }", Many) + " ? 1 : 2" },
        { "indexes", "a" + Repeat("[a", Many) + "[0]" + Repeat("]", Many) },
        { "assignments", Repeat("n = ", Many) + "1" },
        { "elements that may be null", "new Node()" + Repeat("?.Next", Many) + "?.Number ?? 1" },
    };

    [Theory]
    [MemberData(nameof(DeepExpressions))]
    public void Deep_expressions(string what, string expression)
    {
        Assert.NotEmpty(what);
        BoundedReading.Of(
            "rig.Control($\"{Deep(1, [0])}\");",
            $"static object Deep(int n, int[] a) => {expression}; static int F(int x) => x; private sealed class Node {{ public Node Next => this; public int Number => 1; }}").FindsTheSlip();
    }

    public static TheoryData<string, string> LongExpressions => new()
    {
        { "numbers", "$\"{" + Repeat("n + ", Many) + "1}\"" },
        { "constants", "$\"{" + Repeat("1 + ", Many) + "1}\"" },
        { "texts", Repeat("s + ", Many) + "\"x\"" },
        { "literals", Repeat("\"x\" + ", Many) + "\"x\"" },
        { "conditions", "(" + Repeat("n == 2 || ", Many) + "n == 1) ? \"a\" : \"b\"" },
        { "bits", "$\"{" + Repeat("n | ", Many) + "1}\"" },
    };

    /// <summary>A sum is as deep as it has terms, but is read as what it looks like: a long one.</summary>
    [Theory]
    [MemberData(nameof(LongExpressions))]
    public void Long_sums_are_read_whole(string what, string expression)
    {
        Assert.NotEmpty(what);
        var reading = BoundedReading.Of($"var n = 1; var s = \"y\"; rig.Control({expression});");

        reading.FindsTheSlip();
        Assert.DoesNotContain(reading.Found, finding => finding.Rule.Id == "CDY9002");
    }

    [Fact]
    public void Constants_made_of_thousands_of_constants()
    {
        var constants = Enumerable.Range(1, Many).Select(i => $"private const string C{i} = C{i - 1} + \"\";");

        BoundedReading.Of($"rig.Control(Sum); rig.Control(C{Many});", $"private const string Sum = {Repeat("\"x\" + ", Many)}\"x\"; private const string C0 = \"x\"; {string.Concat(constants)}").FindsTheSlip();
    }

    [Fact]
    public void Code_too_deep_inside_itself_is_left_out_where_it_lies()
    {
        const int Deep = (Limits.CodeDepth / 2) + 10;
        var reading = new BoundedReading(
            ("rig.cs", Oracle.Rig("rig.Group(\"crate\"); Helper.Say(rig); rig.Group(\"lid\");")),
            ("more.cs", Oracle.Usings + $"static class Helper {{ public static void Say(RigDraft rig) {{ {Repeat("if (true) { ", Deep)} rig.Group(\"deep\"); {Repeat("}", Deep)} }} }}"));

        reading.FindsTheSlip();
        reading.StopsIn("more.cs", $"code more than {Limits.CodeDepth} deep inside itself is not read");
        Assert.Contains(reading.Found, finding => finding.Message.Contains("'lid'", StringComparison.Ordinal));
    }

    [Fact]
    public void Code_far_too_deep_inside_itself_is_not_even_asked_for() => new BoundedReading(
        ("rig.cs", Oracle.Rig("rig.Group(\"crate\"); Helper.Say(rig);")),
        ("more.cs", Oracle.Usings + $"static class Helper {{ public static void Say(RigDraft rig) {{ {Repeat("if (true) { ", Many)} rig.Group(\"deep\"); {Repeat("}", Many)} }} }}")).StopsIn("more.cs", $"code lies more than {Limits.SyntaxDepth} deep inside itself");

    [Fact]
    public void A_giant_switch() => BoundedReading.Of(
        $"var n = 1900; switch (n) {{ {string.Concat(Enumerable.Range(0, 2_000).Select(i => $"case {i}: rig.Control(\"c{i}\"); break; "))} }}").FindsTheSlip();

    [Fact]
    public void A_giant_switch_on_something_unknown() => BoundedReading.Of(
        $"switch (Environment.TickCount) {{ {string.Concat(Enumerable.Range(0, 1_000).Select(i => $"case {i}: rig.Control(\"c{i}\"); break; "))} }}").FindsTheSlip();

    [Fact]
    public void A_collection_expression_of_a_hundred_thousand_elements() => BoundedReading.Of(
        $"int[] all = [{string.Join(", ", Enumerable.Range(0, 100_000))}]; rig.Control($\"{{all[^1]}}\");").FindsTheSlip();

    [Fact]
    public void A_dictionary_of_ten_thousand_entries() => BoundedReading.Of(
        "rig.Control(Table[77]);",
        $"private static readonly Dictionary<int, string> Table = new() {{ {string.Concat(Enumerable.Range(0, 10_000).Select(i => $"[{i}] = \"c{i}\", "))} }};").FindsTheSlip();

    [Fact]
    public void Final_parts_inside_final_parts()
    {
        const int Deep = 40;

        BoundedReading.Of("Leave(1);", $"static void Leave(int n) {{ {Repeat("try { if (n > 0) return; } finally { ", Deep)} {Repeat("}", Deep)} }}").StopsIn(
            "rig.cs", $"a function becomes more than {Limits.CodeSize} instructions");
    }

    private static string Repeat(string text, int times) => string.Concat(Enumerable.Repeat(text, times));
}
