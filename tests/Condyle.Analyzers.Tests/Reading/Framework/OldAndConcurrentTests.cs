namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>The collections without type arguments, those for several threads, readers of texts and complex numbers.</summary>
public class OldAndConcurrentTests
{
    [Fact]
    public void Collections_of_objects() => FrameworkOracle.Agrees(
        """
        var table = new System.Collections.Hashtable { ["a"] = 1 }; table.Add("b", "x"); table["c"] = null; object? held = table["a"]; rig.Control($"{held}{held is int}{held is string}{(int)table["a"]! + 1}{table["zz"] is null}{table.Contains("b")}{table.ContainsKey("q")}{table.ContainsValue("x")}{table.Count}"); table.Remove("b"); table.Remove("none"); rig.Control($"{table.Count}{((System.Collections.Hashtable)table.Clone()).Count}{table is System.Collections.IDictionary}");
        rig.Control(Try(() => { table.Add("a", 2); return 1; }) + Try(() => table[null!]) + Try(() => (string)table["a"]!)); table.Clear(); rig.Control($"{table.Count}"); foreach (System.Collections.DictionaryEntry none in table) rig.Control((string)none.Key);
        var list = new System.Collections.ArrayList { 4, "z" }; var at = list.Add(7); list.Insert(1, 'c'); list.Remove("z"); list[0] = 5; foreach (object item in list) rig.Control($"{item}_{at}"); foreach (int whole in new System.Collections.ArrayList { 8, 9 }) rig.Control($"{whole}"); rig.Control($"{list.Count}{list.Contains(7)}{list.IndexOf('c')}{list is System.Collections.IList}{list is System.Collections.Hashtable}"); rig.Control(All(list.Cast<object>()) + All(list.ToArray()) + Try(() => list[9]) + Try(() => (string)list[0]!));
        var queue = new System.Collections.Queue(); queue.Enqueue(1); queue.Enqueue("b"); rig.Control($"{queue.Count}{queue.Peek()}{queue.Dequeue()}{queue.Dequeue()}{Try(() => queue.Dequeue())}"); var stack = new System.Collections.Stack(new[] { 1, 2 }); stack.Push(3); rig.Control($"{stack.Pop()}{stack.Peek()}{stack.Count}{All(stack.Cast<int>())}");
        """);

    [Fact]
    public void Collections_for_several_threads() => FrameworkOracle.Agrees(
        """
        var d = new System.Collections.Concurrent.ConcurrentDictionary<string, int>(); var calls = 0; int Make(string key) { calls++; return key.Length + 4; }
        rig.Control($"{d.GetOrAdd("a", Make)}{d.GetOrAdd("a", Make)}{calls}{d.GetOrAdd("b", 9)}{d.AddOrUpdate("a", 1, (key, value) => value * 2)}{d.AddOrUpdate("n", key => key.Length, (key, value) => value)}{d.GetOrAdd("e", (key, more) => more + 1, 41)}{d.AddOrUpdate("e", (key, more) => 0, (key, value, more) => value + more, 5)}");
        rig.Control($"{d.TryAdd("b", 3)}{d.TryAdd("q", 3)}{d.TryRemove("q", out var removed)}{removed}{d.TryRemove("q", out var none)}{none}{d.TryUpdate("a", 77, 10)}{d.TryUpdate("a", 78, 10)}{d["a"]}{d.TryGetValue("zz", out var missing)}{missing}{d.ContainsKey("b")}{d.Count}{d.IsEmpty}{Try(() => d["zz"])}"); d["s"] = 5; d.Clear(); rig.Control($"{d.Count}"); d["only"] = 3; foreach (var (key, value) in d) rig.Control($"{key}{value}");
        var f = new System.Collections.Concurrent.ConcurrentDictionary<string, Func<int, int>>(); f.GetOrAdd("q", number => number + 1); f.GetOrAdd("z", key => number => number + key.Length); rig.Control($"{f["q"](3)}{f["z"](3)}");
        var q = new System.Collections.Concurrent.ConcurrentQueue<int>([5]); q.Enqueue(2); rig.Control($"{q.TryDequeue(out var first)}{first}{q.TryPeek(out var next)}{next}{q.Count}{All(q)}"); var s = new System.Collections.Concurrent.ConcurrentStack<int>(); s.Push(1); s.Push(2); rig.Control($"{s.TryPop(out var top)}{top}{s.TryPop(out top)}{s.TryPop(out top)}{top}{s.IsEmpty}");
        """);

    [Fact]
    public void Texts_read_by_line_and_character() => FrameworkOracle.Agrees(
        """
        using (var reader = new System.IO.StringReader("one\ntwo\r\n\nthree\rfour")) while (reader.ReadLine() is { } line) rig.Control($"[{line}]");
        System.IO.TextReader r = new System.IO.StringReader("ab\nc"); rig.Control($"{(char)r.Read()}{(char)r.Peek()}{r.ReadLine()}{r.ReadToEnd()}{r.ReadToEnd().Length}{r.Read()}{r.Peek()}{r.ReadLine() is null}"); rig.Control(Try(() => new System.IO.StringReader(null!)));
        """);

    [Fact]
    public void Complex_numbers() => FrameworkOracle.Agrees(
        """
        var z = System.Numerics.Complex.FromPolarCoordinates(2, Math.PI / 6); var y = System.Numerics.Complex.Conjugate(z) * z + 1; z *= 2; System.Numerics.Complex x = 3; x -= System.Numerics.Complex.ImaginaryOne;
        void Put(string name, double a, double b) => rig.Skeleton(name).Root(name + "_root", at: new Vector3((float)a, (float)b, 0)); Put("a", z.Real, z.Imaginary); Put("b", y.Magnitude, z.Phase); Put("c", (2 * z).Real, (x / z).Imaginary); Put("d", (-x).Real, System.Numerics.Complex.Abs(x)); rig.Control($"{x == new System.Numerics.Complex(3, -1)}{x != z}{System.Numerics.Complex.One.Equals(x)}");
        """);
}
