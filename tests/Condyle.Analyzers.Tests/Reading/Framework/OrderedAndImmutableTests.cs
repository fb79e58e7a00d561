namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>Sorted, immutable and frozen collections, arrays, tuples, enumerators; and that structures are copied into and out of all of them.</summary>
public class OrderedAndImmutableTests
{
    [Fact]
    public void Sorted_collections() => FrameworkOracle.Agrees(
        """
        var s = new SortedSet<int> { 5, 1, 3, 1 }; rig.Control($"{All(s)}{s.Min}{s.Max}{s.Count}{s.Contains(3)}{s.Add(3)}{s.Remove(1)}{All(s.Reverse())}{s.TryGetValue(5, out var v)}{v}"); s.UnionWith([9, 7]); s.ExceptWith([5]); s.IntersectWith([3, 7, 9, 11]); s.SymmetricExceptWith([9, 2]); rig.Control(All(s)); var view = s.GetViewBetween(2, 5); s.Add(4); rig.Control(All(view) + view.Count + view.Contains(7) + view.Min + view.Max + s.IsSubsetOf([2, 3, 4, 7, 8]) + s.SetEquals([7, 4, 3, 2]) + s.Overlaps([100]) + s.RemoveWhere(x => x > 4) + All(s)); view.Add(5); rig.Control(All(s) + Try(() => view.Add(99)) + Try(() => { foreach (var x in s) s.Add(x + 50); return 1; })); s.Clear(); rig.Control($"{s.Count}{s.Min}"); rig.Control(All(new SortedSet<string>(["b", "A", "a"], StringComparer.Ordinal)) + All(new SortedSet<int>(new[] { 1, 3, 2 }, Comparer<int>.Create((a, b) => b - a))) + All(new SortedSet<Size> { new(3), new(1), new(2) }));
        var d = new SortedDictionary<int, string> { [3] = "c", [1] = "a" }; d.Add(2, "b"); rig.Control($"{All(d.Keys)}{All(d.Values)}{d[1]}{d.ContainsKey(5)}{d.Remove(1)}{d.TryGetValue(3, out var t)}{t}{d.First().Key}{d.Count}{d.ContainsValue("b")}{All(d.Select(p => p.Value))}"); var l = new SortedList<string, int>(StringComparer.Ordinal) { ["b"] = 2, ["a"] = 1 }; rig.Control($"{All(l.Keys)}{l.Keys[1]}{l.Values[0]}{l.IndexOfKey("b")}{l.IndexOfKey("z")}{l.IndexOfValue(1)}{l.GetKeyAtIndex(0)}{l.GetValueAtIndex(1)}{l["a"]}{l.Count}"); l.RemoveAt(0); l.SetValueAtIndex(0, 9); rig.Control(All(l.Values) + Try(() => { l.Add("b", 1); return 1; }) + Try(() => l["q"]) + Try(() => { foreach (var p in d) d[p.Key] = "x"; return 1; }) + All(new SortedDictionary<DayOfWeek, int> { [DayOfWeek.Friday] = 1, [DayOfWeek.Monday] = 2 }.Keys) + All(new SortedDictionary<int, int>(new Dictionary<int, int> { [2] = 1, [1] = 2 }).Keys));
        """,
        """
        private sealed record Size(int Value) : IComparable<Size> { public int CompareTo(Size? other) => Value.CompareTo(other!.Value); }
        """);

    [Fact]
    public void Immutable_lists_queues_and_stacks() => FrameworkOracle.Agrees(
        """
        var a = ImmutableArray.Create(3, 1, 2); var b = a.Add(5).AddRange(new[] { 7, 8 }).Insert(0, 9).RemoveAt(1).SetItem(0, 4); rig.Control($"{All(a)}|{All(b)}|{a.Length}{b[1]}{a.IndexOf(2)}{a.Contains(9)}{All(a.Sort())}{All(a.Remove(1))}{All(a.RemoveAll(x => x > 1))}{All(a.Reverse())}{a.IsEmpty}{a.IsDefault}{ImmutableArray<int>.Empty.Length}{All(a.Replace(1, 6))}{All(a.Slice(1, 2))}{All(new[] { 1, 2 }.ToImmutableArray())}{All(a.Select(x => x + 1).ToImmutableArray())}"); var bld = ImmutableArray.CreateBuilder<int>(3); bld.Add(1); bld.AddRange(2, 3); bld[0] = 7; rig.Control(All(bld.ToImmutable()) + bld.Count + All(bld.MoveToImmutable()) + bld.Count); ImmutableArray<string> ca = ["x", "y"]; rig.Control(All(ca) + ca.Length); foreach (var x in ca) rig.Control(x);
        var l = ImmutableList.Create("a", "b"); var m = l.Add("c").Insert(0, "z").Remove("a").SetItem(0, "y").Replace("b", "q").AddRange(new[] { "e", "f" }).RemoveRange(1, 1); rig.Control($"{All(l)}|{All(m)}|{m.Count}{m[0]}{m.IndexOf("c")}{m.Contains("e")}{All(m.Reverse())}{ImmutableList<int>.Empty.Add(1).Count}{All(m.ToBuilder())}{m.Find(x => x == "e")}{All(m.GetRange(0, 2))}{m.FindIndex(x => x == "f")}{All(ImmutableList.CreateRange(new[] { 2, 1 }).Sort())}{m.Clear().Count}{Try(() => l[9])}{Try(() => l.Replace("nope", "x"))}"); ImmutableList<int> cl = [1, 2]; rig.Control(All(cl));
        var q = ImmutableQueue.Create(1, 2).Enqueue(3); var q2 = q.Dequeue(out var first); rig.Control($"{first}{All(q)}{All(q2)}{q.Peek()}{q.IsEmpty}{ImmutableQueue<int>.Empty.IsEmpty}{Try(() => ImmutableQueue<int>.Empty.Dequeue())}"); var s = ImmutableStack.Create(1, 2).Push(3); rig.Control($"{All(s)}{s.Peek()}{All(s.Pop())}{All(s.Pop(out var top))}{top}{Try(() => ImmutableStack<int>.Empty.Peek())}");
        """);

    [Fact]
    public void Immutable_and_frozen_sets_and_dictionaries() => FrameworkOracle.Agrees(
        """
        var h = ImmutableHashSet.Create(30, 10, 20).Add(5).Remove(10); rig.Control($"{All(h)}{h.Count}{h.Contains(5)}{All(h.Union([1, 40]))}{All(h.Except([5]))}{All(h.Intersect([20, 30, 99]))}{All(h.SymmetricExcept([5, 6]))}{h.SetEquals([5, 20, 30])}{ImmutableHashSet<string>.Empty.Add("x").Contains("x")}{All(new[] { 3, 1, 3 }.ToImmutableHashSet())}{ImmutableHashSet.Create(StringComparer.OrdinalIgnoreCase, "a", "A").Count}{h.IsSubsetOf([5, 20, 30, 1])}"); var hb = h.ToBuilder(); hb.Add(7); hb.Remove(5); rig.Control(All(hb.ToImmutable()) + hb.Count + All(ImmutableHashSet.Create('c', 'a'))); var ss = ImmutableSortedSet.Create(3, 1, 2); rig.Control($"{All(ss)}{ss[0]}{ss.Min}{ss.Max}{All(ss.Add(0))}{ss.IndexOf(2)}{All(new[] { 5, 4 }.ToImmutableSortedSet())}{All(ss.Reverse())}");
        var d = ImmutableDictionary<int, string>.Empty.Add(3, "c").Add(1, "a").SetItem(2, "b").Remove(3); rig.Control($"{All(d.Keys)}{All(d.Values)}{d[1]}{d.ContainsKey(9)}{d.TryGetValue(2, out var v)}{v}{d.Count}{d.GetValueOrDefault(8, "none")}{Try(() => d.Add(1, "zz"))}{d.Add(1, "a").Count}{Try(() => d[77])}{All(d.AddRange([KeyValuePair.Create(7, "g")]).Keys)}{All(new[] { 2, 1 }.ToImmutableDictionary(x => x, x => x * 2).Values)}{d.Contains(KeyValuePair.Create(1, "a"))}"); var db = ImmutableDictionary.CreateBuilder<string, int>(); db["x"] = 1; db.Add("y", 2); rig.Control($"{db.ToImmutable()["y"]}{db.Count}{db.ContainsKey("x")}"); var sd = ImmutableSortedDictionary<int, string>.Empty.Add(2, "b").Add(1, "a"); rig.Control(All(sd.Keys) + sd[2] + sd.Count + All(sd.Select(p => p.Value)));
        var f = new[] { "a", "b" }.ToFrozenSet(); var fd = new Dictionary<string, int> { ["k"] = 1, ["l"] = 2 }.ToFrozenDictionary(); rig.Control($"{f.Contains("a")}{f.Contains("z")}{f.Count}{fd["k"]}{fd.TryGetValue("l", out var fl)}{fl}{fd.ContainsKey("q")}{fd.Count}{new[] { 1, 2 }.ToFrozenDictionary(x => x, x => x * 3)[2]}{Try(() => fd["none"])}{f.IsSubsetOf(["a", "b", "c"])}");
        """);

    [Fact]
    public void Arrays_are_sorted_as_the_framework_does() => FrameworkOracle.Agrees(
        """
        var a = new[] { 5, 3, 9, 1 }; Array.Sort(a); rig.Control(All(a) + Array.IndexOf(a, 9) + Array.IndexOf(a, 77) + Array.BinarySearch(a, 5) + Array.BinarySearch(a, 4)); Array.Reverse(a); Array.Reverse(a, 1, 2); rig.Control(All(a)); Array.Fill(a, 7, 1, 2); rig.Control(All(a) + Array.Find(a, x => x > 6) + Array.FindLast(a, x => x < 6) + Array.FindIndex(a, x => x == 7) + Array.FindLastIndex(a, x => x == 7) + Array.Exists(a, x => x == 1) + Array.TrueForAll(a, x => x > 0) + All(Array.FindAll(a, x => x == 7)) + All(Array.ConvertAll(a, x => $"<{x}>")) + Array.LastIndexOf(a, 7)); var b = new int[6]; Array.Copy(a, b, 2); Array.Copy(a, 0, b, 3, 3); rig.Control(All(b)); Array.Resize(ref b, 3); rig.Control(All(b)); Array.Resize(ref b, 5); rig.Control(All(b) + b.Length); Array.Fill(b, 4); rig.Control(All(b)); var t = ""; Array.ForEach(b, x => t += x); rig.Control(t + All(Array.Empty<int>()) + All(Array.AsReadOnly(b)) + All((int[])b.Clone())); b.CopyTo(a = new int[6], 1); rig.Control(All(a));
        var keys = new[] { 3, 1, 2 }; var items = new[] { "c", "a", "b" }; Array.Sort(keys, items); rig.Control(All(keys) + All(items)); Array.Sort(items, (x, y) => string.CompareOrdinal(y, x)); rig.Control(All(items)); Array.Sort(keys, Comparer<int>.Create((x, y) => y - x)); rig.Control(All(keys)); var many = Enumerable.Range(0, 40).Select(i => (Key: i * 7 % 5, Name: $"n{i}")).ToArray(); Array.Sort(many, (x, y) => x.Key - y.Key); rig.Control(All(many.Select(m => m.Name))); var list = Enumerable.Range(0, 70).Select(i => (Key: i * i % 11, Id: i)).ToList(); list.Sort((x, y) => x.Key.CompareTo(y.Key)); rig.Control(All(list.Select(m => m.Id))); var ks = Enumerable.Range(0, 30).Select(i => i % 3).ToArray(); var vs = Enumerable.Range(0, 30).ToArray(); Array.Sort(ks, vs); rig.Control(All(vs));
        rig.Control(Try(() => { Array.Copy(keys, items = new string[1], 3); return 1; }) + Try(() => { Array.Sort((int[])null!); return 1; }) + Try(() => { Array.Fill(keys, 1, 2, 5); return 1; }) + Try(() => { Array.Sort(new object[] { new(), new() }); return 1; }) + Try(() => { Array.Sort(new[] { 1, 2, 3 }, (x, y) => throw new ArgumentException()); return 1; }) + Try(() => { new List<int> { 1, 2 }.Sort((x, y) => throw new FormatException()); return 1; }));
        """);

    [Fact]
    public void Tuples_lazy_values_enumerators_and_comparers() => FrameworkOracle.Agrees(
        """
        var t = Tuple.Create(1, "a"); var u = new Tuple<int, string>(1, "a"); rig.Control($"{t.Item1}{t.Item2}{t.Equals(u)}{t}"); var (x, y) = t; rig.Control(x + y); var v = ValueTuple.Create(1, "b"); rig.Control($"{v}{v.Equals((1, "b"))}{v.CompareTo((1, "b"))}{(1, 2).CompareTo((1, 3))}{(2, 0).CompareTo((1, 3))}{v == (1, "b")}{v.Item1}"); var made = 0; var lazy = new Lazy<int>(() => { made++; return 5; }); rig.Control($"{lazy.IsValueCreated}{made}{lazy.Value}{lazy.Value}{made}{lazy.IsValueCreated}{new Lazy<string>("q").Value}");
        var e = new List<int> { 1, 2 }.GetEnumerator(); while (e.MoveNext()) rig.Control($"e{e.Current}"); using IEnumerator<string> f = ((IEnumerable<string>)new[] { "x", "y" }).GetEnumerator(); f.MoveNext(); rig.Control(f.Current + f.MoveNext() + f.Current + f.MoveNext()); var g = new[] { 3, 4 }.Select(i => i * 2).GetEnumerator(); rig.Control($"{g.MoveNext()}{g.Current}{g.MoveNext()}{g.Current}{g.MoveNext()}"); g.Dispose(); foreach (var c in Pairs(["a", "b", "c"])) rig.Control(c); var dd = new Dictionary<string, int> { ["k"] = 1 }.GetEnumerator(); dd.MoveNext(); rig.Control(dd.Current.Key); var l = new List<int> { 1 }; var le = l.GetEnumerator(); l.Add(2); rig.Control(Try(() => le.MoveNext()));
        var cmp = Comparer<int>.Create((a, b) => b.CompareTo(a)); rig.Control($"{cmp.Compare(1, 2)}{Comparer<int>.Default.Compare(1, 2)}{EqualityComparer<string>.Default.Equals("a", "a")}{EqualityComparer<string>.Create((a, b) => a!.Length == b!.Length, s => s.Length).Equals("ab", "cd")}{ReferenceEqualityComparer.Instance.Equals(l, l)}{All(new[] { 1, 3, 2 }.OrderBy(i => i, new Back()))}{new List<int> { 1, 2 }.BinarySearch(2, Comparer<int>.Default)}{All(new[] { "bb", "a" }.Order(Comparer<string>.Create((a, b) => a.Length - b.Length)))}");
        """,
        """
        private sealed class Back : IComparer<int> { public int Compare(int a, int b) => b - a; }
        private static IEnumerable<string> Pairs(IEnumerable<string> items) { using var e = items.GetEnumerator(); if (!e.MoveNext()) yield break; var last = e.Current; while (e.MoveNext()) { yield return last + e.Current; last = e.Current; } }
        """);

    [Fact]
    public void Structures_are_copied_into_and_out_of_collections() => FrameworkOracle.Agrees(
        """
        var p = new Point[] { new() { X = 1 }, new() { X = 2 } }; var l = p.ToList(); p[0].X = 9; rig.Control($"{l[0].X}{p[0].X}"); var c = l.ToArray(); c[1].X = 7; rig.Control($"{l[1].X}{c[1].X}"); var f = p.First(); f.X = 5; rig.Control($"{p[0].X}{f.X}"); var q = p.Where(x => x.X > 0).ToArray(); q[0].X = 3; rig.Control($"{p[0].X}"); Array.Copy(p, c, 2); c[0].X = 4; rig.Control($"{p[0].X}{c[0].X}"); var m = new Dictionary<string, Point> { ["a"] = p[0] }; m.TryGetValue("a", out var g); g.X = 77; rig.Control($"{m["a"].X}{g.X}"); foreach (var z in p) { var w = z; w.X = 100; } rig.Control($"{p[0].X}"); Array.Fill(p, new Point { X = 8 }); p[0].X = 1; rig.Control($"{p[1].X}"); var pop = new Queue<Point>(p).Dequeue(); pop.X = 55; rig.Control($"{p[0].X}");
        """,
        """
        private struct Point { public int X; }
        """);
}
