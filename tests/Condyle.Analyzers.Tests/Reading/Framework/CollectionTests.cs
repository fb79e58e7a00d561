namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>Lists, dictionaries, sets and the like, with the order and the exceptions of the framework.</summary>
public class CollectionTests
{
    [Fact]
    public void Lists() => FrameworkOracle.Agrees(
        """
        var l = new List<int> { 5, 3, 8 }; l.Add(1); l.AddRange([9, 2]); l.Insert(1, 7); l.InsertRange(0, new[] { 4, 4 }); l.RemoveAt(2); l[0] = 6; rig.Control(All(l)); rig.Control($"{l.Count}{l.IndexOf(4)}{l.IndexOf(9, 2)}{l.IndexOf(9, 2, 2)}{l.LastIndexOf(4)}{l.Contains(8)}{l.Remove(8)}{l.Remove(99)}{l.Exists(x => x > 8)}{l.Find(x => x > 3)}{l.Find(x => x > 99)}{l.FindLast(x => x < 5)}{l.FindIndex(x => x == 7)}{l.FindIndex(2, x => x > 1)}{l.FindIndex(1, 2, x => x == 9)}{l.FindLastIndex(x => x == 4)}{l.TrueForAll(x => x > 0)}{l.RemoveAll(x => x % 2 == 1)}");
        rig.Control(All(l)); l.AddRange(new List<int> { 5, 1, 3 }); l.Sort(); rig.Control(All(l) + l.BinarySearch(4) + l.BinarySearch(-5) + l.BinarySearch(99)); l.Sort((a, b) => b - a); l.Reverse(1, 2); rig.Control(All(l)); l.Reverse(); rig.Control(All(l.GetRange(1, 3)) + All(l.FindAll(x => x < 4)) + All(l.ConvertAll(x => x * 2)) + All(l.Slice(0, 2)) + All(l[1..3]) + l[^1]); l.RemoveRange(1, 2); var t = ""; l.ForEach(x => t += x); rig.Control(t); var a = new int[6]; l.CopyTo(a); l.CopyTo(a, 2); l.CopyTo(0, a, 5, 1); rig.Control(All(a) + All(l.ToArray()) + l.AsReadOnly().Count + l.AsReadOnly()[0]); l.Clear(); rig.Control($"{l.Count}{All(new List<string>(3))}{All(new List<int>(new[] { 1, 2 }))}");
        rig.Control(Try(() => l[0]) + Try(() => { l.RemoveAt(0); return 1; }) + Try(() => { l.Insert(2, 1); return 1; }) + Try(() => l.GetRange(0, 1)) + Try(() => new List<int>(-1)) + Try(() => { l.AddRange(null!); return 1; }) + Try(() => new List<int>((IEnumerable<int>)null!)) + Try(() => { foreach (var x in new[] { 1, 2 }) l.Add(x); foreach (var x in l) l.Add(x); return 1; }));
        """);

    [Fact]
    public void Calls_through_interfaces_find_the_own_type() => FrameworkOracle.Agrees(
        """
        IList<string> il = new List<string> { "a", "b" }; il.Add("c"); il[0] = "z"; il.Insert(1, "y"); il.RemoveAt(3); ICollection<string> ic = il; ic.Add("q"); ic.Remove("b"); IReadOnlyList<string> ro = (List<string>)il; IEnumerable<string> en = ro; IReadOnlyCollection<string> rc = ro; System.Collections.IList old = (List<string>)il; rig.Control($"{ro.Count}{ro[1]}{rc.Count}{ic.Count}{ic.Contains("q")}{ic.IsReadOnly}{old.Count}{old[0]}{il.IndexOf("q")}{All(en)}");
        IDictionary<string, int> id = new Dictionary<string, int> { ["a"] = 1 }; id.Add("b", 2); id["c"] = 3; id.Add(new KeyValuePair<string, int>("d", 4)); IReadOnlyDictionary<string, int> rd = (Dictionary<string, int>)id; rig.Control($"{id.Count}{id.ContainsKey("a")}{rd["b"]}{rd.TryGetValue("x", out var x)}{x}{All(id.Keys)}{All(rd.Values)}{id.Remove("a")}{id.Contains(new KeyValuePair<string, int>("b", 2))}{id.Remove(new KeyValuePair<string, int>("b", 9))}{rd.GetValueOrDefault("zz", 7)}{rd.GetValueOrDefault("c")}");
        ISet<int> s = new HashSet<int> { 1 }; rig.Control($"{s.Add(1)}{s.Add(2)}{s.Count}{s.Contains(2)}{s.IsSubsetOf([1, 2, 3])}"); IReadOnlySet<int> rs = (HashSet<int>)s; rig.Control($"{rs.Contains(1)}{rs.Overlaps([5])}"); ICollection<int> arr = new[] { 1, 2 }; IList<int> al = new[] { 4, 5 }; IReadOnlyList<int> ra = new[] { 7 }; rig.Control($"{arr.Count}{arr.Contains(2)}{al[1]}{al.IndexOf(5)}{ra[0]}{ra.Count}{arr.IsReadOnly}{Try(() => { arr.Add(1); return 1; })}");
        IReadOnlyList<Side> sides = Side.Both; rig.Control($"{sides.Count}{sides[1]}");
        """);

    [Fact]
    public void Dictionaries_keep_their_order_after_removals() => FrameworkOracle.Agrees(
        """
        var d = new Dictionary<string, int>(); for (var i = 0; i < 5; i++) d[$"k{i}"] = i; d.Remove("k1"); d.Remove("k3", out var gone); d["n1"] = 10; d["n2"] = 20; d["n3"] = 30; rig.Control(All(d.Keys) + All(d.Values) + gone + d.Count + d.ContainsValue(20) + d.ContainsKey("k3") + d.TryAdd("k0", 9) + d.TryAdd("t", 9) + d["t"] + d.TryGetValue("zz", out var z) + z);
        var keys = d.Keys; var vals = d.Values; d.Add("late", 1); rig.Control($"{keys.Count}{keys.Contains("late")}{vals.Contains(30)}{keys.Last()}"); foreach (var (k, v) in d) if (v > 9) d.Remove(k); rig.Control(All(d.Select(p => p.Key + p.Value))); foreach (var p in d) d[p.Key] = p.Value + 1; rig.Control(All(d.Values)); var copy = new Dictionary<string, int>(d); copy["c"] = 1; copy["c2"] = 2; d["c"] = 1; d["c2"] = 2; rig.Control(All(copy.Keys) + All(d.Keys)); d.Clear(); d["x"] = 1; rig.Control(All(d.Keys) + d.Count); foreach (var pair in d) rig.Control($"{pair}{pair.Key}{pair.Value}");
        rig.Control(Try(() => d["no"]) + Try(() => { d.Add("x", 1); return 1; }) + Try(() => d[null!]) + Try(() => { foreach (var p in d) d.Add(p.Key + "1", 1); return 1; }) + Try(() => { foreach (var p in d) d["x"] = 5; return 2; }) + Try(() => { foreach (var p in d) d.Clear(); return 3; }) + Try(() => new Dictionary<string, int>(-1)) + Try(() => new Dictionary<string, int>((IDictionary<string, int>)null!)));
        var byPair = new Dictionary<(int, string), List<int>> { { (1, "a"), [1] }, { (2, "b"), [2, 3] } }; byPair[(1, "a")].Add(7); rig.Control(All(byPair[(1, "a")]) + byPair.ContainsKey((2, "b")) + new Dictionary<int, string>(new[] { KeyValuePair.Create(1, "x"), new KeyValuePair<int, string>(2, "y") })[2]); var (kk, vv) = KeyValuePair.Create("k", 3); rig.Control(kk + vv);
        """);

    [Fact]
    public void Sets_and_their_comparers() => FrameworkOracle.Agrees(
        """
        var h = new HashSet<int> { 1, 2, 3, 4, 5 }; h.Remove(2); h.Remove(4); h.Add(8); h.Add(9); h.Add(10); rig.Control(All(h)); var hc = new HashSet<int>(h); h.Remove(1); var h2 = new HashSet<int>(h); h2.Add(77); rig.Control(All(h2)); h.UnionWith([1, 3, 20]); rig.Control(All(h)); h.IntersectWith(new List<int> { 20, 3, 9, 100 }); rig.Control(All(h)); h.Add(50); h.Add(51); rig.Control(All(h)); h.ExceptWith([3, 99]); rig.Control(All(h)); h.SymmetricExceptWith([9, 60, 60, 9]); rig.Control(All(h)); h.SymmetricExceptWith(new HashSet<int> { 60, 61 }); rig.Control(All(h)); rig.Control($"{h.RemoveWhere(x => x > 50)}{h.Count}{h.IsSubsetOf(hc)}{h.IsSupersetOf([20])}{h.IsProperSubsetOf([20, 50, 1])}{h.IsProperSupersetOf([20])}{h.Overlaps([1, 20])}{h.SetEquals([50, 20, 20])}{h.TryGetValue(20, out var got)}{got}{h.TryGetValue(5, out var not)}{not}{h.Contains(50)}"); h.Clear(); h.Add(3); h.Add(1); rig.Control(All(h)); h.TrimExcess();
        var e = new HashSet<string?> { "a", null }; rig.Control($"{e.Contains(null)}{e.Count}{e.Add(null)}{All(e)}"); rig.Control(Try(() => { foreach (var x in h) h.Add(x + 100); return 1; }) + Try(() => { foreach (var x in h) h.Remove(x); return 2; }) + Try(() => { h.UnionWith(null!); return 1; })); var rec = new HashSet<Rec> { new("a", 1), new("a", 1), new("b", 2) }; rig.Control($"{rec.Count}{rec.Contains(new Rec("b", 2))}{new HashSet<Named> { new("x"), new("X"), new("y") }.Count}{new HashSet<Plain> { new(), new() }.Count}{new HashSet<string>(new Lengths()) { "ab", "cd", "efg" }.Count}{new Dictionary<string, int>(new Lengths()) { ["ab"] = 1 }["zz"]}");
        """,
        """
        private sealed record Rec(string Name, int Size);
        private sealed class Plain;
        private sealed class Named(string name) : IEquatable<Named> { private readonly string name = name; public bool Equals(Named? other) => other is not null && string.Equals(name, other.name, StringComparison.OrdinalIgnoreCase); public override bool Equals(object? o) => Equals(o as Named); public override int GetHashCode() => name.Length; }
        private sealed class Lengths : IEqualityComparer<string> { public bool Equals(string? a, string? b) => a!.Length == b!.Length; public int GetHashCode(string s) => s.Length; }
        """);

    [Fact]
    public void Queues_and_stacks() => FrameworkOracle.Agrees(
        """
        var q = new Queue<int>([1, 2, 3]); q.Enqueue(4); rig.Control($"{q.Dequeue()}{q.Peek()}{q.Count}{q.Contains(3)}{All(q)}{q.TryDequeue(out var a)}{a}{q.TryPeek(out var b)}{b}{All(q.ToArray())}"); q.Clear(); rig.Control($"{q.TryDequeue(out var c)}{c}{q.TryPeek(out _)}{Try(() => q.Dequeue())}{Try(() => q.Peek())}{q.Count}"); q.Enqueue(9); rig.Control(Try(() => { foreach (var x in q) q.Enqueue(x); return 1; }) + Try(() => { foreach (var x in q) q.Dequeue(); return 1; }));
        var s = new Stack<string>(["a", "b"]); s.Push("c"); rig.Control($"{s.Pop()}{s.Peek()}{s.Count}{All(s)}{s.Contains("a")}{s.TryPop(out var d)}{d}{s.TryPeek(out var e)}{e}{All(s.ToArray())}"); s.Clear(); rig.Control($"{s.TryPop(out var f)}{f is null}{Try(() => s.Pop())}{Try(() => s.Peek())}{All(new Stack<int>(new Stack<int>([1, 2, 3])))}");
        """);

    [Fact]
    public void Linked_lists_and_their_nodes() => FrameworkOracle.Agrees(
        """
        var l = new LinkedList<string>(["b", "c"]); l.AddFirst("a"); var d = l.AddLast("d"); l.AddBefore(d, "x"); l.AddAfter(d, "e"); var n = new LinkedListNode<string>("node"); l.AddAfter(l.First!, n); rig.Control(All(l) + l.Count + l.First!.Value + l.Last!.Value + l.Find("c")!.Next!.Value + d.Previous!.Value + l.Contains("x") + (l.Find("zz") is null) + l.FindLast("a")!.Value); n.Value = "changed"; l.Remove(d); l.Remove("b"); l.RemoveFirst(); l.RemoveLast(); rig.Control(All(l) + (d.List is null) + (n.List == l) + l.Remove("zz") + (n.Previous is null)); for (var node = l.First; node is not null; node = node.Next) rig.Control(node.Value); rig.Control(Try(() => { l.AddLast(n); return 1; }) + Try(() => { l.Remove(d); return 1; }) + Try(() => { new LinkedList<int>().RemoveFirst(); return 1; }) + Try(() => { foreach (var x in l) l.AddLast(x); return 1; })); l.Clear(); rig.Control($"{l.Count}{l.First is null}{n.List is null}"); ((ICollection<string>)l).Add("z"); rig.Control(All(l));
        """);

    [Fact]
    public void Priority_queues_hand_out_equals_in_the_same_order() => FrameworkOracle.Agrees(
        """
        var p = new PriorityQueue<string, int>(); foreach (var (x, w) in new[] { ("a", 3), ("b", 1), ("c", 3), ("d", 2), ("e", 1), ("f", 3), ("g", 1), ("h", 2), ("i", 3) }) p.Enqueue(x, w); rig.Control($"{p.Count}{p.Peek()}{p.TryPeek(out var e, out var pr)}{e}{pr}{All(p.UnorderedItems.Select(i => i.Element + i.Priority))}"); rig.Control(p.EnqueueDequeue("z", 0) + p.EnqueueDequeue("y", 9) + p.DequeueEnqueue("w", 2)); rig.Control($"{p.Remove("c", out var r, out var rp)}{r}{rp}{p.Remove("nope", out _, out _)}"); var order = ""; while (p.TryDequeue(out var x, out var w)) order += x + w; rig.Control(order + p.Count + Try(() => p.Dequeue()) + Try(() => p.Peek()));
        p.EnqueueRange([("k", 5), ("l", 1), ("m", 5), ("n", 1), ("o", 3), ("q", 5)]); p.EnqueueRange(["r", "s"], 3); order = ""; while (p.Count > 0) order += p.Dequeue(); rig.Control(order); var back = new PriorityQueue<int, int>([(1, 1), (2, 2), (3, 3), (4, 2)], Comparer<int>.Create((a, b) => b.CompareTo(a))); rig.Control($"{back.Dequeue()}{back.Dequeue()}{back.Dequeue()}"); var floats = new PriorityQueue<string, float>(); floats.EnqueueRange(["x", "y", "z"], 1.5f); rig.Control(floats.Dequeue() + floats.Dequeue() + floats.Dequeue()); back.Clear(); rig.Control($"{back.Count}");
        """);
}
