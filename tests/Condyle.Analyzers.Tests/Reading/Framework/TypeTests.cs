namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>What values are, as the compiler sees it; decimals, bit arrays, segments and delegates.</summary>
public class TypeTests
{
    [Fact]
    public void Decimals_bits_segments_and_delegates() => FrameworkOracle.Agrees(
        """
        var d = 1.5m; d += 2; d++; var e = d * 2 - 1.25m; int i = (int)e; decimal f = i; double g = (double)d; rig.Control(Text($"{d}{e}{i}{f}{g}{d > e}{d == 4.5m}{-d}{e % 2}{e / 3 > 2}{decimal.Add(1, 2)}{decimal.Compare(1, 2)}{decimal.ToInt32(2.9m)}{decimal.IsEvenInteger(2)}{(decimal)1.1}{(float)d}{Try(() => d / 0 * i)}{Try(() => decimal.Divide(1, 0))}"));
        rig.Control($"{long.PopCount(7)}{byte.LeadingZeroCount(1)}{byte.RotateLeft(0b10000001, 1)}{short.TrailingZeroCount(8)}{ulong.RotateRight(1, 1)}{Text($"{float.CreateChecked(2)}{double.CreateTruncating(3)}{decimal.CreateSaturating(4)}{float.MaxNative(1, 2)}")}");
        var bits = new System.Collections.BitArray(4); bits[1] = true; bits.Set(2, true); var other = new System.Collections.BitArray(new[] { true, true, false, false }); rig.Control($"{bits[1]}{bits.Get(0)}{bits.Count}{All(bits.And(other).Cast<bool>())}{All(bits.Or(other).Cast<bool>())}{All(bits.Not().Cast<bool>())}{bits.HasAnySet()}");
        var seg = new ArraySegment<int>([1, 2, 3, 4], 1, 2); seg[0] = 9; rig.Control($"{seg.Count}{seg.Offset}{seg[0]}{All(seg)}{All(seg.Slice(1))}{seg.Contains(3)}{seg.Sum()}{All(seg.Select(x => x * 2))}{((IList<int>)seg).Count}");
        Action a = () => { }; Action b = a; Action? c = null; rig.Control($"{a == b}{a != c}{c == null}"); var named = new Dictionary<Key, int> { [new Key("a", 1)] = 3, [new Key("b", 2)] = 4 }; rig.Control($"{named[new Key("a", 1)]}{named.ContainsKey(new Key("z", 1))}{new HashSet<Key> { new("a", 1), new("a", 1) }.Count}");
        rig.Control($"{"  x ".AsSpan().Trim().Length}{"Abc".AsSpan().StartsWith("aB", StringComparison.OrdinalIgnoreCase)}{"abc".AsSpan().Equals("ABC", StringComparison.OrdinalIgnoreCase)}{"a b".AsSpan().Contains("b", StringComparison.Ordinal)}{1.5.ToString(System.Globalization.CultureInfo.GetCultureInfo(""))}{2.5.ToString(new System.Globalization.CultureInfo(""))}");
        """,
        """
        private sealed class Key(string name, int size) { private readonly string name = name; private readonly int size = size; public override bool Equals(object? o) => o is Key k && k.name == name && k.size == size; public override int GetHashCode() => HashCode.Combine(name, size); }
        """);

    [Fact]
    public void Collections_are_told_apart_by_their_types() => FrameworkOracle.Agrees(
        """
        object[] all = [new List<int> { 1 }, new[] { "a" }, new Dictionary<string, int>(), "text", 5, new HashSet<int>(), (1, 2), new Queue<int>(), new[] { 1 }.Select(x => x), Part.Arm]; foreach (var x in all) rig.Control(x switch { IReadOnlyList<int> l => $"ints{l.Count}", string[] s => $"texts{s[0]}", IDictionary<string, int> d => $"map{d.Count}", string t => t, int n => $"n{n}", ISet<int> s => "set", ValueTuple<int, int> p => $"t{p.Item1}", System.Collections.ICollection q => "collection", IEnumerable<int> e => "lazy", Enum e => $"enum{e}", _ => "other" });
        object o = new List<string> { "a" }; rig.Control($"{o is IEnumerable<string>}{o is List<string>}{o is IEnumerable<int>}{o is IList<object>}{o is IReadOnlyList<object>}{o is System.Collections.IEnumerable}{o is string}{o as IReadOnlyCollection<string> is not null}{new int[0] is IEnumerable<int>}{"x" is IEnumerable<char>}{"x" is IComparable}{(object)5 is IComparable<int>}{(object)5 is IFormattable}"); rig.Control(All(new object[] { 1, "a", new List<int>() }.OfType<System.Collections.IEnumerable>().Select(x => "e")));
        """,
        """
        private enum Part { Arm }
        """);
}
