namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>Strings, string builders and characters.</summary>
public class TextTests
{
    [Fact]
    public void Ordinal_questions_are_answered() => FrameworkOracle.Agrees(
        """
        var t = "arm_left_arm"; rig.Control($"{t.Contains("left")}{t.Contains('z')}{t.Contains("LEFT", StringComparison.OrdinalIgnoreCase)}{t.Contains("LEFT", StringComparison.Ordinal)}{t.Contains('L', StringComparison.OrdinalIgnoreCase)}{t.Contains("")}");
        rig.Control($"{t.IndexOf('_')}{t.IndexOf('_', 4)}{t.IndexOf('m', 3, 4)}{t.LastIndexOf('a')}{t.LastIndexOf('a', 8)}{t.IndexOf("arm", StringComparison.Ordinal)}{t.IndexOf("ARM", 1, StringComparison.OrdinalIgnoreCase)}{t.IndexOf("arm", 1, 5, StringComparison.Ordinal)}{t.LastIndexOf("arm", StringComparison.Ordinal)}{t.LastIndexOf("arm", 8, StringComparison.Ordinal)}");
        rig.Control($"{t.IndexOfAny(['l', '_'])}{t.IndexOfAny(new[] { 'e', 'f' }, 2)}{t.LastIndexOfAny(['_'])}{t.IndexOfAny(['q'], 1, 3)}");
        rig.Control($"{t.StartsWith("arm", StringComparison.Ordinal)}{t.StartsWith('a')}{t.EndsWith('x')}{t.EndsWith("ARM", StringComparison.OrdinalIgnoreCase)}{t.EndsWith("", StringComparison.Ordinal)}");
        rig.Control(Try(() => t.IndexOf('a', 99)) + Try(() => t.IndexOf("a", -1, StringComparison.Ordinal)) + Try(() => t.Contains(null!)) + Try(() => t[99]) + Try(() => t.Substring(3, 99)) + Try(() => t.Substring(-1)) + Try(() => t.IndexOf(null!, StringComparison.Ordinal)));
        """);

    [Fact]
    public void Questions_of_culture_are_answered_where_all_cultures_agree() => FrameworkOracle.Agrees(
        """
        var t = "arm_left"; rig.Control($"{t.StartsWith("arm")}{t.EndsWith("_left")}{t.EndsWith("_right")}{t.StartsWith("leg")}{t.IndexOf("qq")}{t.LastIndexOf("qq")}{t.StartsWith("")}{"left".EndsWith("left")}{"armLeft".IndexOf("z")}{"a1".StartsWith("a")}{"Group".EndsWith("group")}");
        rig.Control($"{string.Compare("a", "a")}{"x".CompareTo("x")}{string.Compare(null, "a")}{string.Compare("a", null)}{string.Equals("ab", "abc", StringComparison.CurrentCulture)}{"Arm".Equals("arm", StringComparison.CurrentCultureIgnoreCase)}{"arm".Equals("leg", StringComparison.InvariantCulture)}{"ARM".ToLower()}{"arm_2".ToUpper()}");
        """);

    [Fact]
    public void Texts_are_compared() => FrameworkOracle.Agrees(
        """
        rig.Control($"{"a" == "A"}{"a".Equals("a")}{"a".Equals((object)"b")}{"a".Equals("A", StringComparison.OrdinalIgnoreCase)}{string.Equals("x", null)}{string.Equals(null, null)}{string.CompareOrdinal("a", "c")}{string.CompareOrdinal("ab", "a")}{string.CompareOrdinal("xaz", 1, "a", 0, 1)}{string.Compare("a", "B", StringComparison.OrdinalIgnoreCase)}{string.Compare("b", "a", StringComparison.Ordinal) > 0}{string.Compare("xab", 1, "yAB", 1, 2, StringComparison.OrdinalIgnoreCase)}{"b".CompareTo("b")}");
        rig.Control($"{string.IsNullOrEmpty("")}{string.IsNullOrEmpty(null)}{string.IsNullOrEmpty("a")}{string.IsNullOrWhiteSpace(" \t")}{string.IsNullOrWhiteSpace("x")}{string.Empty.Length}{"abc".Length}{"abc"[1]}{"abc"[^1]}");
        """);

    [Fact]
    public void Texts_are_changed() => FrameworkOracle.Agrees(
        """
        var t = "  Arm_Left  "; rig.Control($"[{t.Trim()}][{t.TrimStart()}][{t.TrimEnd()}][{t.Trim().Trim('A', 't')}][{"xxaxx".Trim('x')}][{"xyaxy".TrimStart('x', 'y')}][{"a__".TrimEnd('_')}][{"abc".Trim(null)}]");
        rig.Control($"[{t.Trim().Replace("_", "")}][{t.Trim().Replace('A', 'B')}][{"aXbx".Replace("x", "-", StringComparison.OrdinalIgnoreCase)}][{"abc".Replace("b", null)}][{"aaa".Replace("aa", "b")}]");
        rig.Control($"[{"abcdef".Substring(2)}][{"abcdef".Substring(1, 3)}][{"abcdef".Remove(2)}][{"abcdef".Remove(1, 2)}][{"abc".Insert(1, "--")}][{"7".PadLeft(3, '0')}][{"7".PadRight(3)}][{"7".PadRight(3, '.')}][{"7".PadLeft(0)}]");
        rig.Control(Try(() => "abc".Replace("", "x")) + Try(() => "abc".Replace(null!, "x")) + Try(() => "abc".Remove(5)) + Try(() => "abc".Remove(1, 9)) + Try(() => "abc".Insert(9, "x")) + Try(() => "abc".Insert(0, null!)) + Try(() => "abc".PadLeft(-1)) + "abc".Remove(3));
        rig.Control($"{"ArM".ToLowerInvariant()}{"ArM".ToUpperInvariant()}{"abc".ToString()}{new string('x', 3)}{new string(new[] { 'a', 'b' })}{new string(['a', 'b', 'c'], 1, 2)}{"a\r\nb\nc".ReplaceLineEndings("|")}{string.Concat("abc".ToCharArray().Reverse())}{"abcd".ToCharArray(1, 2).Length}{string.Intern("q")}");
        """);

    [Fact]
    public void Texts_are_split() => FrameworkOracle.Agrees(
        """
        void Log(string[] parts) => rig.Control($"{parts.Length}:{string.Join('|', parts)}");
        Log("a,b,,c".Split(',')); Log("a,b,,c".Split(',', StringSplitOptions.RemoveEmptyEntries)); Log("a,b,,c".Split(',', 2)); Log("a, b , ,c".Split(',', StringSplitOptions.TrimEntries)); Log("a, b , ,c".Split(',', 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries));
        Log("a--b-c".Split("--")); Log("a--b-c".Split("--", 1)); Log("a b\tc  d".Split()); Log("a b".Split((string?)null)); Log("a b".Split("")); Log("a;b,c".Split(';', ',')); Log("a;b,c".Split([';', ','], 2)); Log("x<>y><z".Split(["<>", "><"], StringSplitOptions.None)); Log("x<>y><z".Split(new[] { "<>" }, 9, StringSplitOptions.None)); Log("".Split(',')); Log("".Split(',', StringSplitOptions.RemoveEmptyEntries)); Log(",a,,b".Split(',', 2, StringSplitOptions.RemoveEmptyEntries)); Log("a,b".Split(',', 0)); Log(" a b ".Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)); Log("aXbXXc".Split(new[] { "X", "XX" }, StringSplitOptions.None)); Log(",,".Split(',')); Log("a,,b,,c".Split(',', 2, StringSplitOptions.RemoveEmptyEntries));
        rig.Control(Try(() => "a".Split(',', -1).Length));
        """);

    [Fact]
    public void Texts_are_joined() => FrameworkOracle.Agrees(
        """
        rig.Control(string.Join("_", "a", "b") + string.Join('-', new[] { "a", "b", "c" }) + string.Join(", ", new[] { 1, 2 }) + string.Join("+", new List<string> { "x", null!, "y" }) + string.Join("/", (object)1, "b", 'c', null) + string.Join("|", "abc".Where(c => c != 'b')) + string.Join(",", new[] { "a", "b", "c", "d" }, 1, 2) + string.Join(null, "p", "q"));
        rig.Control(string.Concat("a", "b", "c", "d", "e") + string.Concat(1, 'b', "c") + string.Concat(new[] { "p", "q" }) + string.Concat(new List<int> { 1, 2 }) + string.Concat((object)"only") + string.Concat("a", null, "b") + string.Concat(new object?[] { 1, null, 'x' }));
        rig.Control(Try(() => string.Join(",", (string[])null!)) + Try(() => string.Concat((IEnumerable<string>)null!)) + Try(() => string.Join(",", new[] { "a" }, 1, 4)));
        """);

    [Fact]
    public void Patterns_are_filled() => FrameworkOracle.Agrees(
        """
        rig.Control(string.Format("{0}_{1}", "a", 1) + string.Format("{0,4}|{1,-3}|{0}", "x", "y") + string.Format("{{{0}}}", 5) + string.Format("{0:D3} {1:X2} {2:000}", 7, 255, 5) + string.Format("none") + string.Format("{2}{1}{0}", "a", "b", "c") + string.Format("{0}{1}{2}{3}", 1, 2, 3, 4) + string.Format("{0}", new object?[] { null }) + string.Format("{0,-5:D2}!", 3));
        rig.Control(string.Format(System.Globalization.CultureInfo.InvariantCulture, "{0:F2} {1} {2:N0} {3:P0} {4:E2} {5:0.##}", 1.5, 0.25f, 12345, 0.5, 12345.678, 2.5) + string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{1.25:F1} {0.1f} {1e10} {1.0 / 3}") + FormattableString.Invariant($"{2.5m}"));
        rig.Control(Try(() => string.Format("{0", 1)) + Try(() => string.Format("{1}", 1)) + Try(() => string.Format("}", 1)) + Try(() => string.Format("{a}", 1)) + Try(() => string.Format(null!, 1)) + Try(() => string.Format("{-1}", 1)));
        """);

    [Fact]
    public void Builders_grow_and_shrink() => FrameworkOracle.Agrees(
        """
        var b = new System.Text.StringBuilder("ab"); b.Append('c').Append(1).Append(true).Append("xyz", 1, 2).Append('-', 3).Append((object)"o").Append(new[] { 'p', 'q' }).Append(['r', 's', 't'], 1, 2).Append($"<{1 + 2}>").Append((string?)null).Append(2L).Append(System.Globalization.CultureInfo.InvariantCulture, $"{0.5}");
        rig.Control(b.ToString()); rig.Control($"{b.Length}{b[0]}{b.ToString(1, 3)}"); b.Insert(1, "__").Insert(0, 9).Insert(b.Length, 'z').Remove(0, 1).Replace("_", "=").Replace('x', 'X').Replace("=", "#", 0, 2); rig.Control(b.ToString()); b.Length = 3; rig.Control(b.ToString()); b[0] = 'Q'; b.Length += 1; rig.Control(b.ToString().Replace('\0', '0')); b.Clear(); rig.Control($"[{b}]{b.Length}");
        b.AppendJoin(", ", new[] { 1, 2 }).AppendJoin('|', "a", "b").AppendFormat("{0:D2}{1}", 3, "x").AppendFormat(System.Globalization.CultureInfo.InvariantCulture, "{0:F1}", 2.0).Insert(1, "ab", 2); rig.Control(b.ToString());
        rig.Control(Try(() => new System.Text.StringBuilder("abc").ToString(2, 5)) + Try(() => new System.Text.StringBuilder("abc").Remove(2, 5)) + Try(() => new System.Text.StringBuilder("abc")[7]) + Try(() => new System.Text.StringBuilder("abc").Insert(7, "x")) + new System.Text.StringBuilder("abcdef", 1, 3, 16) + new System.Text.StringBuilder(5).Append("a").Equals(new System.Text.StringBuilder("a")));
        foreach (var c in new System.Text.StringBuilder("xy").ToString()) rig.Control($"{c}");
        """);

    [Fact]
    public void Characters_are_told_apart() => FrameworkOracle.Agrees(
        """
        rig.Control($"{char.IsDigit('5')}{char.IsLetter('x')}{char.IsUpper('X')}{char.IsLower('X')}{char.IsWhiteSpace(' ')}{char.IsLetterOrDigit('_')}{char.IsPunctuation('_')}{char.IsNumber('½')}{char.IsSymbol('+')}{char.IsControl('\n')}{char.IsAscii('é')}{char.IsAsciiLetter('q')}{char.IsAsciiDigit('0')}{char.IsAsciiHexDigit('f')}{char.IsBetween('c', 'a', 'd')}{char.IsDigit("a5", 1)}{char.IsSeparator(' ')}");
        rig.Control($"{char.ToUpperInvariant('a')}{char.ToLowerInvariant('A')}{char.ToUpper('b')}{char.ToLower('B')}{char.ToUpper('i', System.Globalization.CultureInfo.InvariantCulture)}{char.GetNumericValue('7')}{'a'.CompareTo('c')}{'a'.Equals('a')}{'a'.ToString()}{char.ToString('z')}{char.Parse("q")}{char.TryParse("ab", out var no)}{no == '\0'}{char.TryParse("a", out var yes)}{yes}{(int)'a'}{(char)('a' + 2)}{char.ConvertFromUtf32(65)}");
        rig.Control(Try(() => char.Parse("ab")) + Try(() => char.IsDigit("a", 3)));
        """);

    [Fact]
    public void Comparers_of_texts_compare() => FrameworkOracle.Agrees(
        """
        var cmp = StringComparer.OrdinalIgnoreCase; rig.Control($"{cmp.Equals("a", "A")}{cmp.Compare("a", "B") < 0}{StringComparer.Ordinal.Compare("b", "a") > 0}{StringComparer.Ordinal.Equals("a", "A")}{StringComparer.Ordinal.Compare("a", "a")}{StringComparer.FromComparison(StringComparison.Ordinal).Equals("q", "q")}");
        rig.Control(All(new[] { "b", "A", "a", "C" }.OrderBy(s => s, StringComparer.Ordinal)) + All(new[] { "b", "A", "C" }.OrderBy(s => s, StringComparer.OrdinalIgnoreCase)) + All(new[] { "a", "A", "b" }.Distinct(StringComparer.OrdinalIgnoreCase)) + new HashSet<string>(StringComparer.OrdinalIgnoreCase) { "x", "X" }.Count + new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase) { ["Arm"] = 2 }["ARM"]);
        rig.Control(All(new[] { "f2", "f1", "f3" }.OrderBy(s => s)) + All(new[] { "part_2", "part_1" }.Order()));
        """);
}
