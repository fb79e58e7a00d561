namespace Condyle.Analyzers.Tests.Reading;

/// <summary>The C# that riggers write, construct by construct: read and run, and the models compared.</summary>
public class ConstructTests
{
    [Theory]
    [InlineData("var i = 0; while (i < 3) { rig.Control($\"c{i}\"); i++; }")]
    [InlineData("var i = 3; do { rig.Control($\"c{i}\"); i -= 1; } while (i > 0);")]
    [InlineData("for (int i = 0, j = 9; i < j; i += 2, j--) { if (i == 4) continue; if (j == 6) break; rig.Control($\"c{i}{j}\"); }")]
    [InlineData("for (var i = 0; ; i++) { if (i > 2) goto done; rig.Control($\"c{i}\"); } done: rig.Control(\"end\");")]
    [InlineData("foreach (var side in Side.Both.Reverse()) foreach (var n in new[] { 1, 2 }) rig.Control($\"{side}{n}{side.Opposite}\");")]
    public void Loops(string code) => Oracle.Agrees(code);

    [Theory]
    [InlineData("var x = 3; switch (x) { case 1: rig.Control(\"a\"); break; case 2: case 3: rig.Control(\"b\"); goto case 1; default: rig.Control(\"d\"); break; }")]
    [InlineData("foreach (object o in new object[] { 1, \"s\", 2.5f, 'c', true, null! }) rig.Control(o switch { int n when n > 0 => $\"i{n}\", string s => s, float => \"f\", char c => $\"{c}\", null => \"null\", _ => \"other\" });")]
    [InlineData("var p = (X: 1, Y: 2); rig.Control(p is { X: 1, Y: > 1 and < 5 } ? \"in\" : \"out\"); rig.Control(p switch { (1, 3) => \"a\", (_, 2) => \"b\", _ => \"c\" });")]
    [InlineData("int[] a = [1, 2, 3, 4]; if (a is [1, .. var mid, 4]) rig.Control($\"m{mid.Length}{mid[0]}\"); if (a is [_, 2, ..]) rig.Control(\"two\"); rig.Control(a is [] ? \"e\" : \"n\");")]
    [InlineData("string? s = null; rig.Control(s ?? \"dflt\"); s ??= \"set\"; rig.Control(s); rig.Control(s?.Length.ToString() ?? \"none\"); rig.Control(s is not null && s.Length == 3 ? \"three\" : \"no\");")]
    [InlineData("int? n = null; rig.Control(n.HasValue ? \"y\" : \"n\"); n = 4; rig.Control($\"{n.Value}{n ?? 7}{n.GetValueOrDefault()}\");")]
    public void Choices(string code) => Oracle.Agrees(code);

    [Theory]
    [InlineData("var i = 7; i += 2; i *= 3; i -= 1; i /= 2; i %= 8; i <<= 2; i |= 1; i ^= 3; rig.Control($\"c{i}{-i}{~i}{i >> 1}{i & 6}\");")]
    [InlineData("byte b = 250; b += 10; var big = 70000; short s = (short)big; long l = int.MaxValue; l++; uint u = 5; u -= 6; rig.Control($\"{b}_{s}_{l}_{u}_{(int)3.9}_{(char)('a' + 1)}_{7 / 2}_{-7 % 3}\");")]
    [InlineData("try { checked { var m = int.MaxValue; m++; } } catch (OverflowException) { rig.Control(\"over\"); } try { var z = 0; rig.Control($\"{1 / z}\"); } catch (DivideByZeroException) { rig.Control(\"zero\"); }")]
    [InlineData("var x = 0.1f; var y = x * 3; var d = 2.0 / 3; rig.Control(y > 0.3f ? \"more\" : \"less\"); rig.Control(d < 0.67 ? \"a\" : \"b\"); rig.Control($\"{(int)(d * 100)}_{Math.Max(3, 5)}_{(int)MathF.Round(2.6f)}_{Math.Abs(-4)}\");")]
    [InlineData("var a = true; var b = false; rig.Control($\"{a && b}{a || b}{a ^ b}{!a}{a & b}{a | b}\");")]
    public void Arithmetic(string code) => Oracle.Agrees(code);

    [Theory]
    [InlineData("var list = new List<string> { \"a\" }; list.Add(\"b\"); list.AddRange([\"c\", \"d\"]); list.RemoveAt(0); list.Insert(1, \"x\"); list[0] = \"y\"; list.Reverse(); foreach (var s in list) rig.Control(s); rig.Control($\"{list.Count}{list.IndexOf(\"x\")}{list.Contains(\"c\")}\");")]
    [InlineData("var map = new Dictionary<(int, string), string>(); map[(1, \"a\")] = \"one\"; map.Add((2, \"b\"), \"two\"); rig.Control(map[(1, \"a\")]); if (map.TryGetValue((2, \"b\"), out var t)) rig.Control(t); rig.Control(map.ContainsKey((3, \"c\")) ? \"y\" : \"n\"); foreach (var (k, v) in map) rig.Control($\"{k.Item1}{v}\");")]
    [InlineData("var set = new HashSet<int> { 1, 2, 1 }; rig.Control($\"{set.Count}{set.Add(2)}{set.Add(5)}\"); var q = new Queue<string>(); q.Enqueue(\"p\"); q.Enqueue(\"q\"); rig.Control(q.Dequeue()); var st = new Stack<string>([\"m\", \"n\"]); rig.Control(st.Pop()); foreach (var s in st) rig.Control(s);")]
    [InlineData("var a = new int[3]; a[1] = 5; a[^1]++; int[] b = [.. a, 9]; rig.Control(string.Join(\"_\", b)); string[][] j = [[\"x\"], [\"y\", \"z\"]]; foreach (var row in j) foreach (var c in row) rig.Control(c); rig.Control($\"{b[1..3].Length}{b.Length}\");")]
    [InlineData("var names = new[] { \"b\", \"a\", \"c\" }; foreach (var n in names.Where(n => n != \"a\").Select((n, i) => n + i).Skip(1).Concat([\"t\"]).Prepend(\"h\")) rig.Control(n); rig.Control(names.First() + names.Last(n => n != \"c\") + names.Count(n => n.Length == 1) + names.Any(n => n == \"c\") + names.Aggregate((x, y) => x + y) + new[] { 1, 2 }.Sum()); foreach (var (x, y) in names.Zip(names.Skip(1))) rig.Control(x + y);")]
    [InlineData("foreach (var n in from a in new[] { 1, 2, 3 } from b in new[] { 10, 20 } where a != 2 let c = a + b select $\"n{c}\") rig.Control(n);")]
    [InlineData("var log = new List<string>(); var lazy = new[] { 1, 2 }.Select(n => { log.Add($\"l{n}\"); return n; }); log.Add(\"before\"); foreach (var n in lazy) log.Add($\"f{n}\"); foreach (var l in log) rig.Control(l);")]
    public void Collections(string code) => Oracle.Agrees(code);

    [Theory]
    [InlineData("var text = \" Arm_Left \".Trim(); rig.Control(text.Replace(\"_\", \"\").ToLowerInvariant()); rig.Control(text.Substring(4)); rig.Control(text[..3] + text[^4..]); rig.Control($\"{text.IndexOf('_')}{text.Length}{text.StartsWith(\"Arm\", StringComparison.Ordinal)}{text.Contains(\"eft\")}\"); foreach (var p in text.Split('_')) rig.Control(p); foreach (var c in \"xy\") rig.Control($\"{c}{c}\");")]
    [InlineData("rig.Control($\"{1:D3}\"); rig.Control(\"a\" + 1 + 'c' + true); rig.Control(7.ToString()); rig.Control(new string[] { \"p\", \"q\" }.Length + \"n\"); rig.Control(\"\"\"raw \"q\" text\"\"\"); rig.Control(@\"v\\b\"); rig.Control(\"pad\".PadLeft(5, '_'));")]
    public void Text(string code) => Oracle.Agrees(code);

    [Theory]
    [InlineData("var (a, b) = (1, \"x\"); (a, var c) = (a + 1, b + b); (b, c) = (c, b); rig.Control($\"{a}{b}{c}\"); var t = (First: a, Second: (Deep: b, c)); rig.Control(t.Second.Deep + t.First); rig.Control((1, 2) == (1, 2) ? \"eq\" : \"ne\");")]
    [InlineData("Swap(ref first, ref second); rig.Control(first + second); if (Try(\"k\", out var found)) rig.Control(found); rig.Control(Join(\"_\", \"a\", \"b\", \"c\")); rig.Control(Named(b: \"2\", a: \"1\")); rig.Control(Named(\"x\"));")]
    [InlineData("foreach (var n in Numbers(4)) { if (n == 3) break; rig.Control($\"n{n}\"); } rig.Control($\"fib{Fib(9)}\"); rig.Control(Generic(5) + Generic(\"s\") + Default<int>() + (Default<string>() ?? \"null\"));")]
    [InlineData("var acts = new List<Func<string>>(); for (var i = 0; i < 3; i++) { var j = i; acts.Add(() => $\"i{i}j{j}\"); } foreach (var s in Side.Both) acts.Add(() => s.ToString()); foreach (var act in acts) rig.Control(act());")]
    [InlineData("int Local(int x) { if (x == 0) return 0; return Local(x - 1) + 1; } var outer = 2; string Cap() { outer++; return $\"o{outer}\"; } rig.Control(Cap() + Cap() + Local(5)); Func<int, Func<int, int>> add = x => y => x + y; rig.Control($\"{add(2)(3)}\"); static string St(string s) => s + \"!\"; rig.Control(new[] { \"m\" }.Select(St).First());")]
    public void Functions(string code) => Oracle.Agrees(
        "var first = \"a\"; var second = \"b\"; rig.Control(first + second + \"0\");" + code,
        """
        private static void Swap<T>(ref T a, ref T b) => (a, b) = (b, a);
        private static bool Try(string key, out string value) { value = key + "v"; return true; }
        private static string Join(string by, params string[] parts) => string.Join(by, parts);
        private static string Named(string a, string b = "dflt") => a + b;
        private static IEnumerable<int> Numbers(int n) { for (var i = 0; i < n; i++) yield return i; yield break; }
        private static int Fib(int n) => n < 2 ? n : Fib(n - 1) + Fib(n - 2);
        private static string Generic<T>(T value) => $"<{value}>";
        private static T? Default<T>() => default;
        """);

    [Fact]
    public void Structs_are_copied_and_classes_are_shared() => Oracle.Agrees(
        """
        var p = new Point { X = 1 }; var q = p; q.X = 5; Change(q); ChangeRef(ref q); rig.Control($"s{p.X}{q.X}");
        var c = new Box { P = p }; var d = c; d.P.X = 8; rig.Control($"c{c.P.X}{p.X}");
        var arr = new[] { p, p }; arr[0].X = 3; rig.Control($"a{arr[0].X}{arr[1].X}");
        var r = new Rec("n", 1); var r2 = r with { Size = 2 }; rig.Control($"{r.Size}{r2.Size}{r == new Rec("n", 1)}{r == r2}"); var (name, size) = r2; rig.Control(name + size);
        var anon = new { A = 1, B = "b" }; rig.Control(anon.B + anon.A);
        """,
        """
        private struct Point { public int X; }
        private sealed class Box { public Point P; }
        private sealed record Rec(string Name, int Size);
        private static void Change(Point p) => p.X = 99;
        private static void ChangeRef(ref Point p) => p.X += 1;
        """);

    [Fact]
    public void Types_inherit_override_and_initialise_in_order() => Oracle.Agrees(
        """
        Base b = new Derived("d"); rig.Control(b.Describe()); rig.Control(b.Log); rig.Control(Derived.Made.ToString());
        INamed n = new Derived("e"); rig.Control(n.Name + n.Twice); rig.Control(((Derived)n).Name); rig.Control(Kinds.All[1] + Kinds.Default + (int)Kind.Second + Kind.Second);
        using (new Scope(rig, "s")) rig.Control("inside");
        rig.Control("p".Shout() + b["k"] + (new Money(2) + new Money(3)).Amount + (int)new Money(7));
        """,
        """
        private abstract class Base { public string Log = "f"; protected Base(string x) { Log += "b" + x; Hook(); } protected virtual void Hook() => Log += "h"; public abstract string Describe(); public string this[string key] => key + Log.Length; }
        private sealed class Derived : Base, INamed { public static int Made; private readonly string own = "o"; public Derived(string n) : base(n + "1") { Made++; Name = n; } public string Name { get; } protected override void Hook() { base.Hook(); Log += own; } public override string Describe() => $"{Name}{own}"; }
        private interface INamed { string Name { get; } string Twice => Name + Name; }
        private enum Kind { First, Second = 5 }
        private static class Kinds { public static readonly string[] All = ["x", "y"]; public static string Default { get; } = All[0]; }
        private sealed class Scope(RigDraft rig, string name) : IDisposable { public void Dispose() => rig.Control(name + "_end"); }
        private readonly record struct Money(int Amount) { public static Money operator +(Money a, Money b) => new(a.Amount + b.Amount); public static explicit operator int(Money m) => m.Amount; }
        """,
        "public static class Extensions { public static string Shout(this string s) => s + \"!\"; }");

    [Fact]
    public void Exceptions_run_what_must_run() => Oracle.Agrees(
        """
        var log = "";
        string Attempt(int n)
        {
            try { log += "t"; if (n == 1) throw new ArgumentException("arg"); if (n == 2) return "ret"; if (n == 3) throw new Own("mine"); log += "e"; }
            catch (ArgumentException e) when (e.Message == "arg") { log += "c"; return "caught"; }
            catch (Own e) { log += "o"; return e.Text; }
            finally { log += "f"; }
            return "end";
        }
        for (var i = 0; i < 4; i++) rig.Control(Attempt(i) + i);
        rig.Control(log);
        for (var i = 0; i < 3; i++) { try { if (i == 1) continue; rig.Control($"l{i}"); } finally { rig.Control($"fin{i}"); } }
        try { try { throw new InvalidOperationException("in"); } finally { rig.Control("inner"); } } catch (Exception e) { rig.Control(e.Message); }
        """,
        "private sealed class Own(string text) : Exception { public string Text { get; } = text; }");

    [Fact]
    public void A_definition_may_inherit_a_shared_base_and_live_in_several_files() => Oracle.AgreesOn(
        ("base.cs", Oracle.Usings + "public abstract class BaseRig : IRigDefinition { protected virtual string Prefix => \"base\"; public void Define(RigDraft rig) { rig.Group(Prefix + \"_group\"); Build(rig); } protected abstract void Build(RigDraft rig); }"),
        ("a.cs", Oracle.Usings + "public partial class Crane : BaseRig { private readonly int count = 2; protected override void Build(RigDraft rig) { for (var i = 0; i < count; i++) Part(rig, i); } }"),
        ("b.cs", Oracle.Usings + "public partial class Crane { protected override string Prefix => base.Prefix + \"_crane\"; private void Part(RigDraft rig, int i) => rig.Control($\"part_{i}\").Lock(Channels.Move | Channels.TurnX).LimitTurn(Axis.Y, -30, 30 + i); }"));

    [Fact]
    public void Skeletons_and_vectors_are_worked_out() => Oracle.Agrees(
        """
        var at = new Vector3(1, 2, 3); at.Y = 5; at += Vector3.UnitX * 2; var half = at / 2; var turn = Quaternion.CreateFromAxisAngle(Vector3.Normalize(new(1, 1, 0)), MathF.PI / 3);
        var root = rig.Skeleton("s").Root("root", at: at, turned: turn); var joint = root;
        foreach (var (name, x) in new[] { ("a", 0.1f), ("b", 0.2f) }) joint = joint.Child(name, at: new(x, half.Z, -x), scaled: new(1, 1 + x, 1));
        var pair = new JointPair(root, joint); rig.Control($"c_{pair[Side.Right].Name}").PlacedAt(pair.Left);
        var set = new JointSet(root, joint); foreach (var j in set) rig.Control($"set_{j}").PlacedAt(j); rig.Control($"n{set.Count}_{rig.Chain(root, joint).Count}");
        rig.Control(root == joint ? "same" : "other");
        """);
}
