namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>Patterns of every kind, and what they bind.</summary>
public class PatternTests
{
    [Theory]
    [InlineData("foreach (var n in new[] { -1, 0, 5, 10, 50 }) rig.Control(n switch { < 0 => \"neg\", 0 => \"zero\", > 0 and < 10 => \"small\", 10 or 20 => \"ten\", var big when big % 2 == 0 => $\"even{big}\", _ => \"odd\" });")]
    [InlineData("foreach (object? o in new object?[] { 1, 2L, \"s\", 'c', 1.5, 2f, true, null, new[] { 1 }, new Dog(\"rex\", 3), (1, 2) }) rig.Control(o switch { int i and > 0 => $\"int{i}\", long => \"long\", string { Length: 1 } s => \"one\" + s, string s => s, char c => $\"char{c}\", double => \"double\", float => \"float\", true => \"true\", null => \"null\", int[] { Length: 1 } a => $\"arr{a[0]}\", Dog { Name: \"rex\", Legs: var l } => $\"rex{l}\", (int, int) => \"pair\", _ => \"other\" });")]
    [InlineData("var d = new Dog(\"bo\", 4); rig.Control(d is (\"bo\", > 3) ? \"yes\" : \"no\"); rig.Control(d is { Tail.Length: 2 } ? \"two\" : \"no\"); rig.Control(d is { Tail: { Length: > 5 } } or { Name: ['b', ..] } ? \"b\" : \"no\"); if (d is not { Legs: 3 } x) rig.Control(\"not three\"); if (d is Dog { Name: var nm } dog && dog.Legs == 4) rig.Control(nm);")]
    [InlineData("foreach (var a in new int[][] { [], [1], [1, 2], [1, 2, 3], [9, 8, 7, 6] }) rig.Control(a switch { [] => \"empty\", [var only] => $\"only{only}\", [1, var second] => $\"s{second}\", [1, .., 3] => \"1to3\", [.. var start, 6] when start.Length == 3 => $\"start{start[0]}\", _ => \"else\" });")]
    [InlineData("foreach (var s in new[] { \"arm_left\", \"leg_right\", \"x\" }) rig.Control(s.Split('_') switch { [\"arm\", var side] => \"A\" + side, [var part, \"right\"] => part + \"R\", [{ Length: 1 }] => \"short\", _ => \"none\" });")]
    [InlineData("rig.Control((1, \"a\") switch { (1, \"b\") => \"1b\", (1, var z) => \"1\" + z, _ => \"no\" }); var (x, y) = (3, 4); rig.Control((x, y) switch { (3, 3) => \"a\", ( > 2, < 5) => \"b\", _ => \"c\" }); (int, int?) t = (1, null); rig.Control(t is (_, null) ? \"null\" : \"value\");")]
    [InlineData("int? n = 3; if (n is int v) rig.Control($\"v{v}\"); if (n is { } w) rig.Control($\"w{w}\"); n = null; rig.Control(n is null ? \"n\" : \"v\"); rig.Control(n switch { 1 => \"one\", null => \"null\", _ => \"more\" }); string? s = \"x\"; if (s is { Length: var len } and not \"y\") rig.Control($\"{len}\"); if (s is \"a\" or \"x\") rig.Control(\"ax\"); if (s is var any) rig.Control(any!);")]
    [InlineData("Side side = Side.Left; rig.Control(side == Side.Left ? \"l\" : \"r\"); Kind k = Kind.Leg; switch (k) { case Kind.Arm: rig.Control(\"arm\"); break; case Kind.Leg when side == Side.Right: rig.Control(\"no\"); break; case Kind.Leg or Kind.Tail: rig.Control(\"leg\"); break; } rig.Control(k is Kind.Arm or Kind.Tail ? \"a\" : \"b\"); rig.Control(k switch { >= Kind.Leg => \"ge\", _ => \"lt\" });")]
    [InlineData("switch (\"b\") { case \"a\": case \"b\": { rig.Control(\"ab\"); break; } default: break; } object o = 5; switch (o) { case int i when i > 3: rig.Control($\"big{i}\"); break; case int i: rig.Control(\"small\"); break; case string: break; } switch (o) { case not null and int and > 2: rig.Control(\"nn\"); break; }")]
    [InlineData("var list = new List<string> { \"a\", \"b\", \"c\" }; if (list is [var f, .., var l]) rig.Control(f + l); if (list is [_, \"b\", ..]) rig.Control(\"second b\"); if (\"hello\" is ['h', .. var rest]) rig.Control(rest); if (list is { Count: > 2 and var cnt }) rig.Control($\"{cnt}\");")]
    [InlineData("Tree t = new Node(new Leaf(1), new Node(new Leaf(2), new Leaf(3))); rig.Control($\"{Sum(t)}\"); rig.Control(t is Node { L: Leaf { V: 1 }, R: Node(Leaf(var a), _) } ? $\"m{a}\" : \"no\"); int Sum(Tree x) => x switch { Leaf(var v) => v, Node(var l, var r) => Sum(l) + Sum(r), _ => 0 };")]
    public void Patterns(string code) => Oracle.Agrees(
        code,
        """
        private sealed record Dog(string Name, int Legs) { public string Tail => "tl"; }
        private enum Kind { Arm, Leg, Tail }
        private abstract record Tree; private sealed record Leaf(int V) : Tree; private sealed record Node(Tree L, Tree R) : Tree;
        """);

    [Fact]
    public void Of_what_may_be_anything_only_a_tuple_of_as_many_comes_apart() => Oracle.Agrees(
        """
        object[] all = [(1, "x"), (1, "x", 3), true, 5, "s", Kind.B, new Pair(), new Sized(1, 2), new List<int>(), new KeyValuePair<int, string>(1, "x")];
        foreach (var one in all) rig.Control($"{one is (_, _)}{one is (int a, string b) && b == "x" && a == 1}{one is (1, "x", 3)}{one is Sized(1, 2)}");
        """,
        "private enum Kind { A, B } private sealed class Pair { public void Deconstruct(out int a, out int b) => a = b = 1; } private record Sized(int A, int B);");
}
