namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>Functions of every kind: arguments, delegates, captured variables, iterators, tasks.</summary>
public class FunctionTests
{
    [Theory]
    [InlineData("rig.Control(Opt(1) + Opt(1, \"x\") + Opt(b: \"y\", a: 2) + Opt(3, c: 9)); rig.Control(Many(\"_\", 1, 2) + Many(\"_\") + Many(\"-\", [4, 5]) + ManyList(1, 2, 3) + ManySpan(\"a\", \"b\"));")]
    [InlineData("int x = 1; Ref(ref x); Out(out var y, out _); In(in x); rig.Control($\"{x}{y}\"); ref int r = ref Pick(true); r = 50; rig.Control($\"{fieldA}{fieldB}\"); ref readonly int ro = ref x; rig.Control($\"{ro}\"); Pick(false) += 3; rig.Control($\"{fieldB}\"); int[] a = [1, 2]; ref int last = ref a[^1]; last++; rig.Control($\"{a[1]}\"); r = ref a[0]; r = 8; rig.Control($\"{a[0]}{fieldA}\");")]
    [InlineData("rig.Control(\"arm\".Tagged(\"ik\") + 3.Twice() + new[] { 1, 2 }.Second()); rig.Control(\"abc\".Shout + \"x\".Wrapped('y')); rig.Control(string.Glue(\"p\", \"q\")); rig.Control(rig.Named(\"ext\").Name);")]
    [InlineData("Action<string> all = s => rig.Control(\"a\" + s); all += s => rig.Control(\"b\" + s); all(\"1\"); Action<string> c = s => rig.Control(\"c\" + s); all += c; all(\"2\"); all -= c; all(\"3\"); Func<int> f = () => 1; f += () => 2; rig.Control($\"{f()}\"); Action? none = null; none?.Invoke(); rig.Control($\"{all.GetInvocationList().Length}\");")]
    [InlineData("var bell = new Bell(); bell.Rung += n => rig.Control($\"r{n}\"); bell.Rung += Note; bell.Ring(3); bell.Rung -= Note; bell.Ring(4); void Note(int n) => rig.Control($\"n{n}\");")]
    [InlineData("var count = 0; Action inc = () => count++; inc(); inc(); rig.Control($\"{count}\"); var fs = Enumerable.Range(0, 3).Select(i => (Func<int>)(() => i * 10)).ToList(); rig.Control(string.Join(\"_\", fs.Select(f => f()))); Func<int, int> fact = null!; fact = n => n <= 1 ? 1 : n * fact(n - 1); rig.Control($\"{fact(5)}\");")]
    [InlineData("int i = 0; int Next() => i++; rig.Control($\"{Next()}{Next()}{i}\"); string Outer(int n) { string Inner(int m) => $\"{n}{m}{i}\"; i++; return Inner(n + 1); } rig.Control(Outer(5)); static int Add(int a, int b = 2) => a + b; rig.Control($\"{Add(1)}\"); var lam = (int a, int b = 3) => a * b; rig.Control($\"{lam(2)}\"); var sum = (params int[] xs) => xs.Sum(); rig.Control($\"{sum(1, 2, 3)}\");")]
    [InlineData("Func<string, string> up = Upper; rig.Control(up(\"q\")); rig.Control(string.Join(\"\", new[] { \"a\", \"b\" }.Select(Upper))); Converter conv = x => x + 1; rig.Control($\"{conv(1)}{conv.Invoke(2)}\"); var m = new Maker(\"m\"); Func<string, string> g = m.Make; rig.Control(g(\"z\")); foreach (var n in new[] { \"n1\", \"n2\" }.Select(rig.Control)) rig.Group(n.Name + \"_group\");")]
    [InlineData("foreach (var x in Count(3)) rig.Control($\"x{x}\"); foreach (var x in Evens().Take(3)) rig.Control($\"e{x}\"); var it = Log().GetEnumerator(); while (it.MoveNext()) rig.Control(it.Current); foreach (var x in Tried()) rig.Control(x); rig.Control(string.Join(\"_\", Tree(2)));")]
    [InlineData("foreach (var x in new Steps(3)) rig.Control($\"s{x}\"); foreach (var x in new Bag()) rig.Control(x); foreach (var (k, v) in new Bag().Pairs()) rig.Control(k + v); foreach (var x in new Bag().Where(b => b != \"b2\")) rig.Control(\"w\" + x); foreach (var n in 3) rig.Control($\"int{n}\");")]
    [InlineData("rig.Control(Load(\"a\").Result); rig.Control(Load(\"b\").GetAwaiter().GetResult()); Run().Wait(); rig.Control(Quick().Result.ToString()); async Task Run() { await Task.CompletedTask; rig.Control(await Load(\"c\")); foreach (var s in await Task.WhenAll(Load(\"d\"), Load(\"e\"))) rig.Control(s); } try { Fail().GetAwaiter().GetResult(); } catch (InvalidOperationException e) { rig.Control(e.Message); }")]
    public void Functions(string code) => Oracle.AgreesOn(
        ("rig.cs", "using System.Threading.Tasks;\n" + Oracle.Rig("rig.Control(\"start\");" + code, """
            private static int fieldA = 1, fieldB = 2;
            private static string Opt(int a, string b = "d", int c = 7) => $"[{a}{b}{c}]";
            private static string Many(string by, params int[] xs) => string.Join(by, xs) + xs.Length;
            private static string ManyList(params List<int> xs) => $"{xs.Count}";
            private static string ManySpan(params ReadOnlySpan<string> xs) => xs[0] + xs.Length;
            private static void Ref(ref int x) => x += 41;
            private static void Out(out int a, out string b) { a = 6; b = "o"; }
            private static void In(in int x) { }
            private static ref int Pick(bool first) => ref first ? ref fieldA : ref fieldB;
            private delegate int Converter(int x);
            private static string Upper(string s) => s.ToUpperInvariant();
            private sealed class Maker(string by) { public string Make(string s) => by + s; }
            private sealed class Bell { public event Action<int>? Rung; public void Ring(int n) => Rung?.Invoke(n); }
            private static IEnumerable<int> Count(int n) { while (n > 0) { yield return n--; if (n == 1) yield break; } }
            private static IEnumerable<int> Evens() { var i = 0; while (true) { if (i % 2 == 1) { i++; continue; } yield return i++; } }
            private static IEnumerable<string> Log() { yield return "one"; yield return "two"; }
            private static IEnumerable<string> Tried() { try { yield return "t"; yield return "u"; } finally { fieldA = 9; } }
            private static IEnumerable<int> Tree(int d) { yield return d; if (d > 0) foreach (var x in Tree(d - 1).Concat(Tree(d - 1))) yield return x; }
            private sealed class Steps(int n) { public Walker GetEnumerator() => new(n); public struct Walker(int n) { private int at = 0; public int Current => at; public bool MoveNext() => ++at <= n; } }
            private sealed class Bag : IEnumerable<string> { public IEnumerator<string> GetEnumerator() { yield return "b1"; yield return "b2"; } System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator(); public IEnumerable<(string, int)> Pairs() { yield return ("p", 1); } }
            private static async Task<string> Load(string s) { await Task.Yield2(); return s + "!"; }
            private static async ValueTask<int> Quick() => await Task.FromResult(4);
            private static async Task Fail() { await Task.CompletedTask; throw new InvalidOperationException("failed"); }
            """.Replace("await Task.Yield2();", "await Task.CompletedTask;"))),
        ("more.cs", Oracle.Usings + """
            public static class Extensions
            {
                public static string Tagged(this string s, string tag) => tag + "_" + s;
                public static int Twice(this int x) => x * 2;
                public static T Second<T>(this IReadOnlyList<T> list) => list[1];
                public static Control Named(this RigDraft rig, string name) => rig.Control(name);
                public static IEnumerator<int> GetEnumerator(this int n) { for (var i = 0; i < n; i++) yield return i; }
                extension(string s) { public string Shout => s + "!"; public string Wrapped(char by) => $"{by}{s}{by}"; public static string Glue(string a, string b) => a + b; }
            }
            """));
}
