using Condyle.Analyzers.Reading;

namespace Condyle.Analyzers.Tests.Reading.Bounds;

/// <summary>Declarations that lead back to themselves, most of which don't compile but may be typed.</summary>
public class CyclicCodeTests
{
    [Theory]
    [InlineData("rig.Control($\"{A.X}{B.Y}\");", "class A { public static readonly int X = B.Y + 1; } class B { public static readonly int Y = A.X + 1; }")]
    [InlineData("rig.Control($\"{A.X}\");", "class A { public static int X = Next(); static int Next() => X + new A().own; int own = X; }")]
    [InlineData("rig.Control($\"{A.X}\");", "class A { public const int X = B.Y; } class B { public const int Y = A.X; }")]
    [InlineData("rig.Control(A.X);", "class A { public const string X = \"a\" + B.Y; } class B { public const string Y = \"b\" + A.X; }")]
    [InlineData("var a = new A(); rig.Control(a.Name); a.Run(rig);", "class A : B { public string Name = \"a\"; } class B : A { public virtual void Run(RigDraft rig) { base.Run(rig); } }")]
    [InlineData("new A().Run(rig);", "class A : A { public override void Run(RigDraft rig) => base.Run(rig); }")]
    [InlineData("IA a = new C(); a.Run(rig);", "interface IA : IB { } interface IB : IA { void Run(RigDraft rig); } class C : IA { public void Run(RigDraft rig) { } }")]
    [InlineData("var s = new S(); var t = s; rig.Control($\"{t == s}{default(S)}\");", "struct S { public S inner; public int x; public static bool operator ==(S a, S b) => a.inner == b.inner; public static bool operator !=(S a, S b) => !(a == b); }")]
    [InlineData("var s = new S(); rig.Control($\"{s.Equals(s)}\");", "struct S { public T inner; } struct T { public (S, int) inner; }")]
    [InlineData("var s = new S<int>(); rig.Control($\"{s}\");", "struct S<T> { public S<S<T>> inner; }")]
    [InlineData("var r = new R(null!); r = r with { Next = r }; rig.Control($\"{r}\");", "record R(R Next);")]
    [InlineData("var r = new R(null!); r.Next = r; rig.Control($\"{r}\"); rig.Control($\"{r == new R(r)}{r.GetHashCode()}\"); new HashSet<R>().Add(r);", "record R(R Next) { public R Next { get; set; } = Next; }")]
    [InlineData("object[] a = [1]; a[0] = a; rig.Control(string.Concat(a)); new JointSet(a); foreach (object[] x in a) foreach (var y in x) rig.Control(\"y\"); Console.WriteLine(a);", "")]
    [InlineData("var l = new List<object>(); l.Add(l); rig.Control(string.Join(\"\", l)); rig.Control($\"{l.Contains(l)}{l.IndexOf(l)}\"); System.IO.File.WriteAllText(\"x\", l.ToString()); foreach (var x in l) l.Add(x);", "")]
    [InlineData("(object A, int B) t = (1, 2); t.A = t; object o = t; rig.Control(o.ToString()!); rig.Control($\"{t.Equals(t)}\");", "")]
    [InlineData("foreach (var x in new E()) rig.Control(\"x\"); string.Join(\"\", new E());", "class E : IEnumerable<int> { public E GetEnumerator() => this; public bool MoveNext() => true; public int Current => 1; IEnumerator<int> IEnumerable<int>.GetEnumerator() => throw new Exception(); System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => this.GetEnumerator(); }")]
    [InlineData("Func<object> f = null!; f = () => f; object o = f; for (var i = 0; i < 100; i++) o = ((Func<object>)o)(); Mixed(f);", "public static partial class More { public static extern void Mixed(object o); }")]
    [InlineData("new A<int>().Grow(0);", "class A<T> { public void Grow(int n) => new A<A<T>>().Grow(n + 1); }")]
    [InlineData("A<int>.Grow();", "class A<T> { static A<A<T>> next = new(); public static void Grow() => A<(T, A<T>)>.Grow(); }")]
    [InlineData("var x = 1; x.Self().Self();", "static class E { public static T Self<T>(this T x) => x.Self(); }")]
    [InlineData("rig.Control(new A().ToString()!); rig.Control($\"{new A().Equals(new A())}\"); new Dictionary<A, int> { [new A()] = 1, [new A()] = 2 };", "class A { public override string ToString() => new A().ToString(); public override bool Equals(object? o) => new A().Equals(o); public override int GetHashCode() => GetHashCode(); }")]
    [InlineData("A a = new A(); int n = a; rig.Control($\"{n}\"); a++; if (a) rig.Control(\"a\");", "class A { public static implicit operator int(A a) => a; public static A operator ++(A a) => a++; public static bool operator true(A a) => a ? true : false; public static bool operator false(A a) => !a; public static bool operator !(A a) => !a; }")]
    public void Is_given_up_on_or_read_whole(string code, string more) => BoundedReading.Of(code, "", more).FindsTheSlip();

    [Fact]
    public void A_stop_in_a_helper_is_said_in_the_helpers_file() => BoundedReading.Of(
        "Helper.Wait(rig);", more: "public static class Helper { public static void Wait(RigDraft rig) { while (rig is not null) { var waiting = true; } } }")
        .StopsIn("more.cs", $"reading takes more than {Limits.Steps} steps");

    [Fact]
    public void An_arm_that_throws_does_not_hide_where_the_reading_stops() => BoundedReading.Of(
        "if (Environment.TickCount > 3) throw new InvalidOperationException(\"no\"); var s = \"x\"; while (true) s += s;")
        .StopsAt("s += s", $"a text grows beyond {Limits.TextLength} characters");
}
