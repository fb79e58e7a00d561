namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Async functions that truly wait: what comes after is done once somebody waits for it, and may not be done before.</summary>
public class OpenTaskTests
{
    private const string Members = """
        private static async Task Fill(RigDraft rig, string name) { await Task.Delay(1); rig.Group(name); }
        private static async Task<List<string>> Names() { var names = new List<string>(); await Task.Yield(); names.Add("x_group"); await Task.Delay(1); names.Add("y_group"); return names; }
        private static async Task Fail() { await Task.Yield(); throw new InvalidOperationException(); }
        private static string Name = "a";
        """;

    [Theory]
    [InlineData("Fill(rig, \"a_group\").Wait(); Fill(rig, \"b_group\").GetAwaiter().GetResult(); Task.Run(() => Fill(rig, \"c_group\")).Wait(); Task.Run(async () => { await Fill(rig, \"d_group\"); }).GetAwaiter().GetResult();")]
    [InlineData("foreach (var name in Names().Result) rig.Group(name); foreach (var name in Task.Run(Names).Result) rig.Group(name);")]
    [InlineData("async Task Deep() { await Fill(rig, \"a_group\").ConfigureAwait(false); rig.Group(\"b_group\"); await Passed(\"c_group\"); rig.Group(\"d_group\"); } Deep().Wait(); Task Passed(string name) => Fill(rig, name);")]
    [InlineData("async Task Quick() { await Task.CompletedTask; Name = \"b_group\"; } var task = Quick(); rig.Group(Name); task.Wait();")]
    [InlineData("var name = \"a_group\"; try { Fail().GetAwaiter().GetResult(); } catch (InvalidOperationException) { name = \"b_group\"; } rig.Group(name);")]
    [InlineData("var name = \"a_group\"; var task = Fail(); try { task.Wait(); } catch (AggregateException) { name = \"b_group\"; } rig.Group(name);")]
    public void What_is_waited_for_is_known(string code) => Oracle.AgreesOn(("rig.cs", "using System.Threading.Tasks;\n" + Oracle.Rig(code, Members)));

    [Theory]
    [InlineData("async Task Later() { await Task.Delay(1); Name = \"b_group\"; } var task = Later(); rig.Group(Name);")]
    [InlineData("async void Later() { await Task.Yield(); Name = \"b_group\"; } Later(); rig.Group(Name);")]
    [InlineData("async Task Later() { await Fill(rig, \"x_group\"); Name = \"b_group\"; } async Task Outer() { await Later(); Name = \"c_group\"; } _ = Outer(); rig.Group(Name);")]
    [InlineData("var name = \"a\"; async Task Later() { await Task.Delay(1); rig.Group(name); } var task = Later(); name = \"b_group\"; task.Wait();")]
    [InlineData("var name = \"a\"; var task = Task.Run(() => name = \"b_group\"); rig.Group(name);")]
    [InlineData("var name = \"a\"; var task = Task.Run(() => rig.Group(name)); name = \"b_group\"; task.Wait();")]
    [InlineData("var names = new List<string> { \"a\" }; var task = Task.Run(() => { names[0] = \"b_group\"; }); rig.Group(names[0]);")]
    [InlineData("Func<Task> later = async () => { await Task.Delay(1); Name = \"b_group\"; }; later(); rig.Group(Name);")]
    [InlineData("foreach (var turn in new[] { 1, 2 }) _ = Later(turn); rig.Group(Name); async Task Later(int turn) { if (turn > 1) await Task.Delay(turn); Name = \"b_group\"; }")]
    [InlineData("var task = Fail(); if (task.IsFaulted) throw new InvalidOperationException(); if (!task.IsCompleted) throw new InvalidOperationException(); rig.Group(\"x_group\");")]
    public async Task What_nobody_waited_for_may_not_have_happened(string code) =>
        Assert.Empty(await Findings.InFiles(("rig.cs", "using System.Threading.Tasks;\n" + Oracle.Rig(code, Members))));
}
