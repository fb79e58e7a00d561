namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>Jumps, exceptions and clean-up, in all their combinations.</summary>
public class FlowTests
{
    [Theory]
    [InlineData("for (var i = 0; i < 3; i++) { for (var j = 0; j < 3; j++) { if (j == 1) continue; if (i == 1) goto next; rig.Control($\"{i}{j}\"); } next: ; }")]
    [InlineData("var i = 0; top: if (i < 3) { rig.Control($\"g{i}\"); i++; goto top; }")]
    [InlineData("foreach (var s in new[] { \"a\", \"b\", \"c\", \"d\" }) { switch (s) { case \"a\": continue; case \"c\": rig.Control(\"c\"); goto case \"d\"; case \"d\": rig.Control(\"d\"); break; default: goto case \"d\"; } rig.Control(s + \"!\"); }")]
    [InlineData("rig.Control($\"{Find(3)}{Find(9)}\"); int Find(int x) { foreach (var y in new[] { 1, 3, 5 }) { while (true) { if (y == x) return y; break; } } return -1; }")]
    [InlineData("do { rig.Control(\"once\"); } while (false); while (true) { rig.Control(\"w\"); break; } for (; ; ) { rig.Control(\"f\"); return; }")]
    [InlineData("var n = 5; while (n-- > 0) { if (n % 2 == 0) continue; rig.Control($\"n{n}\"); }")]
    public void Jumps(string code) => Oracle.Agrees("rig.Control(\"start\");" + code);

    [Theory]
    [InlineData("string F() { try { log.Add(\"t\"); return \"r\"; } finally { log.Add(\"f\"); } } rig.Control(F());")]
    [InlineData("int F() { for (var i = 0; ; i++) { try { if (i == 2) return i; if (i == 1) continue; log.Add($\"b{i}\"); } finally { log.Add($\"f{i}\"); } } } rig.Control($\"{F()}\");")]
    [InlineData("try { try { throw new InvalidOperationException(\"in\"); } catch (ArgumentException) { log.Add(\"wrong\"); } finally { log.Add(\"fin\"); } } catch (Exception e) when (e.Message == \"in\") { log.Add(e.Message); }")]
    [InlineData("try { throw new Own(\"code\", 7); } catch (Own e) when (e.Code == 8) { log.Add(\"8\"); } catch (Own e) { log.Add(e.Message + e.Code + e.GetType().Name); }")]
    [InlineData("try { try { throw new Own(\"a\", 1); } catch (Exception e) { throw new InvalidOperationException(\"outer\", e); } } catch (InvalidOperationException e) { log.Add(e.Message + e.InnerException!.Message + (e.InnerException is Own)); }")]
    [InlineData("try { try { throw new Own(\"again\", 2); } catch (Own) { log.Add(\"c\"); throw; } } catch (Exception e) { log.Add(e.Message); }")]
    [InlineData("try { Deep(3); } catch (Own e) { log.Add($\"{e.Code}\"); } void Deep(int n) { try { if (n == 0) throw new Own(\"deep\", n); Deep(n - 1); } finally { log.Add($\"up{n}\"); } }")]
    [InlineData("foreach (var x in new[] { \"1\", \"x\", \"3\" }) { try { log.Add($\"{int.Parse(x) + 1}\"); } catch (FormatException) { log.Add(\"bad\"); } }")]
    [InlineData("int[] a = [1]; try { log.Add($\"{a[3]}\"); } catch (IndexOutOfRangeException) { log.Add(\"out\"); } string? s = null; try { log.Add($\"{s!.Length}\"); } catch (NullReferenceException) { log.Add(\"null\"); } try { log.Add(new Dictionary<string, int>()[\"k\"].ToString()); } catch (KeyNotFoundException) { log.Add(\"key\"); }")]
    [InlineData("using (new Scope(log, \"a\")) { log.Add(\"in\"); using var b = new Scope(log, \"b\"); using var c = new Scope(log, \"c\"); log.Add(\"deep\"); } log.Add(\"end\");")]
    [InlineData("try { using var b = new Scope(log, \"b\"); throw new Own(\"x\", 1); } catch (Own) { log.Add(\"caught\"); } Scope? none = null; using (none) log.Add(\"none\");")]
    [InlineData("IDisposable d = new Scope(log, \"i\"); using (d) { } using (var r = new RefScope(log)) { log.Add(\"ref\"); } lock (log) { log.Add(\"lock\"); } checked { log.Add($\"{1 + 1}\"); } unchecked { log.Add($\"{int.MaxValue + 1}\"); }")]
    [InlineData("try { throw null!; } catch (NullReferenceException) { log.Add(\"thrown null\"); } var f = (string? x) => x ?? throw new ArgumentNullException(nameof(x)); try { f(null); } catch (ArgumentException e) { log.Add(e is ArgumentNullException { ParamName: \"x\" } ? \"param\" : \"no\"); }")]
    [InlineData("string Kind(int n) => n switch { 1 => \"one\", _ => throw new ArgumentOutOfRangeException(nameof(n)) }; try { log.Add(Kind(1)); log.Add(Kind(2)); } catch (ArgumentOutOfRangeException) { log.Add(\"range\"); } try { _ = 3 switch { 1 => 2 }; } catch (Exception e) { log.Add(e.GetType().Name); }")]
    [InlineData("int F() { try { throw new Own(\"a\", 1); } catch (Own) { return 1; } finally { log.Add(\"f\"); } } log.Add($\"{F()}\"); try { try { log.Add(\"x\"); } finally { throw new Own(\"late\", 4); } } catch (Own e) { log.Add(e.Message); }")]
    public void Exceptions_and_clean_up(string code) => Oracle.Agrees(
        "var log = new List<string>();" + code + "foreach (var line in log) rig.Control(line);",
        """
        private sealed class Own(string message, int code) : Exception(message) { public int Code => code; }
        private sealed class Scope(List<string> log, string name) : IDisposable { public void Dispose() => log.Add("end_" + name); }
        private readonly ref struct RefScope(List<string> log) { public void Dispose() => log.Add("ref_end"); }
        """);
}
