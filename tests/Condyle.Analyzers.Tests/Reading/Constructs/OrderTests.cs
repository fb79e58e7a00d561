namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>What C# evaluates first where one expression holds several that change something.</summary>
public class OrderTests
{
    [Theory]
    [InlineData("int i = 0; var a = new[] { 3, 2, 1 }; (a[i++], a[i++]) = (i, 10 * i); rig.Control(string.Join(\"_\", a)); (a[0], i) = (i, a[0]); rig.Control($\"{a[0]}{i}\"); (i, i) = (1, 2); rig.Control($\"{i}\");")]
    [InlineData("(Items()[0], Items()[1]) = (n++, n++); rig.Control($\"{items[0]}_{items[1]}_{n}\"); Node node = new(), first = node; (node.Next, node) = (new Node(), new Node()); rig.Control($\"{first.Next is null}{node.Next is null}\");")]
    [InlineData("double x; int y; long l; var t = (1, 2); (x, y) = t; rig.Control($\"{x / 2 + 0.5}{y}\"); (l, _) = t; rig.Control($\"{l.GetType() == typeof(long)}{l * 3_000_000_000}\"); foreach ((double a, var b) in new[] { (1, 2) }) rig.Control($\"{a / 2 + b / 4 + 0.5}\");")]
    [InlineData("List<int> l = [1]; int[] a = [l.Count, .. Grow(l), l.Count]; rig.Control(string.Join(\"_\", a)); int[] b = [l.Count, .. l, Add(l)]; rig.Control(string.Join(\"_\", b)); IEnumerable<int> c = [l.Count, .. Grow(l), l.Count]; rig.Control(string.Join(\"_\", c)); List<int> d = [.. Grow(l), .. l, Add(l)]; rig.Control(string.Join(\"_\", d)); int[] e = [.. l, Add(l), .. l]; rig.Control(string.Join(\"_\", e));")]
    [InlineData("var f = (int a, int b, string c = \"z\") => $\"{a}{b}{c}\"; rig.Control(f(arg2: 1, arg1: 2)); Two g = Said; rig.Control(g(second: Next(), first: Next())); string L(int x, int y, int z = 5) => $\"{x}{y}{z}\"; rig.Control(L(z: Next(), y: Next(), x: Next())); rig.Control(L(y: 1, x: 2)); int x = 1; void Inc(int by = 2, params int[] more) => x += by + more.Sum(); Inc(); Inc(more: [1, 2]); Inc(by: 1, 5); rig.Control($\"{x}\");")]
    public void Is_as_it_stands(string code) => Oracle.Agrees(
        code,
        """
        private delegate string Two(int first, int second);
        private sealed class Node { public Node? Next; }
        private int n; private int[] items = [0, 0]; private int Next() => ++n;
        private int[] Items() { n += 10; return items; }
        private string Said(int first, int second) => $"{first}-{second}";
        private static IEnumerable<int> Grow(List<int> l) { l.Add(9); yield return l.Count; l.Add(8); yield return l.Count; }
        private static int Add(List<int> l) { l.Add(1); return l.Count; }
        """);
}
