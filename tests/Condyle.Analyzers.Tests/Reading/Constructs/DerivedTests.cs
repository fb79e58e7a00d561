namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>Types that derive from the framework's, places that it hands out, and what is moved on by hand.</summary>
public class DerivedTests
{
    [Fact]
    public void Types_that_derive_from_collections_are_collections() => Oracle.Agrees(
        """
        var bag = new Bag { new Part("a", 1), new Part("b", 2) }; bag.Put("c");
        rig.Group("k" + bag.Count + bag[1].Size + bag.Total() + bag.Any(part => part.Name == "c") + "_group");
        foreach (var part in bag) rig.Group(part.Name + "_group");
        var names = new Names(["x", "y"]); rig.Group(string.Join("", names) + names.Count + names.Contains("X") + "_group");
        var map = new Map { ["q"] = 3 }; rig.Group("m" + map["q"] + map.Get("zz") + map.Count + "_group");
        var wrap = new Wrap<int>(); wrap.Add(3); wrap.AddRange([4, 5]); rig.Group("w" + wrap.Sum() + wrap[^1] + (wrap is List<int>) + ((IList<int>)wrap).Count + "_group");
        List<int> plain = wrap; plain.Add(9); rig.Group("p" + wrap.Count + new List<int>(wrap).Count + string.Join("", wrap[1..3]) + "_group");
        """,
        """
        private sealed record Part(string Name, int Size);
        private sealed class Bag : List<Part>
        {
            public void Put(string name) => Add(new Part(name, Count + 5));
            public int Total() { var total = 0; foreach (var part in this) total += part.Size; return total; }
        }
        private sealed class Names(IEnumerable<string> items) : HashSet<string>(items, StringComparer.OrdinalIgnoreCase);
        private sealed class Map : Dictionary<string, int> { public int Get(string key) => TryGetValue(key, out var value) ? value : -1; }
        private class Wrap<T> : List<T>;
        """);

    [Fact]
    public void Places_that_the_framework_hands_out() => Oracle.Agrees(
        """
        Span<int> items = stackalloc int[4]; ref var first = ref System.Runtime.InteropServices.MemoryMarshal.GetReference(items);
        for (var i = 0; i < 4; i++) System.Runtime.CompilerServices.Unsafe.Add(ref first, i) = i * 2;
        ref var last = ref System.Runtime.CompilerServices.Unsafe.Add(ref first, 3); last++;
        rig.Group("u" + items[3] + items[2] + System.Runtime.CompilerServices.Unsafe.Subtract(ref last, 1) + "_group");
        var lent = System.Buffers.ArrayPool<int>.Shared.Rent(20); lent[1] = 7; rig.Group("p" + lent[1] + lent.Length + "_group"); System.Buffers.ArrayPool<int>.Shared.Return(lent);
        """);

    [Fact]
    public void Texts_written_in_place() => Oracle.Agrees(
        """
        static string Name(int a) => string.Create(6, (a, "l"), static (text, state) => { Tags.Slice(state.a << 2, 4).CopyTo(text); text[4] = (char)('0' | state.a); state.Item2.CopyTo(text[5..]); });
        rig.Group(Name(1) + "_group"); var bits = BitConverter.SingleToInt32Bits(1.5f) >> 1; rig.Group("f" + bits + (BitConverter.Int32BitsToSingle(0x3F800000) == 1f) + "_group");
        var characters = new char[5]; "stern".CopyTo(1, characters, 0, 4); characters[4] = '_'; rig.Group(new string(characters) + "group");
        """,
        "private static ReadOnlySpan<char> Tags => \"kneefoot\";");

    [Fact]
    public void Enumerators_of_chains_are_moved_on_by_hand() => Oracle.Agrees(
        """
        var root = rig.Skeleton("s").Root("a"); var tip = root.Child("b", at: Vector3.One); var chain = rig.Chain(root, tip);
        var each = chain.GetEnumerator(); while (each.MoveNext()) rig.Group(each.Current.Name + "_group");
        IEnumerator<Joint> other = ((IEnumerable<Joint>)chain).GetEnumerator(); while (other.MoveNext()) rig.Group("x" + other.Current.Name + "_group");
        """);

    [Fact]
    public void Tokens_of_no_source_and_streams_of_items() => Oracle.Agrees(
        """
        System.Threading.CancellationToken token = default; token.ThrowIfCancellationRequested(); var none = System.Threading.CancellationToken.None;
        rig.Group("t" + token.IsCancellationRequested + none.CanBeCanceled + "_group");
        async IAsyncEnumerable<string> Items() { foreach (var item in new[] { "a", "b" }) { await System.Threading.Tasks.Task.CompletedTask; yield return item; } }
        async System.Threading.Tasks.Task Run() { await foreach (var item in System.Threading.Tasks.TaskAsyncEnumerableExtensions.ConfigureAwait(Items(), false)) rig.Group(item + "_group"); }
        Run().Wait();
        """);

    [Fact]
    public void Operators_that_make_texts_are_the_users_own() => Oracle.Agrees(
        """
        rig.Group(Side.Left * "ear" + "_group"); rig.Group(new Tag("a") + new Tag("b")); var text = "x"; text += new Tag("c"); rig.Group(text + "_group");
        """,
        "private sealed record Tag(string Name) { public static string operator +(Tag a, Tag b) => a.Name + b.Name + \"_group\"; public override string ToString() => \"tag_\" + Name; }",
        "public static class Sides { extension(Side side) { public static string operator *(Side left, string part) => $\"{part}_{left}\"; } }");

    [Fact]
    public void Iterators_are_moved_on_by_hand_and_of_their_own_type() => Oracle.Agrees(
        """
        var raw = Raw(); raw.MoveNext(); rig.Control($"{raw.Current}"); raw.MoveNext(); rig.Control($"{raw.Current}"); var sum = 0; try { while (raw.MoveNext()) sum += raw.Current; } catch (InvalidOperationException e) { rig.Control(e.Message + sum + raw.MoveNext()); }
        IEnumerator<int> Pair() { yield return 4; yield return 5; } var pair = Pair(); Func<IEnumerator<int>> start = Pair; var again = start(); pair.MoveNext(); again.MoveNext(); again.MoveNext(); rig.Control($"{pair.Current}{again.Current}{again.MoveNext()}");
        object walk = Walk(2); rig.Control($"{walk is IEnumerable<string>}{walk is IFormattable}{walk is string}{walk is System.Collections.IEnumerable}{walk is IEnumerable<int>}{walk is IEnumerable<object>}"); if (walk is System.Collections.IEnumerable all) foreach (var one in all) rig.Control($"{one}");
        int[] some = [1, 2, 3]; object part = some[1..]; rig.Control($"{part is int[]}{part is System.Collections.IEnumerable}{part is string}"); object at = new Vector3(1); rig.Control($"{at is IFormattable}{at is Vector3}{(object)TimeSpan.Zero is IComparable}");
        """,
        """
        private static IEnumerator<int> Raw() { var x = 1; while (x < 9) { yield return x; x *= 2; } throw new InvalidOperationException("end"); }
        private static IEnumerable<string> Walk(int depth) { if (depth == 0) yield break; yield return $"{depth}"; foreach (var x in Walk(depth - 1)) yield return depth + x; }
        """);
}
