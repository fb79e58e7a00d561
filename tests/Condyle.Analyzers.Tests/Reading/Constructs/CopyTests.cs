namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>Structures are copied where C# copies them, and changed where they lie elsewhere.</summary>
public class CopyTests
{
    [Theory]
    [InlineData("object o = s; Size u = (Size)o; u.Grow(); rig.Control($\"{((Size)o).N}{u.N}\"); ((IGrow)o).Grow(); rig.Control($\"{((Size)o).N}{s.N}\"); foreach (Size x in new object[] { s, o }) x.Grow(); foreach (var c in new object[] { o }.Cast<Size>()) c.Grow(); rig.Control($\"{((Size)o).N}\"); if (o is Size p) { p.Grow(); rig.Control($\"{p.N}{((Size)o).N}\"); }")]
    [InlineData("Action grow = s.Grow; grow(); grow(); rig.Control($\"{s.N}\"); Action closed = () => s.Grow(); closed(); rig.Control($\"{s.N}\"); Func<Size> get = () => s; get().Grow(); rig.Control($\"{s.N}\"); Func<Size, Size> grown = e => { e.Grow(); return e; }; rig.Control($\"{grown(s).N}{s.N}\");")]
    [InlineData("s.Reset(); rig.Control($\"{s.N}\"); var other = new Size { N = 9 }; s.Take(other); rig.Control($\"{s.N}{other.N}\"); var all = new Size[2]; all[1].Take(other); rig.Control($\"{all[0].N}{all[1].N}\");")]
    [InlineData("var list = new List<Size> { s }; list[0].Grow(); var (a, b) = (s, s); a.Grow(); Size? n = s; var m = n.Value; m.Grow(); rig.Control($\"{list[0].N}{a.N}{b.N}{s.N}{n.Value.N}{m.N}\"); var map = new Dictionary<int, Size> { [0] = s }; var v = map[0]; v.Grow(); map.TryGetValue(0, out var w); w.Grow(); rig.Control($\"{map[0].N}{w.N}\"); IGrow i = s, j = i; j.Grow(); rig.Control($\"{((Size)i).N}{s.N}\");")]
    public void Copies(string code) => Oracle.Agrees(
        "var s = new Size { N = 3 };" + code,
        "private interface IGrow { void Grow(); } private struct Size : IGrow { public int N; public void Grow() => N++; public void Reset() => this = default; public void Take(Size other) { this = other; N++; } }");
}
