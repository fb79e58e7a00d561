namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>What the last versions of C# added, and the corners of the older ones.</summary>
public class ModernTests
{
    [Theory]
    [InlineData("Box? b = new(); b?.Name = \"set\"; b?.Count += 2; rig.Control(b!.Name + b.Count); Box? none = null; none?.Name = Note(\"never\"); rig.Control(\"end\");")]
    [InlineData("var v = new Vec(1); v += new Vec(2); v++; rig.Control($\"{v.X}\"); var w = v; w += new Vec(10); rig.Control($\"{v.X}{w.X}\");")]
    [InlineData("var (a, b, _) = (1, \"x\", 2.0); (a, b) = (a + 1, b + \"y\"); var (p, (q, r)) = (1, (2, 3)); rig.Control($\"{a}{b}{p}{q}{r}\"); (int Left, int Right) sides = (1, 2); (sides.Left, sides.Right) = (sides.Right, sides.Left); rig.Control($\"{sides.Left}{sides.Right}{sides.Item1}\"); int[] arr = [1, 2]; (arr[0], arr[1]) = (arr[1], arr[0]); rig.Control($\"{arr[0]}\"); var map = new Dictionary<(int, string), string> { [(1, \"a\")] = \"v\" }; rig.Control(map[(1, \"a\")]); foreach (var ((k, s), val) in map) rig.Control($\"{k}{s}{val}\");")]
    [InlineData("var list = new List<(string Name, int Size)> { (\"a\", 1), (\"b\", 2) }; list[0] = list[0] with { Size = 5 }; foreach (var (name, size) in list) rig.Control(name + size); var best = list.MaxBy(x => x.Size); rig.Control(best.Name); var an = new { Id = 1, Tag = \"t\" }; var an2 = an with { Id = 2 }; rig.Control(an2.Tag + an2.Id + (an == an2) + an.Equals(new { Id = 1, Tag = \"t\" }));")]
    [InlineData("string? s = null; rig.Control(s?.Trim()?.Length.ToString() ?? \"none\"); Box? box = new() { Inner = new Box { Name = \"in\" } }; rig.Control(box?.Inner?.Name ?? \"no\"); rig.Control(box?.Inner?.Inner?.Name ?? \"no2\"); int? len = box?.Inner?.Name.Length; rig.Control($\"{len}\"); rig.Control((box.Items?[1] ?? \"noitem\") + (box?[2] ?? \"\")); s ??= Note(\"made\"); s ??= Note(\"not\"); rig.Control(s);")]
    [InlineData("var q = from n in Enumerable.Range(1, 6) where n % 2 == 0 let sq = n * n orderby sq descending select new { n, sq }; foreach (var x in q) rig.Control($\"{x.n}{x.sq}\"); var g = from w in new[] { \"arm\", \"ankle\", \"leg\" } group w by w[0] into grp orderby grp.Key select $\"{grp.Key}{grp.Count()}\"; foreach (var x in g) rig.Control(x); var j = from a in new[] { 1, 2 } join b in new[] { (1, \"x\"), (2, \"y\"), (2, \"z\") } on a equals b.Item1 select $\"{a}{b.Item2}\"; foreach (var x in j) rig.Control(x); var gj = from a in new[] { 1, 3 } join b in new[] { (1, \"x\") } on a equals b.Item1 into bs from b in bs.DefaultIfEmpty() select $\"{a}{b.Item2}\"; foreach (var x in gj) rig.Control(x);")]
    [InlineData("int x = 0; x = x++ + ++x; rig.Control($\"{x}\"); int i = 1; i += i++ * 2 + i; rig.Control($\"{i}\"); int[] a = [0, 0, 0]; int k = 0; a[k] = k = 2; rig.Control($\"{a[0]}{a[2]}{k}\"); rig.Control($\"{F(1, out var y) + y}\"); int F(int v, out int o) { o = v * 10; return v; } string t = \"\"; t += (t += \"a\") + \"b\"; rig.Control(t);")]
    [InlineData("rig.Control(nameof(Box.Inner) + nameof(rig) + nameof(List<int>.Count)); const string C = \"c\" + \"d\"; const int N = 3 * 4; rig.Control(C + N); rig.Control(default(int) + \"\" + default(string) + default(Kind)); Kind k = default; rig.Control($\"{k}{(int)k}{sizeof(int)}\"); var lit = \"tab\\tuni\\u0041\\x41\"; rig.Control(lit.Replace('\\t', '_')); rig.Control(\"\"\"\n            raw\n              two\n            \"\"\".Replace(\"\\r\", \"\").Replace('\\n', '_').Replace(' ', '.')); rig.Control(\"utf\"u8.Length.ToString());")]
    [InlineData("Action<int> act = n => { if (n > 0) rig.Control($\"a{n}\"); }; for (var n = -1; n < 2; n++) act(n); var ops = new Dictionary<string, Func<int, int, int>> { [\"add\"] = (a, b) => a + b, [\"mul\"] = (a, b) => a * b }; foreach (var (name, op) in ops) rig.Control($\"{name}{op(3, 4)}\"); (string, Action<string>)[] table = [(\"x\", s => rig.Control(s)), (\"y\", s => rig.Group(s + \"_group\"))]; foreach (var (name, run) in table) run(name);")]
    [InlineData("var lazy = new Lazy<string>(() => Note(\"lazy\")); rig.Control(\"before\"); rig.Control(lazy.Value + lazy.Value + lazy.IsValueCreated); var t = Tuple.Create(1, \"a\"); rig.Control(t.Item2 + t.Item1); var vt = ValueTuple.Create(1, 2); rig.Control($\"{vt.Item2}\"); var w = new WithThis(); rig.Control(w.Chain().Chain().Text);")]
    [InlineData("foreach (var x in Make(rig)) rig.Control(x.Name + \"_copy\"); static IEnumerable<Control> Make(RigDraft rig) { yield return rig.Control(\"one\"); yield return rig.Control(\"two\"); } var made = Make2(rig).ToList(); rig.Control(\"after\"); static IEnumerable<Group> Make2(RigDraft rig) => Enumerable.Range(0, 2).Select(i => rig.Group($\"g{i}_group\"));")]
    public void Constructs(string code) => Oracle.Agrees(
        "string Note(string s) { rig.Control(\"note_\" + s); return s; }" + code + ";",
        """
        private sealed class Box { public string Name { get; set; } = "n"; public int Count; public Box? Inner { get; set; } public string[]? Items; public string? this[int i] => i == 2 ? "idx" : null; }
        private struct Vec(int x) { public int X = x; public void operator +=(Vec other) => X += other.X; public void operator ++() => X += 100; }
        private enum Kind { None, Some }
        private sealed class WithThis { public string Text = ""; public WithThis Chain() { Text += "c"; return this; } }
        """);

    [Fact]
    public void A_program_of_statements_may_build_its_rigs() => Oracle.AgreesOn(
        ("program.cs", Oracle.Usings + """
            var names = new[] { "a", "b" };
            var rig = Rig.Build(new Buoy());
            static class Names { public static string Of(int i) => $"buoy_{i}"; }
            public sealed class Buoy : IRigDefinition { private readonly int count; public Buoy() : this(2) { } public Buoy(int count) => this.count = count; public void Define(RigDraft rig) { for (var i = 0; i < count; i++) rig.Control(Names.Of(i)); } }
            """));

    [Fact]
    public void Extensions_that_change_their_receiver_where_it_lies() => Oracle.Agrees(
        """
        var count = 3; count.Grow(2); count.Twice = 4; var sizes = new[] { 1, 5 }; sizes[1].Grow(1); var point = new Vector3(1, 2, 3); point.Lift();
        rig.Group($"{count}_{sizes[1]}_{count.Twice}_group"); rig.Skeleton("s").Root("r", at: point);
        """,
        more: """
        public static class Growing
        {
            private static void Add(ref int value, int by) => value += by;
            extension(ref int size)
            {
                public void Grow(int by) { size++; Add(ref size, by); }
                public int Twice { get => size * 2; set => size = value + size; }
            }
            extension(ref Vector3 point) { public void Lift() { point.Y += 1; } }
        }
        """);

    [Fact]
    public void Extensions_called_on_their_class_and_operators_of_theirs() => Oracle.Agrees(
        """
        rig.Control(Naming.Twice("z", 2) + Naming.get_Loud("q") + Naming.Dash(3) + Naming.Twice(n: 1, s: "o")); Func<string, int, string> twice = Naming.Twice; rig.Control(twice("y", 3)); rig.Control(string.Join("_", new[] { "a", "b" }.Select(Naming.get_Loud)));
        rig.Control(string.Join("_", Naming.Numbered(new[] { "a", "b" })) + Naming.Fold(new[] { 1, 2 }, "s", (s, i) => s + i));
        var p = new Place(); Naming.Move(ref p, 3); p += 5; p++; rig.Control($"{p.X}"); var all = new Place[2]; var i = 0; all[i++] += 4; all[i++]++; rig.Control($"{all[0].X}{all[1].X}{i}");
        """,
        more: """
        public struct Place { public int X; }
        public static class Naming
        {
            extension(string s)
            {
                public string Loud => s + "!";
                public static string Dash(int n) => new('-', n);
                public string Twice(int n = 2) => string.Concat(Enumerable.Repeat(s, n));
            }
            extension<T>(IEnumerable<T> items) where T : notnull
            {
                public IEnumerable<string> Numbered() { var i = 0; foreach (var item in items) yield return $"{i++}{item}"; }
                public TOut Fold<TOut>(TOut seed, Func<TOut, T, TOut> fold) => items.Aggregate(seed, fold);
            }
            extension(ref Place p)
            {
                public void Move(int by) => p.X += by;
                public void operator +=(int by) => p.X += by;
                public void operator ++() => p.X++;
            }
        }
        """);
}
