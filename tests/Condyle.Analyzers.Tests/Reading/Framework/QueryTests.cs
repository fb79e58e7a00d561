namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>LINQ: its results, its exceptions, and when it calls what.</summary>
public class QueryTests
{
    [Fact]
    public void Operators_on_items() => FrameworkOracle.Agrees(
        """
        var n = new[] { 3, 1, 2, 3 }; rig.Control(All(n.Select(x => x * 2)) + All(n.Select((x, i) => x + i)) + All(n.Where(x => x > 1)) + All(n.Where((x, i) => i > 1)) + All(n.Take(2)) + All(n.Skip(2)) + All(n.Take(1..3)) + All(n.Take(^2..)) + All(n.Take(..^1)) + All(n.TakeLast(2)) + All(n.SkipLast(1)) + All(n.TakeWhile(x => x != 2)) + All(n.SkipWhile(x => x != 2)) + All(n.TakeWhile((x, i) => i < 2)) + All(n.SkipWhile((x, i) => i < 2)) + All(n.Distinct()) + All(n.Append(9)) + All(n.Prepend(0)) + All(n.Concat([7])) + All(n.Union([1, 5])) + All(n.Intersect([3, 2])) + All(n.Except([3])) + All(n.Reverse()) + All(n.Order()) + All(n.OrderDescending()));
        rig.Control(All(n.DistinctBy(x => x % 2)) + All(n.UnionBy([5, 4], x => x % 2)) + All(n.IntersectBy([1], x => x % 2)) + All(n.ExceptBy([1], x => x % 2)) + All(n.Zip(["a", "b"])) + All(n.Zip(n, (a, b) => a + b)) + All(n.Zip(n, n)) + All(n.Chunk(3).Select(c => c.Length)) + All(n.Index()) + All(n.DefaultIfEmpty()) + All(new int[0].DefaultIfEmpty()) + All(new int[0].DefaultIfEmpty(4)) + All(n.SelectMany(x => Enumerable.Repeat(x, 2))) + All(n.SelectMany((x, i) => new[] { x, i })) + All(n.SelectMany(x => new[] { "p", "q" }, (x, y) => $"{x}{y}")) + All(Enumerable.Range(2, 3)) + All(Enumerable.Empty<int>()) + All(Enumerable.Sequence(1, 7, 3)) + All(Enumerable.Sequence(5, 1, -2)) + All(Enumerable.InfiniteSequence(1, 2).Take(3)));
        rig.Control($"{n.First()}{n.First(x => x < 3)}{n.FirstOrDefault(x => x > 9)}{n.FirstOrDefault(x => x > 9, 7)}{n.Last()}{n.Last(x => x < 3)}{n.LastOrDefault(x => x > 9)}{n.Single(x => x == 1)}{n.SingleOrDefault(x => x > 9)}{n.ElementAt(1)}{n.ElementAt(^1)}{n.ElementAtOrDefault(99)}{n.Count()}{n.Count(x => x == 3)}{n.LongCount()}{n.Any()}{n.Any(x => x > 9)}{n.All(x => x > 0)}{Enumerable.Contains(n, 2)}{n.SequenceEqual([3, 1, 2, 3])}{n.Sum()}{n.Sum(x => x * 2)}{n.Min()}{n.Max()}{n.Max(x => -x)}{n.MinBy(x => -x)}{n.MaxBy(x => x % 3)}{n.Aggregate((a, b) => a * 10 + b)}{n.Aggregate("s", (a, b) => a + b)}{n.Aggregate(0, (a, b) => a + b, r => $"<{r}>")}{n.TryGetNonEnumeratedCount(out var cnt)}{cnt}{n.Where(x => x > 0).TryGetNonEnumeratedCount(out _)}");
        rig.Control(Text($"{n.Average()}{new[] { 1.5, 2.5 }.Sum()}{new[] { 1f, 2f }.Average()}{new[] { 1m, 2m }.Sum()}{new int?[] { 1, null, 3 }.Sum()}{new int?[] { 1, null, 3 }.Average()}{new int?[] { null }.Max()}{new int?[] { 4, null }.Min()}{new[] { 1L, 2L }.Average()}{new[] { "b", "a" }.Max(x => x.Length)}{new double[] { 1, double.NaN }.Max()}{new double[] { 1, double.NaN }.Min()}{new float?[] { 1.5f, null }.Sum()}{new string[0].Max(x => x)}{n.Max(Comparer<int>.Create((a, b) => b - a))}"));
        rig.Control(Try(() => new int[0].First()) + Try(() => n.Single()) + Try(() => n.Single(x => x > 99)) + Try(() => n.SingleOrDefault(x => x == 3)) + Try(() => n.ElementAt(9)) + Try(() => new int[0].Max()) + Try(() => new int[0].Average()) + Try(() => new string[0].Max()) + Try(() => new int[0].Aggregate((a, b) => a)) + Try(() => ((int[])null!).Select(x => x)) + Try(() => n.Select((Func<int, int>)null!)) + Try(() => n.Chunk(0)) + Try(() => Enumerable.Range(0, -1)) + Try(() => new[] { int.MaxValue, 1 }.Sum()) + Try(() => new object[] { 1, "a" }.Cast<string>().ToList()) + Try(() => n.ToDictionary(x => x)) + Try(() => new string?[] { null }.ToDictionary(x => x!)) + Try(() => new int[0].MaxBy(x => x)) + Try(() => new string[0].MaxBy(x => x)) + Try(() => new[] { new object(), new object() }.Order().ToList()));
        """);

    [Fact]
    public void Groups_orders_joins_and_results() => FrameworkOracle.Agrees(
        """
        var w = new[] { "bob", "al", "cy", "dee", "ann" }; foreach (var g in w.GroupBy(x => x.Length)) rig.Control($"{g.Key}{All(g)}{g.Count()}{g.First()}"); rig.Control(All(w.GroupBy(x => x.Length, x => x[0]).Select(g => $"{g.Key}{string.Concat(g)}")) + All(w.GroupBy(x => x.Length, (k, g) => $"{k}{g.Count()}")) + All(w.GroupBy(x => x.Length, x => x[0], (k, g) => $"{k}{string.Concat(g)}")) + All(w.GroupBy(x => x[..1], StringComparer.OrdinalIgnoreCase).Select(g => g.Key)) + w.GroupBy(x => x.Length).Count()); var l = w.ToLookup(x => x.Length); rig.Control($"{All(l[2])}{l.Count}{l.Contains(9)}{All(l[9])}{All(l.Select(g => g.Key))}{All(w.ToLookup(x => x[0], x => x.Length)['a'])}");
        rig.Control(All(w.OrderBy(x => x.Length).ThenBy(x => x, StringComparer.Ordinal)) + All(w.OrderByDescending(x => x.Length).ThenByDescending(x => x[0])) + All(w.OrderBy(x => x.Length)) + All(w.OrderByDescending(x => x.Length)) + All(from x in w orderby x.Length descending, x[1] select x) + All(w.OrderBy(x => x.Length).Take(2)) + All(w.OrderBy(x => x.Length).Skip(1).Take(3)) + w.OrderBy(x => x.Length).First() + w.OrderBy(x => x.Length).Last() + w.OrderBy(x => x.Length).ElementAt(2) + All(w.OrderBy(x => x.Length).Reverse()) + w.MinBy(x => x.Length) + All(w.Order(Comparer<string>.Create((a, b) => a[1] - b[1]))));
        var k = new[] { (Id: 1, N: "a"), (Id: 2, N: "b") }; var v = new[] { (Id: 2, V: "x"), (Id: 2, V: "y"), (Id: 3, V: "z") }; rig.Control(All(k.Join(v, a => a.Id, b => b.Id, (a, b) => a.N + b.V)) + All(k.GroupJoin(v, a => a.Id, b => b.Id, (a, b) => a.N + b.Count())) + All(k.LeftJoin(v, a => a.Id, b => b.Id, (a, b) => a.N + b.V)) + All(k.RightJoin(v, a => a.Id, b => b.Id, (a, b) => a.N + b.V)) + All(from a in k join b in v on a.Id equals b.Id select a.N + b.V) + All(from a in k join b in v on a.Id equals b.Id into g select a.N + g.Count()) + All(from a in k join b in v on a.Id equals b.Id into g from b in g.DefaultIfEmpty() select a.N + b.V));
        rig.Control(All(w.CountBy(x => x.Length)) + All(w.AggregateBy(x => x.Length, 0, (s, x) => s + x.Length)) + All(w.AggregateBy(x => x.Length, key => key * 100, (s, x) => s + 1)) + All(new object[] { 1, "a", 2.5f, "b", null! }.OfType<string>()) + All(new object[] { 1, 2 }.Cast<int>()) + All(new object[] { 1, "a" }.OfType<int>()) + All(w.ToDictionary(x => x).Keys) + All(w.ToDictionary(x => x, x => x.Length).Values) + All(new[] { (1, "p") }.ToDictionary().Values) + All(k.ToDictionary(x => x.N, StringComparer.OrdinalIgnoreCase)["A"].N) + All(w.ToHashSet()) + w.ToHashSet(StringComparer.OrdinalIgnoreCase).Contains("AL") + All(w.Select(x => x.Length).ToHashSet()) + All(w.AsEnumerable().ToList()) + All(Side.Both.Select(s => s.ToString())) + All(from x in w let y = x.Length where y > 2 select y) + All(from x in w group x by x.Length into g where g.Count() > 1 select g.Key) + All(from a in new[] { 1, 2 } from b in new[] { a, 9 } select a * b));
        """);

    [Fact]
    public void Functions_are_called_when_and_as_often_as_the_framework_calls_them() => FrameworkOracle.Agrees(
        """
        foreach (var kind in new[] { "array", "list", "set", "iterator", "range" })
        {
            IEnumerable<int> Source() => kind switch { "array" => new[] { 1, 2, 3, 4 }, "list" => new List<int> { 1, 2, 3, 4 }, "set" => new HashSet<int> { 1, 2, 3, 4 }, "range" => Enumerable.Range(1, 4), _ => Iterate() };
            var log = "";
            IEnumerable<int> Iterate() { for (var i = 1; i < 5; i++) { log += $"y{i}"; yield return i; } log += "end"; }
            int S(int x) { log += $"s{x}"; return x; }
            int T(int x) { log += $"t{x}"; return x; }
            bool P(int x) { log += $"p{x}"; return x % 2 == 1; }
            int K(int x) { log += $"k{x}"; return -x; }
            var operators = new (string Name, Func<IEnumerable<int>, IEnumerable<int>> Make)[]
            {
                ("select", x => x.Select(S)), ("where", x => x.Where(P)), ("whereselect", x => x.Where(P).Select(S)), ("selectwhere", x => x.Select(S).Where(P)), ("selectselect", x => x.Select(S).Select(T)),
                ("skip", x => x.Select(S).Skip(1)), ("take", x => x.Select(S).Take(2)), ("skiptake", x => x.Skip(1).Take(2).Select(S)), ("takeselect", x => x.Take(3).Select(S)), ("whereskip", x => x.Where(P).Skip(1)), ("whereselectskip", x => x.Where(P).Select(S).Skip(1)),
                ("reverse", x => x.Select(S).Reverse()), ("reverseselect", x => x.Reverse().Select(S)), ("concat", x => x.Select(S).Concat(x.Select(T))), ("append", x => x.Select(S).Append(9)), ("prepend", x => x.Select(S).Prepend(0)), ("appends", x => x.Select(S).Append(8).Append(9)),
                ("distinct", x => x.Select(S).Distinct()), ("union", x => x.Select(S).Union(x.Select(T))), ("default", x => x.Select(S).DefaultIfEmpty()), ("order", x => x.Select(S).OrderBy(K)), ("orderskip", x => x.Select(S).OrderBy(K).Skip(1)), ("ordertake", x => x.Select(S).OrderBy(K).Take(2)), ("orderselect", x => x.OrderBy(K).Select(S)), ("thenby", x => x.OrderBy(y => y % 2).ThenBy(K)),
                ("many", x => x.Select(S).SelectMany(y => new[] { y, y })), ("cast", x => x.Select(S).Cast<int>()), ("oftype", x => x.Select(S).OfType<int>()), ("takelast", x => x.Select(S).TakeLast(2)), ("skiplast", x => x.Select(S).SkipLast(2)), ("takerange", x => x.Select(S).Take(1..3)), ("takewhile", x => x.Select(S).TakeWhile(y => y < 3)), ("skipwhile", x => x.Select(S).SkipWhile(y => y < 3)),
                ("zip", x => x.Select(S).Zip(x.Select(T), (a, b) => a + b)), ("except", x => x.Select(S).Except(x.Take(1).Select(T))), ("intersect", x => x.Select(S).Intersect(x.Take(2).Select(T))), ("groupby", x => x.GroupBy(K).Select(g => g.Count())), ("chunk", x => x.Select(S).Chunk(2).Select(c => c.Length)), ("indexed", x => x.Select((y, i) => S(y))), ("distinctby", x => x.Select(S).DistinctBy(K)), ("join", x => x.Join(x.Select(T), K, S, (a, b) => a)), ("appendselect", x => x.Append(9).Select(S)), ("concatselect", x => x.Concat([8]).Select(S)), ("distinctselect", x => x.Distinct().Select(S)), ("defaultselect", x => x.DefaultIfEmpty().Select(S)),
            };
            var ends = new (string Name, Func<IEnumerable<int>, object?> Run)[]
            {
                ("count", x => x.Count()), ("any", x => x.Any()), ("first", x => Try(() => x.First())), ("last", x => Try(() => x.Last())), ("at", x => Try(() => x.ElementAt(1))), ("far", x => x.ElementAtOrDefault(7)), ("contains", x => x.Contains(3)), ("list", x => x.ToList().Count), ("array", x => x.ToArray().Length), ("single", x => Try(() => x.Single())), ("cheap", x => x.TryGetNonEnumeratedCount(out var c) ? c : -1),
                ("skipfirst", x => x.Skip(1).First()), ("taketwo", x => x.Take(2).Count()), ("reversefirst", x => x.Reverse().First()), ("firstwhere", x => x.First(y => y > 0)), ("lastwhere", x => x.Last(y => y > 0)), ("sum", x => x.Sum()), ("max", x => x.Max()), ("takelast", x => x.TakeLast(1).Count()), ("sequal", x => x.SequenceEqual([1, 2])), ("atend", x => x.ElementAt(^1)), ("fornth", x => { foreach (var y in x) if (y > 1) return y; return 0; }),
            };
            foreach (var (name, make) in operators)
            {
                foreach (var (end, run) in ends)
                {
                    log = "";
                    var result = Try(() => run(make(Source())));
                    rig.Control($"{kind} {name} {end} {result} {log}");
                }
            }
        }
        """);
}
