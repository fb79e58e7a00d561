namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>What is the same as what: records, tuples, constants.</summary>
public class EqualityTests
{
    [Fact]
    public void Records_ask_what_they_or_their_parts_say() => Oracle.Agrees(
        """
        rig.Control($"{new Key("a", 1) == new Key("A", 2)}{new Key("a", 1) != new Key("b", 1)}{new Key("x", 1) with { } == new Key("X", 2)}{new Key("a", 1) == new SubKey("A", 2, "")}{new SubKey("A", 2, "") == new Key("a", 1)}");
        rig.Control($"{new Bone(new Tag("A")) == new Bone(new Tag("a"))}{new Bone(new Tag("A")) != new Bone(new Tag("b"))}{new Bone(new Tag("A")).Equals(new Bone(new Tag("a")))}");
        rig.Control($"{(1, new Tag("A")) == (1, new Tag("a"))}{(1, new Key("A", 1)) == (1, new Key("a", 2))}{(1, new Cable(3)) == (1, new Cable(-3))}{(1, new Cable(3)) != (1, new Cable(4))}"); var tag = new Tag("q"); rig.Control($"{(tag, 1) == (tag, 1L)}");
        Key? none = null; rig.Control($"{none == null}{none == new Key("a", 1)}{null != none}"); Mark? mark = new(1), other = null; rig.Control($"{mark == other}{mark == new Mark(1)}{other == null}");
        """,
        """
        private record Key(string Name, int At) { public virtual bool Equals(Key? o) => o is not null && string.Equals(Name, o.Name, StringComparison.OrdinalIgnoreCase); public override int GetHashCode() => 1; }
        private sealed record SubKey(string Name, int At, string More) : Key(Name, At);
        private sealed class Tag(string name) : IEquatable<Tag> { public string Name => name; public bool Equals(Tag? o) => o is not null && string.Equals(name, o.Name, StringComparison.OrdinalIgnoreCase); public override bool Equals(object? o) => Equals(o as Tag); public override int GetHashCode() => 1; }
        private sealed class Cable(int length) { public int Length => length; public static bool operator ==(Cable a, Cable b) => Math.Abs(a.Length) == Math.Abs(b.Length); public static bool operator !=(Cable a, Cable b) => !(a == b); public override bool Equals(object? o) => false; public override int GetHashCode() => 1; }
        private record Bone(Tag Tag); private record struct Mark(int Id);
        """);

    [Theory]
    [InlineData("var n = double.NaN; object boxed = n; rig.Control($\"{n is double.NaN}{n == double.NaN}{n switch { double.NaN => 1, _ => 2 }}{float.NaN is float.NaN}{boxed is double.NaN}{boxed is not double.NaN}{-0.0 is 0.0}\"); switch (n) { case double.NaN: rig.Control(\"none\"); break; default: rig.Control(\"some\"); break; }")]
    [InlineData("object o = Kind.B; rig.Control($\"{o is Kind.B}{o is Other.B}{o is 1}{(object)1 is Kind.B}{(Enum)Kind.B is Kind.B}{o is Kind and > Kind.A}\"); var k = Kind.B; Kind? n = k; rig.Control($\"{k is 0}{Kind.A is 0}{k switch { 0 => 1, Kind.B => 2, _ => 3 }}{n is Kind.B}{n is 0 or null}\"); switch (k) { case 0: rig.Control(\"zero\"); break; case Kind.B: rig.Control(\"b\"); break; }")]
    [InlineData("object i = 1; rig.Control($\"{i is 1L}{i is 1}{i is 1.0}{(object)'a' is 97}{(object)1u is 1}{(object)'A' is 'A'}{1L is 1}{(int?)1 is 1}{(object)1.0f is 1.0}\"); switch (i) { case 1L: rig.Control(\"l\"); break; case 1: rig.Control(\"i\"); break; }")]
    public void Constants_that_are_matched(string code) => Oracle.Agrees(code, "private enum Kind { A, B } private enum Other { A, B }");
}
