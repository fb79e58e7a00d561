namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>Spans, and arrays and texts taken as spans.</summary>
public class SpanTests
{
    [Fact]
    public void Spans_indices_and_ranges() => FrameworkOracle.Agrees(
        """
        var a = new[] { 3, 1, 2, 3 }; rig.Control($"{a.Contains(2)}{a.Contains(9)}{a.AsSpan().IndexOf(3)}{a.AsSpan().LastIndexOf(3)}{a.AsSpan(1).IndexOf(3)}{a.SequenceEqual([3, 1, 2, 3])}{a.AsSpan().StartsWith([3, 1])}{a.AsSpan().EndsWith([9])}{a.AsSpan().Count(3)}{a.AsSpan().IndexOfAny(1, 2)}{a.AsSpan().IndexOfAnyExcept(3)}{a.AsSpan().ContainsAny([7, 2])}{a.AsSpan().IndexOf([1, 2])}{a.AsSpan().SequenceCompareTo([3, 1, 5])}{a.AsSpan().CommonPrefixLength([3, 1, 9])}{new[] { "x", "y" }.Contains("y")}{new[] { "x" }.Contains("X", StringComparer.OrdinalIgnoreCase)}"); var s = a.AsSpan(); s.Reverse(); rig.Control(All(a)); s.Sort(); rig.Control(All(a)); s.Sort((x, y) => y - x); rig.Control(All(a)); s[1..].Fill(7); rig.Control(All(a)); s.Slice(2, 2).Clear(); rig.Control(All(a)); s.Replace(7, 8); new[] { 5, 6 }.CopyTo(s); rig.Control(All(a) + All(s.ToArray()) + s.Length + s[1] + s.IsEmpty + s.BinarySearch(99)); Span<int> st = stackalloc int[3]; st[1] = 4; foreach (var x in st) rig.Control($"{x}"); ReadOnlySpan<string> names = ["p", "q"]; foreach (var x in names) rig.Control(x); rig.Control($"{names.Length}{names.Contains("q")}{Try(() => { new[] { 1, 2 }.CopyTo(new int[1]); return 1; })}{Try(() => { var z = new[] { 1 }.AsSpan(3); return z.Length; })}");
        var t = "arm_left".AsSpan(); rig.Control($"{t.Length}{t[2]}{t.Slice(4).ToString()}{t[..3]}{t.IndexOf('_')}{t.StartsWith("arm")}{t.Contains('z')}{t.SequenceEqual("arm_left")}{new string(t[4..])}{t.EndsWith("left")}{t.IndexOfAny('l', 'f')}{t.ToArray().Length}");
        Array.Clear(a); rig.Control(All(a)); var b = new[] { "x", "y" }; Array.Clear(b, 0, 1); rig.Control(All(b)); var i = ^2; var r = 1..^1; rig.Control($"{i.Value}{i.IsFromEnd}{i.GetOffset(5)}{r.Start.Value}{r.End.IsFromEnd}{r.GetOffsetAndLength(6)}{All(a[r])}{Index.FromEnd(1).Equals(^1)}{Range.StartAt(2).Start.Value}{Range.All.End.IsFromEnd}{Index.Start.Value}");
        """);

    [Fact]
    public void Lines_and_parts_of_spans() => FrameworkOracle.Agrees(
        """
        foreach (var line in "a\r\nb\n\nc\rd\u2028e\ff".AsSpan().EnumerateLines()) rig.Control($"<{line}>"); foreach (var line in "".AsSpan().EnumerateLines()) rig.Control($"<{line.Length}>"); foreach (var line in "one\n".AsSpan().EnumerateLines()) rig.Control("[" + line.ToString() + "]");
        var t = "arm, leg ,,wing".AsSpan(); foreach (var part in t.Split(',')) rig.Control($"<{t[part]}>"); foreach (var part in t.Split(", ")) rig.Control($"<{t[part]}>"); foreach (var part in t.SplitAny(',', ' ')) rig.Control($"<{t[part]}>"); foreach (var part in t.Split("")) rig.Control($"<{t[part]}>");
        Span<Range> places = new Range[3]; var n = t.Split(places, ','); rig.Control($"{n}{t[places[0]]}{t[places[1]]}{t[places[2]]}"); n = t.Split(places, ',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries); rig.Control($"{n}{t[places[0]]}{t[places[1]]}{t[places[2]]}"); n = t.SplitAny(places, ", "); rig.Control($"{n}{t[places[2]]}"); n = "a-b".AsSpan().Split(places, "--"); rig.Control($"{n}{places[0]}"); n = "a b".AsSpan().SplitAny(places, ""); rig.Control($"{n}{places[1]}"); rig.Control($"{t.Split(places[..1], ',', StringSplitOptions.TrimEntries)}{places[0]}{t.Split(places[..0], ',')}{^2}{1..^1}{(^1).ToString()}{(..).ToString()}");
        """);
}
