namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>Arrays of every shape, ranges, and spans over them.</summary>
public class ArrayTests
{
    [Theory]
    [InlineData("var g = new int[2, 3]; g[1, 2] = 5; g[0, 1]++; g[1, 2] += 2; rig.Control($\"{g[0, 1]}{g[1, 2]}{g[0, 0]}\"); foreach (var x in g) rig.Control($\"x{x}\");")]
    [InlineData("int[,] g = { { 1, 2 }, { 3, 4 } }; for (var r = 0; r < g.GetLength(0); r++) for (var c = 0; c < g.GetLength(1); c++) rig.Control($\"{r}{c}{g[r, c]}\"); rig.Control($\"{g.Length}{g.Rank}{g.GetUpperBound(1)}\");")]
    [InlineData("var g = new[,] { { \"a\", \"b\" } }; rig.Control(g[0, 1]); var h = new string[1, 1, 2] { { { \"x\", \"y\" } } }; rig.Control(h[0, 0, 1]); ref var cell = ref g[0, 0]; cell = \"z\"; rig.Control(g[0, 0]);")]
    [InlineData("var g = new float[2, 2]; try { g[2, 0] = 1; } catch (IndexOutOfRangeException) { rig.Control(\"out\"); }")]
    [InlineData("var j = new int[2][]; j[0] = [1, 2]; j[1] = new int[3]; j[1][2] = 7; rig.Control($\"{j[0].Length}{j[1][2]}{j[^1][^1]}\");")]
    [InlineData("var j = new[] { new[] { 1 }, new[] { 2, 3 } }; var sum = 0; foreach (var row in j) foreach (var x in row) sum += x; rig.Control($\"s{sum}\"); int[,][] mixed = { { new[] { 1 }, new[] { 2, 9 } } }; rig.Control($\"{mixed[0, 1][1]}\");")]
    public void Of_several_dimensions_and_jagged(string code) => Oracle.Agrees(code);

    [Theory]
    [InlineData("var a = new[] { 1, 2, 3, 4, 5 }; var r = 1..^1; rig.Control(string.Join(\"_\", a[r])); Index i = ^2; rig.Control($\"{a[i]}{a[^1]}\"); rig.Control($\"{r.Start.Value}{r.End.IsFromEnd}{i.Value}\"); rig.Control(\"shoulder\"[..^3] + \"shoulder\"[2..4]);")]
    [InlineData("var (offset, length) = (1..^1).GetOffsetAndLength(6); rig.Control($\"{offset}{length}{(^2).GetOffset(5)}{Range.All.Equals(..)}\");")]
    [InlineData("var a = new[] { 1, 2, 3 }; a[0] = a[1] = 9; int i = 0; a[i++] += i; rig.Control(string.Join(\",\", a) + i);")]
    [InlineData("var a = new string[2]; rig.Control($\"{a[0] ?? \"null\"}{a.Length}\"); object[] o = [1, \"s\", null!]; rig.Control($\"{o[0]}{o[1]}{o[2] is null}\");")]
    [InlineData("var a = new[] { 3, 1, 2 }; var b = a; b[0] = 8; var c = (int[])a.Clone(); c[1] = 7; rig.Control($\"{a[0]}{a[1]}{c[1]}{a == b}{a.Equals(c)}\");")]
    [InlineData("int[] a = [.. Enumerable.Range(0, 3), 9, .. new List<int> { 4, 5 }]; List<int> l = [.. a, 1]; HashSet<int> s = [1, 1, 2]; Span<int> sp = [1, 2]; IReadOnlyList<string> ro = [\"q\"]; IEnumerable<int> en = [7]; rig.Control($\"{a.Length}{l.Count}{s.Count}{sp.Length}{ro[0]}{en.First()}\");")]
    public void Ranges_and_expressions(string code) => Oracle.Agrees(code);

    [Theory]
    [InlineData("var a = new[] { 1, 2, 3, 4 }; Span<int> s = a; s[0] = 9; var t = s[1..3]; t[0] = 8; rig.Control($\"{a[0]}{a[1]}{s.Length}{t.Length}{t[^1]}\"); foreach (ref var x in t) x += 10; rig.Control(string.Join(\"_\", a)); foreach (var x in s.Slice(2)) rig.Control($\"v{x}\");")]
    [InlineData("ReadOnlySpan<char> s = \"arm_left\"; rig.Control(s[4..].ToString()); rig.Control($\"{s.Length}{s[0]}{s.IndexOf('_')}{s.StartsWith(\"arm\")}\"); foreach (var c in s[..2]) rig.Control($\"c{c}\");")]
    [InlineData("Span<float> s = stackalloc float[3]; s[1] = 2; s.Fill(1); rig.Control($\"{(int)s[1]}{s.Length}{s.IsEmpty}\"); Span<int> t = stackalloc[] { 1, 2 }; rig.Control($\"{t[1]}\");")]
    [InlineData("var a = new[] { \"x\", \"y\" }; rig.Control(First(a)); static string First(ReadOnlySpan<string> s) => s[0] + s.Length; rig.Control(First([\"p\", \"q\", \"r\"])); rig.Control(a.AsSpan(1)[0]); rig.Control(string.Join(\"\", a.AsSpan().ToArray()));")]
    [InlineData("var names = new[] { \"a\", \"b\" }; rig.Control($\"{names.Contains(\"b\")}{names.IndexOf(\"b\")}\"); if (names is [var first, ..]) rig.Control(first);")]
    public void Spans(string code) => Oracle.Agrees(code);
}
