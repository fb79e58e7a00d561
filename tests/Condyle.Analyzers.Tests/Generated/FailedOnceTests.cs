using Condyle.Analyzers.Tests.Reading;

namespace Condyle.Analyzers.Tests.Generated;

/// <summary>The smallest of each generated program that was once read otherwise than it runs, with the number it was generated from.</summary>
public class FailedOnceTests
{
    [Fact] // 138
    public void A_type_whose_initialisers_throw_throws_the_same_at_each_use() => Oracle.Agrees(
        """
        try { rig.Control($"{Failing.Value}"); } catch (InvalidOperationException) { rig.Control("itself"); } catch (TypeInitializationException e) { rig.Control(e.InnerException is InvalidOperationException ? "wrapped" : "?"); }
        try { rig.Control($"{Failing.Other}"); } catch (Exception e) { rig.Control(e is TypeInitializationException ? "again" : "?"); }
        """,
        """
        private static class Failing { public static int Value { get; set; } = Fail(); public static int Other = 3; private static int Fail() => throw new InvalidOperationException("failed"); }
        """);

    [Fact] // 182
    public void A_handle_that_no_rig_gave_out_has_no_text() => Oracle.Agrees(
        """
        try { rig.Control($"{default(Control)}"); } catch (InvalidOperationException) { rig.Control("unmade"); }
        rig.Control($"{default(Control) == (new Control[1])[0]}{new List<Control> { default }.Contains(default)}");
        """);

    [Fact] // 130, 201, 259
    public void A_collection_of_the_users_own_says_itself_what_is_at_its_end_and_in_a_stretch() => Oracle.Agrees(
        """
        var rope = new Rope { 1, 2, 3 };
        rope[^1] = 9;
        rope[^1] += 2;
        rig.Control($"{rope[^1]}{rope[1..].Length}{rope[..^1][^1]}");
        if (rope is [var first, .. var rest, 11])
            rig.Control($"{first}{rest.Length}");
        rig.Control($"{rope is [_, _]}{rope is [1, ..]}");
        try { _ = new Rope()[^1]; } catch (ArgumentOutOfRangeException) { rig.Control("none"); }
        """,
        """
        private sealed class Rope : System.Collections.IEnumerable
        {
            private readonly List<int> items = [];
            public int Length => items.Count;
            public int this[int index] { get => items[index]; set => items[index] = value; }
            public void Add(int item) => items.Add(item);
            public Rope Slice(int start, int length) { var part = new Rope(); for (var i = start; i < start + length; i++) part.Add(items[i]); return part; }
            public System.Collections.IEnumerator GetEnumerator() => items.GetEnumerator();
        }
        """);

    [Fact] // 244
    public void A_structure_that_a_property_gives_is_a_copy() => Oracle.Agrees(
        """
        var holder = new Holder();
        holder.Property.Step(); holder.Property.Step();
        holder.Field.Step();
        holder.ReadOnly.Step();
        holder.Deep.Inner.Step();
        rig.Control($"{holder.Property.Steps}{holder.Field.Steps}{holder.ReadOnly.Steps}{holder.Deep.Inner.Steps}");
        foreach (var counter in new[] { new Counter { Steps = 1 } }) { counter.Step(); rig.Control($"each {counter.Steps}"); }
        void In(in Counter counter) { counter.Step(); rig.Control($"in {counter.Steps}"); }
        In(holder.Field);
        var list = new List<Counter> { new() }; list[0].Step();
        var array = new[] { new Counter() }; array[0].Step();
        ref readonly var fixedOne = ref array[0]; fixedOne.Step();
        rig.Control($"{list[0].Steps}{array[0].Steps}");
        """,
        """
        private struct Counter { public int Steps; public void Step() => Steps++; }
        private struct Pair { public Counter Inner; }
        private sealed class Holder { public Counter Property { get; set; } public Counter Field; public readonly Counter ReadOnly; public Pair Deep; }
        """);

    [Fact] // 243
    public void An_index_is_refused_as_each_collection_does() => Oracle.Agrees(
        """
        string Try(Func<object?> get) { try { return $"{get()}"; } catch (IndexOutOfRangeException) { return "index"; } catch (ArgumentOutOfRangeException) { return "range"; } catch (ArgumentException) { return "argument"; } }
        var array = new[] { 1, 2 }; var list = new List<int> { 1, 2 }; var text = "ab"; var fixedArray = System.Collections.Immutable.ImmutableArray.Create(1, 2); IReadOnlyList<int> view = array;
        rig.Control($"{Try(() => array[^3])}{Try(() => list[^3])}{Try(() => text[^3])}{Try(() => fixedArray[^3])}{Try(() => fixedArray[2])}{Try(() => view[2])}");
        rig.Control($"{Try(() => array[1..3])}{Try(() => list[1..3])}{Try(() => text[1..3])}{Try(() => array[2..1])}{Try(() => list[2..1])}{Try(() => text[2..1])}{Try(() => fixedArray[1..3])}");
        rig.Control($"{Try(() => array.AsSpan()[2])}{Try(() => array.AsSpan()[1..3].Length)}{Try(() => array.AsSpan()[^3])}{Try(() => list[..^3])}");
        """);

    [Fact] // 108, 28
    public void Unsigned_numbers_are_shifted_and_written() => Oracle.Agrees("""rig.Control($"{5u >>> 1}{ulong.MaxValue >>> 60}{-3:G}{uint.MaxValue:G}");""");

    [Fact] // 609
    public void Flags_without_a_name_are_a_number() => Oracle.Agrees(
        """
        rig.Control($"{Corners.A ^ Corners.A}{default(Corners)}");
        rig.Control($"{~Corners.A}{(Corners)5}{Corners.A | Corners.Back}{(Corners)(-1)}{(Narrow)(-128)}{(Narrow)(-127)}");
        """,
        "[Flags] private enum Corners { A = 1, B = 2, Back = int.MinValue } [Flags] private enum Narrow : sbyte { A = 1, Low = -128 }");

    [Fact] // 1187
    public void What_is_gathered_for_a_read_only_interface_is_no_array() => Oracle.Agrees(
        """
        string Try(Func<object?> get) { try { return $"{get()}"; } catch (IndexOutOfRangeException) { return "index"; } catch (ArgumentOutOfRangeException) { return "range"; } catch (NullReferenceException) { return "null"; } }
        int[] array = [1]; var lazy = array.Where(one => true); IReadOnlyList<int> none = [], one = [1], two = [1, 2], more = [1, .. array], some = [1, .. lazy];
        rig.Control($"{Try(() => none[0])}{Try(() => one[1])}{Try(() => two[-1])}{Try(() => more[2])}{Try(() => some[2])}{Try(() => two[1])}");
        rig.Control($"{none is int[]}{one is int[]}{more is int[]}{some is int[]}{(IReadOnlyList<int>)array is int[]}");
        rig.Control($"{Try(() => ((IReadOnlyList<int>)null!)[0])}{Try(() => ((IReadOnlyCollection<int>)null!).Count)}{Try(() => ((string)null!).Length)}");
        """);

    [Fact] // 2287
    public void The_hash_of_a_record_makes_no_record() => Oracle.Agrees(
        """
        Kept = rig;
        var map = new Dictionary<Top, string> { [new Low("a", 1)] = "low" };
        rig.Control($"{map[new Low("a", 1)]}{map.ContainsKey(new Top("a"))}");
        """,
        """
        private record Top(string A) { public int More { get; init; } = Say(); }
        private record Low(string A, int B) : Top(A);
        private static RigDraft Kept;
        private static int Say() { Kept.Control("made"); return 1; }
        """);

    [Fact] // 14
    public void One_item_alone_is_gathered_in_order_without_its_key() => Oracle.Agrees(
        """
        int Key(int item, string name) { rig.Control($"{name}{item}"); return -item; }
        for (var count = 0; count < 3; count++)
        {
            var items = Enumerable.Range(1, count).OrderBy(item => Key(item, "a")).ThenBy(item => Key(item, "b"));
            _ = items.ToList(); rig.Control("list"); _ = items.ToArray(); rig.Control("array"); foreach (var item in items) rig.Control("each");
            _ = items.OrderBy(item => Key(item, "c")).FirstOrDefault(item => false); rig.Control("first");
            _ = items.OrderBy(item => Key(item, "c")).ToList(); rig.Control("again"); _ = items.Reverse().ToList(); rig.Control("back"); _ = items.Take(1).ToList();
        }
        """);

    [Fact] // 41
    public void An_immutable_array_is_asked_for_an_item_as_an_array() => Oracle.Agrees(
        """
        string Try(Func<object?> get) { try { return $"{get()}"; } catch (IndexOutOfRangeException) { return "index"; } catch (ArgumentOutOfRangeException) { return "range"; } catch (InvalidOperationException) { return "none"; } }
        var items = System.Collections.Immutable.ImmutableArray.Create(1); IEnumerable<int> same = items;
        rig.Control($"{Try(() => items.ElementAt(1))}{Try(() => same.ElementAt(1))}{Try(() => items.ElementAtOrDefault(1))}{Try(() => items.Skip(1).First())}{Try(() => items.Single())}");
        """);

    [Fact] // 162
    public void A_jump_inside_a_final_part_stays_there() => Oracle.Agrees(
        """
        for (var i = 0; i < 3; i++)
        {
            try
            {
                try { if (i == 1) continue; if (i == 2) throw new InvalidOperationException(); }
                finally
                {
                    var turns = 0;
                    again:
                    rig.Control($"{i} turn {turns}");
                    if (turns++ < 1) goto again;
                }
            }
            catch (InvalidOperationException) { rig.Control("caught"); }
        }
        """);

    [Fact] // 90, 390, 419
    public void Items_on_the_stack_are_converted_as_those_of_an_array() => Oracle.Agrees(
        """
        int? none = null; var letter = 'b'; var whole = 3;
        Span<bool> truths = stackalloc bool[] { (none == default(int?)), true };
        Span<byte> bytes = stackalloc byte[] { ((byte)(whole + 255)), 1 };
        ReadOnlySpan<long> longs = stackalloc[] { whole, letter, 5L };
        object boxed = longs[0];
        rig.Control($"{truths[0]}{truths[1]}{bytes[0]}{bytes[1]}{longs[1]}{boxed is long}{longs.Length}");
        """);

    [Fact] // 836
    public void What_is_added_to_an_empty_array_is_handed_on_as_it_is() => Oracle.Agrees(
        """
        bool Seen(string item) { rig.Control("seen_" + item); return true; }
        _ = new string[0].Concat(new[] { "a", "b" }).LastOrDefault(Seen); _ = new[] { "c", "d" }.Concat([]).LastOrDefault(Seen); _ = Enumerable.Empty<string>().Concat(new List<string> { "e", "f" }).Last(Seen);
        _ = new[] { "g" }.Concat(new[] { "h" }).LastOrDefault(Seen); _ = new List<string>().Concat(new[] { "i", "j" }).LastOrDefault(Seen);
        """);

    [Fact] // 1553
    public void A_filter_that_throws_refuses() => Oracle.Agrees(
        """
        try { throw new InvalidOperationException(); }
        catch (InvalidOperationException) when (Broken.Flag) { rig.Control("never"); }
        catch (Exception) { rig.Control("caught"); }
        try
        {
            try { throw new InvalidOperationException(); } catch (InvalidOperationException) when (int.Parse("x") > 3) { rig.Control("never"); }
        }
        catch (Exception caught) when (caught is not FormatException) { rig.Control("outer"); }
        """,
        "private static class Broken { public static readonly bool Flag = new[] { true }[1]; }");

    [Fact] // 3051
    public void What_a_pattern_does_not_look_at_is_not_asked_for() => Oracle.Agrees(
        """
        var part = new Part(rig);
        rig.Control($"{part is { Kept: _, Size: 7 }}{part is { Kept: var _, Size: 7 }}{part is { Size: 7, Kept: "kept" }}{new[] { part } is [_]}{part is (_, 7)}");
        """,
        """
        private sealed class Part(RigDraft rig)
        {
            public string Kept { get { rig.Control("asked"); return "kept"; } }
            public int Size => 7;
            public void Deconstruct(out string kept, out int size) { rig.Control("taken apart"); (kept, size) = ("k", Size); }
        }
        """);

    [Fact] // 21421
    public void The_receiver_of_an_extension_block_is_a_variable_of_each_member() => Oracle.Agrees(
        """
        rig.Control($"{3.Emptied}{4.Lowered()}");
        var all = new[] { 5, 6 };
        rig.Control(string.Concat(all.Select(each => each.Later()())) + all[0].Raised());
        """,
        more: """
        internal static class Numbers
        {
            extension(int self)
            {
                public string Emptied => $"{(self -= self)}_{((int?)self).GetValueOrDefault(self)}";
                public string Lowered() { self--; Lower(ref self); return $"{self}"; }
                public Func<int> Later() { var first = () => ++self; first(); return first; }
                public IEnumerable<int> Turns() { while (self-- > 3) yield return self; }
                public string Raised() => string.Join("+", self.Turns());
            }
            private static void Lower(ref int number) => number--;
        }
        """);
}
