using Condyle.Analyzers.Reading;

namespace Condyle.Analyzers.Tests.Reading.Bounds;

/// <summary>Code that never ends, or never ends growing, is given up on; where and why is said in the file where it happens.</summary>
public class LimitTests
{
    private static readonly string Steps = $"reading takes more than {Limits.Steps} steps";
    private static readonly string Room = $"more than {Limits.Room} characters and items are made";
    private static readonly string LongText = $"a text grows beyond {Limits.TextLength} characters";
    private static readonly string LargeCollection = $"a collection has more than {Limits.Items} items";
    private static readonly string LongSequence = $"a sequence has more than {Limits.Items} items";
    private static readonly string DeepCalls = $"calls go more than {Limits.Depth} deep";
    private static readonly string NestedRuns = $"functions call each other through the framework more than {Limits.Nesting} deep";
    private static readonly string DeepValues = $"values lie more than {Limits.ValueDepth} deep inside each other";
    private static readonly string LongRig = $"the rig says more than {Limits.Events} sentences";

    [Theory]
    [InlineData("while (true) { }")]
    [InlineData("for (;;) { }")]
    [InlineData("again: goto again;")]
    [InlineData("do { } while (1 < 2);")]
    [InlineData("for (var i = 0; i >= 0; i = 0) { }")]
    [InlineData("var l = new List<int>(); while (true) l.Insert(0, 1);")]
    [InlineData("var all = new int[50000]; while (true) all = [.. all];")]
    public void Endless_loops(string code) => BoundedReading.Of(code).StopsIn("rig.cs", Steps);

    [Theory]
    [InlineData("var s = \"x\"; while (true) s += s;", "s += s")]
    [InlineData("var s = \"x\"; while (true) s = $\"{s}{s}\";", "$\"{s}{s}\"")]
    [InlineData("var s = \"x\"; while (true) s = string.Join(s, s, s);", "string.Join(s, s, s)")]
    [InlineData("var s = \"xx\"; while (true) s = s.Replace(\"x\", s);", "s.Replace(\"x\", s)")]
    [InlineData("var s = \"x\"; while (true) s = s.Insert(0, s);", "s.Insert(0, s)")]
    [InlineData("var s = new System.Text.StringBuilder(\"x\"); while (true) s.Append(s.ToString());", "s.Append(s.ToString())")]
    [InlineData("var s = \"\".PadLeft(2000000000); rig.Control(s);", "\"\".PadLeft(2000000000)")]
    [InlineData("var s = 7.ToString(\"D99999\"); rig.Control(s);", "7.ToString(\"D99999\")")]
    [InlineData("rig.Control($\"{7:D99999}\");", "$\"{7:D99999}\"")]
    [InlineData("rig.Control($\"{7,2000000000}\");", "$\"{7,2000000000}\"")]
    public void Texts_that_grow(string code, string at) => BoundedReading.Of(code).StopsAt(at, LongText);

    [Theory]
    [InlineData("var l = new List<int> { 1 }; while (true) l.AddRange(l.ToArray());", "l.AddRange(l.ToArray())")]
    [InlineData("var l = new List<int>(); while (true) l.Add(1);", "l.Add(1)")]
    [InlineData("var l = new Queue<int>(); while (true) l.Enqueue(1);", "l.Enqueue(1)")]
    [InlineData("var s = new HashSet<int>(); for (var i = 0; ; i++) s.Add(i);", "s.Add(i)")]
    [InlineData("var l = new Dictionary<int, int>(); for (var i = 0; ; i++) l[i] = i;", "l[i] = i")]
    [InlineData("int[] a = [1]; while (true) a = [.. a, .. a];", "[.. a, .. a]")]
    public void Collections_that_grow(string code, string at) => BoundedReading.Of(code).StopsAt(at, LargeCollection);

    [Theory]
    [InlineData("var l = Enumerable.Range(0, int.MaxValue).ToList();", "Enumerable.Range(0, int.MaxValue).ToList()")]
    [InlineData("var n = Enumerable.Range(0, int.MaxValue).Where(x => x >= 0).Count();", "Enumerable.Range(0, int.MaxValue).Where(x => x >= 0).Count()")]
    [InlineData("var n = Enumerable.Range(0, int.MaxValue).Average();", "Enumerable.Range(0, int.MaxValue).Average()")]
    [InlineData("var n = Enumerable.Repeat(1, int.MaxValue).SkipWhile(x => x == 1).First();", "Enumerable.Repeat(1, int.MaxValue).SkipWhile(x => x == 1).First()")]
    [InlineData("var n = Enumerable.Repeat(1, int.MaxValue).All(x => x == 1);", "Enumerable.Repeat(1, int.MaxValue).All(x => x == 1)")]
    [InlineData("foreach (var x in Forever()) { }", "Forever()")]
    [InlineData("var n = Forever().Where(x => x > 1).First();", "Forever().Where(x => x > 1).First()")]
    [InlineData("var n = Forever().Zip(Forever(), (a, b) => a + b).Last();", "Forever().Zip(Forever(), (a, b) => a + b).Last()")]
    [InlineData("var s = string.Join(\"\", Forever());", "string.Join(\"\", Forever())")]
    public void Sequences_without_end(string code, string at) =>
        BoundedReading.Of(code, "static IEnumerable<int> Forever() { while (true) yield return 1; }").StopsAt(at, LongSequence);

    [Theory]
    [InlineData("var a = new int[2000000000]; rig.Control($\"{a.Length}\");", "new int[2000000000]")]
    [InlineData("var n = 1000; var a = new string[n * n];", "new string[n * n]")]
    public void Giant_arrays(string code, string at) => BoundedReading.Of(code).StopsAt(at, $"an array has more than {Limits.Items} items");

    [Theory]
    [InlineData("var kept = new List<int[]>(); while (true) kept.Add(new int[90000]);", "new int[90000]")]
    [InlineData("var s = \"\".PadLeft(19000); var kept = new List<string>(); for (var i = 0; ; i++) kept.Add(s + i);", "s + i")]
    [InlineData("var s = \"\".PadLeft(19000); for (var i = 0; ; i++) rig.Control(s[1..]);", "s[1..]")]
    public void Many_large_things(string code, string at) => BoundedReading.Of(code).StopsAt(at, Room);

    [Theory]
    [InlineData("Deep(0);", "Deep(x + 1)")]
    [InlineData("Even(0);", "Odd(x)")]
    [InlineData("Func<int, int>? f = null; f = x => f!(x + 1); f(0);", "f!(x + 1)")]
    [InlineData("int Local(int x) => Local(x + 1); Local(0);", "Local(x + 1)")]
    [InlineData("var n = new Node().Next;", "Next")]
    [InlineData("var n = new Node() + new Node();", "a + b")]
    [InlineData("var n = new Node()[3];", "this[i + 1]")]
    [InlineData("new Node().Name = \"n\";", "Name = value")]
    [InlineData("var n = new Endless();", "new Endless()")]
    [InlineData("var n = (int)new Node();", "(int)a")]
    [InlineData("Grow<int>();", "Grow<List<T>>()")]
    [InlineData("Double<int>();", "Double<(T, T)>()")]
    public void Recursion_without_end(string code, string at) => BoundedReading.Of(
        code,
        """
        static int Deep(int x) => Deep(x + 1) + 1;
        static int Even(int x) => Odd(x);
        static int Odd(int x) => Even(x + 1);
        static int Grow<T>() => Grow<List<T>>() + 1;
        static int Double<T>() => Double<(T, T)>() + 1;
        private sealed class Node
        {
            public Node Next => Next;
            public string Name { get => ""; set => Name = value; }
            public int this[int i] => this[i + 1];
            public static Node operator +(Node a, Node b) => a + b;
            public static explicit operator int(Node a) => (int)a;
        }
        private sealed class Endless { private readonly Endless inner; public Endless() { inner = new Endless(); } }
        """).StopsAt(at, DeepCalls);

    [Theory]
    [InlineData("rig.Control($\"{new Node()}\");", "$\"{this}\"")]
    [InlineData("foreach (var x in Down(0)) { }", "Down(x + 1)")]
    [InlineData("var n = Mapped([1]);", "x.Select(y => Mapped([y])).Sum()")]
    public void Recursion_through_the_framework(string code, string at) => BoundedReading.Of(
        code,
        """
        static IEnumerable<int> Down(int x) { foreach (var y in Down(x + 1)) yield return y; }
        static int Mapped(int[] x) => x.Select(y => Mapped([y])).Sum();
        private sealed class Node { public override string ToString() => $"{this}"; }
        """).StopsAt(at, NestedRuns);

    [Theory]
    [InlineData("var link = new Link(null); while (true) { link = new Link(link); if (link == new Link(link)) break; }", "link == new Link(link)")]
    [InlineData("object t = 1; for (var i = 0; i < 100; i++) t = (t, t); rig.Control(t.Equals((1, t)) ? \"a\" : \"b\");", "t.Equals((1, t))")]
    public void Values_inside_each_other(string code, string at)
    {
        var reading = BoundedReading.Of(code, "private sealed record Link(Link? Next);");

        Assert.Contains(reading.Found, finding => finding.Rule.Id == "CDY9002" && (finding.Message.Contains(DeepValues, StringComparison.Ordinal) || finding.Message.Contains(Steps, StringComparison.Ordinal)));
        Assert.NotEmpty(at);
        reading.FindsTheSlip();
    }

    /// <summary>What wasn't read may use the same text for something that is right as it is.</summary>
    [Fact]
    public void A_slip_before_the_stop_is_shown_but_not_repaired()
    {
        var reading = BoundedReading.Of("while (true) { } rig.Control(\"crate\");");

        reading.FindsTheSlip();
        Assert.All(reading.Found, finding => Assert.Empty(finding.Repairs));
    }

    [Fact]
    public void A_rig_without_end() => BoundedReading.Of("while (true) rig.Control(\"c\");").StopsAt("rig.Control(\"c\");", LongRig);
}
