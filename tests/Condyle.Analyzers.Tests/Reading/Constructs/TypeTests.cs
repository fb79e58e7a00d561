using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>The user's own types: how they are made, copied, compared, converted, inherited.</summary>
public class TypeTests
{
    [Theory]
    [InlineData("var a = new Limb(\"arm\") { Count = 2, [\"x\"] = 5, Parts = { \"p\", \"q\" }, Inner = { Depth = 3 } }; rig.Control($\"{a.Name}{a.Count}{a[\"x\"]}{a.Parts.Count}{a.Inner.Depth}\"); var b = a; b.Count++; rig.Control($\"{a.Count}\");")]
    [InlineData("Angle a = 30; Angle b = new(15); var c = a + b * 2 - -b; rig.Control($\"{(int)(float)c}{a > b}{a == b}{a != b}\"); c += 5; c++; rig.Control($\"{(int)c.Degrees}\"); if (c) rig.Control(\"true\"); rig.Control(((int)a).ToString());")]
    [InlineData("var m = new Meter(2) * 3 + new Meter(1); rig.Control(m.ToString()); rig.Control($\"{m}\"); rig.Control(\"\" + m); rig.Control(m.Equals(new Meter(7)).ToString()); var set = new HashSet<Meter> { new(1), new(1), new(2) }; rig.Control($\"{set.Count}\");")]
    [InlineData("Shape[] all = [new Dot(), new Line(3), new Line(4) { Thick = true }]; foreach (var s in all) rig.Control(s.Describe()); rig.Control(all[1].Name + all[0].Name + ((Line)all[1]).Length); rig.Control(all.OfType<Line>().Count().ToString()); rig.Control(all[0] is Line ? \"l\" : \"d\"); rig.Control((all[2] as Line)?.Length.ToString() ?? \"no\"); try { _ = (Line)all[0]; } catch (InvalidCastException) { rig.Control(\"cast\"); }")]
    [InlineData("var r = new Bone(\"a\", 1); var s = r with { Length = 2 }; rig.Control($\"{r} {s} {r == s} {r == new Bone(\"a\", 1)} {s.Doubled}\"); Bone? none = null; rig.Control($\"{none == r}{none is null}\"); var (n, l) = s; rig.Control(n + l); Joint2 j = new(\"j\", 3, \"p\"); rig.Control(j.ToString()); Bone up = j; rig.Control(up.ToString()); rig.Control($\"{up == r}{up.Equals(new Joint2(\"j\", 3, \"p\"))}\"); var up2 = up with { Length = 9 }; rig.Control(up2.ToString());")]
    [InlineData("var p = new Point(1, 2); var q = p; q.X = 5; rig.Control($\"{p.X}{q.X}{p == new Point(1, 2)}{p}\"); var arr = new Point[2]; arr[0].X = 3; rig.Control($\"{arr[0]}{arr[1]}\"); var list = new List<Point> { p }; var c = list[0]; c.X = 9; rig.Control($\"{list[0].X}\"); var h = new Holder { P = p }; h.P.Move(1); rig.Control($\"{h.P.X}{p.X}\"); Bump(ref h.P); rig.Control($\"{h.P.X}\"); object boxed = p; p.X = 77; rig.Control($\"{((Point)boxed).X}\");")]
    [InlineData("IPart part = new Fin(); rig.Control(part.Name + part.Label); rig.Control(((ITail)part).Name); IPart d = new Plain(); rig.Control(d.Label); rig.Control(IPart.Shared);")]
    [InlineData("rig.Control(Outer.Inner.Deep + Outer.Inner.Twice(\"x\")); rig.Control($\"{Counter.Next()}{Counter.Next()}{Counter.Total}\"); rig.Control(Consts.B + Consts.Arr[1] + Consts.Later);")]
    [InlineData("var log = new List<string>(); var t = new Tracer(log); t.Value = 3; t.Value += 2; rig.Control(string.Join(\"_\", log)); var x = t[1, \"a\"]; t[2, \"b\"] = \"v\"; rig.Control(x + string.Join(\"_\", log)); rig.Control(t.Lazy + t.Lazy + t.Loads);")]
    [InlineData("var v = new Version3(1) { Minor = 2 }; rig.Control($\"{v.Major}{v.Minor}{v.Text}\"); var req = new Req { Name = \"n\" }; rig.Control(req.Name); var f = new FieldKeyword(); f.Name = \"  x \"; rig.Control(f.Name);")]
    [InlineData("Color c = Color.Red | Color.Blue; rig.Control($\"{c} {(int)c} {c.HasFlag(Color.Red)} {c & ~Color.Red} {(Color)2} {(Color)8} {Enum.GetValues<Color>().Length}\"); c ^= Color.Red; rig.Control(c.ToString()); foreach (var n in Enum.GetNames<Color>()) rig.Control(n); object o = Color.Green; rig.Control($\"{o}{o is Color}{o.Equals(Color.Green)}\"); rig.Control(Enum.Parse<Color>(\"Blue\").ToString()); Small s = Small.B; s++; rig.Control($\"{s}{(byte)s}{s > Small.A}\"); rig.Control($\"{Color.Red:D}\");")]
    public void Types(string code) => Oracle.Agrees(
        code,
        """
        private sealed class Limb(string name) { private readonly Dictionary<string, int> map = []; public string Name { get; } = name + "!"; public int Count { get; set; } = 1; public int this[string key] { get => map[key]; set => map[key] = value; } public List<string> Parts { get; } = ["o"]; public Deep Inner { get; } = new(); }
        private sealed class Deep { public int Depth; }
        private readonly struct Angle(float degrees) { public float Degrees => degrees; public static implicit operator Angle(int d) => new(d); public static explicit operator float(Angle a) => a.Degrees; public static explicit operator int(Angle a) => (int)a.Degrees;
            public static Angle operator +(Angle a, Angle b) => new(a.Degrees + b.Degrees); public static Angle operator -(Angle a, Angle b) => new(a.Degrees - b.Degrees); public static Angle operator -(Angle a) => new(-a.Degrees); public static Angle operator *(Angle a, float f) => new(a.Degrees * f); public static Angle operator ++(Angle a) => new(a.Degrees + 1);
            public static bool operator >(Angle a, Angle b) => a.Degrees > b.Degrees; public static bool operator <(Angle a, Angle b) => b > a; public static bool operator ==(Angle a, Angle b) => a.Degrees == b.Degrees; public static bool operator !=(Angle a, Angle b) => !(a == b); public static bool operator true(Angle a) => a.Degrees != 0; public static bool operator false(Angle a) => a.Degrees == 0; public override bool Equals(object? o) => o is Angle a && a == this; public override int GetHashCode() => 1; }
        private sealed class Meter(int value) : IEquatable<Meter> { private readonly int value = value; public static Meter operator *(Meter m, int f) => new(m.value * f); public static Meter operator +(Meter a, Meter b) => new(a.value + b.value); public override string ToString() => value + "m"; public bool Equals(Meter? other) => other?.value == value; public override bool Equals(object? o) => Equals(o as Meter); public override int GetHashCode() => value; }
        private abstract class Shape { public virtual string Name => "shape"; public abstract string Kind(); public string Describe() => Name + "_" + Kind(); }
        private class Dot : Shape { public override string Kind() => "dot"; }
        private sealed class Line(int length) : Shape { public int Length => length; public bool Thick { get; init; } public override string Name => base.Name + (Thick ? "thick" : "thin"); public override string Kind() => $"line{length}"; }
        private record Bone(string Name, int Length) { public int Doubled => Length * 2; }
        private sealed record Joint2(string Name, int Length, string Parent) : Bone(Name, Length);
        private record struct Point(int X, int Y) { public void Move(int by) => X += by; }
        private sealed class Holder { public Point P; }
        private static void Bump(ref Point p) => p.X += 10;
        private interface IPart { string Name { get; } string Label => "default_" + Name; static string Shared => "shared"; }
        private interface ITail { string Name { get; } }
        private sealed class Fin : IPart, ITail { string ITail.Name => "tail"; public string Name => "fin"; public string Label => "own"; }
        private sealed class Plain : IPart { public string Name => "plain"; }
        private static class Outer { public static class Inner { public const string Deep = "deep" + nameof(Outer); public static string Twice(string s) => s + s; } }
        private static class Counter { public static int Total { get; private set; } public static int Next() => ++Total; }
        private static class Consts { public const string A = "a"; public static readonly string B = A + "b"; public static readonly string[] Arr = ["x", B]; public static string Later = Early + "l"; private static readonly string Early = "e"; static Consts() { Later += "s"; } }
        private sealed class Tracer(List<string> log) { private int value; private string? lazy; public int Loads; public int Value { get { log.Add("get"); return value; } set { log.Add($"set{value}"); this.value = value; } } public string this[int i, string s] { get => s + i; set => log.Add(s + i + value); } public string Lazy => lazy ??= Load(); private string Load() { Loads++; return "L"; } }
        private sealed class Version3 { public int Major { get; } public int Minor { get; init; } public string Text { get; } public Version3() : this(7) { Text += "p"; } public Version3(int major) { Major = major; Text = "t" + major; } }
        private sealed class Req { public required string Name { get; init; } }
        private sealed class FieldKeyword { public string Name { get; set => field = value.Trim(); } = ""; }
        [Flags] private enum Color { Red = 1, Green = 2, Blue = 4 }
        private enum Small : byte { A, B, C }
        """);

    [Fact]
    public void Types_of_a_file_partial_types_aliases_and_symbols() => Oracle.AgreesOn(
        ("a.cs", """
            #define QUAY
            using System; using System.Collections.Generic; using Condyle; using static Names; using Map = System.Collections.Generic.Dictionary<string, int>; using P = (int X, int Y);
            public partial class Rig1 : IRigDefinition
            {
                public partial string Prefix { get; }
                public void Define(RigDraft rig)
                {
                    Map map = new() { ["a"] = 1 }; P p = (3, 4);
                    rig.Control(Prefix + Make("x") + map["a"] + p.X);
            #if QUAY
                    rig.Control("quay");
            #else
                    rig.Control("sea");
            #endif
                    Local.More(rig); Extra(rig); OnEnd(rig);
                }
                partial void Extra(RigDraft rig);
                partial void OnEnd(RigDraft rig);
            }
            file static class Local { public static void More(RigDraft rig) => rig.Control("file_a"); }
            """),
        ("b.cs", """
            using Condyle;
            public partial class Rig1 { public partial string Prefix => "pre_"; partial void Extra(RigDraft rig) => Local.More(rig); }
            file static class Local { public static void More(RigDraft rig) => rig.Control("file_b"); }
            public static class Names { public static string Make(string s) => s + "_made"; }
            """));

    [Fact]
    public void Static_members_are_initialised_in_order_and_before_first_use() => Oracle.Agrees(
        "rig.Control(A.Log); rig.Control(A.First + B.Second); rig.Control(A.Log); rig.Control(C.Value.ToString()); C.Touch(); rig.Control(Late.X);",
        "",
        """
        public static class A { public static string Log = "log"; public static readonly string First = Note("first"); public static string Note(string s) { Log += "_" + s; return s; } static A() => Note("cctor"); }
        public static class B { public static readonly string Second = A.Note("second") + Third; public static readonly string Third = "third"; }
        public class C { public static int Value = D.Value + 1; public static void Touch() => A.Note("touch"); }
        public class D { public static int Value = C.Value + 10; }
        public class Late { public static string X { get; } = "x" + A.Log; }
        """);

    [Fact]
    public void Structures_that_nobody_made_are_empty() => Oracle.Agrees(
        """
        rig.Control($"{new Plain(3).N}{new Plain().N}{default(Plain).N}"); rig.Control($"{new Also("q").Z}{new Also().Z}"); rig.Control($"{new Own().N}{default(Own).N}{Made<Own>().N}{Made<Plain>().N}"); Own a = new() { N = 7 }; rig.Control($"{a.N}"); rig.Control($"{new Mark(4).Z}{new Mark(4, 5).Z}{new Mark().Z}");
        """,
        """
        private static T Made<T>() where T : new() => new T();
        private struct Plain(int n) { public int N = n + 1; }
        private struct Also { public int Z = 4; public Also(string s) : this() { Z += s.Length; } }
        private struct Own { public int N = 5; public Own() { N++; } }
        private record struct Mark(int X) { public int Z = X * 2; public Mark(int a, int b) : this(a + b) { Z++; } }
        """);

    [Fact]
    public void What_a_record_writes_itself_isnt_known()
    {
        var compilation = CompiledCode.Compile(("rig.cs", Oracle.Rig("rig.Control($\"{new Part(2)}\"); rig.Control($\"{new Sub(2, 3)}\");", """
            public record Part(int A) { protected virtual bool PrintMembers(System.Text.StringBuilder text) { text.Append("A!").Append(A); return true; } }
            public record Sub(int A, int B) : Part(A);
            """)));
        var path = Assert.Single(Oracle.Read(compilation, "TestRig").Paths);
        Assert.All(path.Model.Nodes, node => Assert.True(node.Name.IsOpen));
    }

    [Fact]
    public void Places_within_tuples_are_places_and_those_within_vectors_arent_known()
    {
        Oracle.Agrees(
            "var t = (A: 1, B: 2); ref var b = ref t.B; b = 8; Set(ref t.A); rig.Control($\"{t}\"); var all = new[] { t }; ref var q = ref all[0].B; q++; ref var whole = ref all[0]; whole.A = 77; rig.Control($\"{all[0]}\"); var f = new Held(); Set(ref f.T.Item1); rig.Control($\"{f.T}\");",
            "private static void Set(ref int x) => x = 50; private sealed class Held { public (int, int) T; }");
        var compilation = CompiledCode.Compile(("rig.cs", Oracle.Rig("var v = new Vector3(1, 2, 3); ref var y = ref v.Y; y *= 4; rig.Skeleton(\"s\").Root(\"r\", at: v);")));
        var path = Assert.Single(Oracle.Read(compilation, "TestRig").Paths);
        Assert.Contains(Oracle.Lines(path, compilation), line => line.Contains("r under none", StringComparison.Ordinal) && line.Contains("rest …", StringComparison.Ordinal));
    }
}
