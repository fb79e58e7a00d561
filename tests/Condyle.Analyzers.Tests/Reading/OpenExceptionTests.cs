namespace Condyle.Analyzers.Tests.Reading;

/// <summary>What an exception holds that the framework made: it isn't known, so a rig that asks for it stays silent, and what the code put there is known.</summary>
public class OpenExceptionTests
{
    private const string Loads = """
        public static class Loads
        {
            public static async System.Threading.Tasks.Task Load() { await System.Threading.Tasks.Task.CompletedTask; throw new InvalidOperationException("arm"); }
            public static async System.Threading.Tasks.Task<int> Count() { await System.Threading.Tasks.Task.CompletedTask; throw new InvalidOperationException("arm"); }
            public static async System.Threading.Tasks.ValueTask<int> Plain() { await System.Threading.Tasks.Task.CompletedTask; throw new InvalidOperationException("arm"); }
        }
        public sealed class Failed(string message, Exception inner) : Exception(message, inner) { }
        """;

    [Theory]
    [InlineData("try { Loads.Load().Wait(); } catch (AggregateException e) { rig.Group(e.InnerException!.Message + \"_group\"); }")]
    [InlineData("try { _ = Loads.Count().Result; } catch (AggregateException e) when (e.InnerException is InvalidOperationException) { }")]
    [InlineData("try { _ = Loads.Plain().Result; } catch (InvalidOperationException) { }")]
    [InlineData("try { Loads.Count().GetAwaiter().GetResult(); } catch (InvalidOperationException) { }")]
    [InlineData("try { System.Threading.Tasks.Task.Run(() => throw new FormatException()).Wait(); } catch (AggregateException e) when (e.InnerExceptions.Count == 1) { }")]
    [InlineData("try { Loads.Load().Wait(); } catch (AggregateException e) when (e.Flatten().InnerExceptions[0] is InvalidOperationException) { }")]
    [InlineData("try { Loads.Load().Wait(); } catch (AggregateException e) { if (e.GetBaseException() is not InvalidOperationException) throw new NotSupportedException(); }")]
    [InlineData("try { Loads.Load().Wait(); } catch (Exception e) when (e is AggregateException { InnerException: InvalidOperationException }) { }")]
    [InlineData("try { throw new AggregateException(new FormatException()); } catch (AggregateException e) when (e.InnerException is FormatException) { }")]
    [InlineData("try { throw new AggregateException(\"several\", new FormatException(), new NotSupportedException()); } catch (AggregateException e) when (e.InnerException is FormatException && e.InnerExceptions.Count == 2) { }")]
    [InlineData("try { throw new AggregateException(new List<Exception> { new FormatException() }); } catch (AggregateException e) when (e.InnerException is FormatException) { }")]
    [InlineData("try { try { Loads.Load().Wait(); } catch (AggregateException e) { throw new Failed(\"b\", e.InnerException!); } } catch (Failed e) when (e.InnerException is InvalidOperationException) { }")]
    [InlineData("try { int.Parse(\"z\"); } catch (FormatException e) { if (e.StackTrace is null || e.Source is null || e.Data is null || e.HResult == 0) throw new NotSupportedException(); }")]
    [InlineData("try { int.Parse(\"z\"); } catch (FormatException e) when (e.StackTrace != null && e.Data.Count == 0) { }")]
    public async Task A_rig_that_builds_has_not_failed(string code) => Assert.Equal(
        ["CDY1001 \"crate\""],
        await Findings.In(code + " rig.Group(\"crate\");", more: Loads));

    [Theory]
    [InlineData("throw new AggregateException(new FormatException(\"arm\"));", "e.InnerException!.Message")]
    [InlineData("throw new AggregateException(\"several\", new FormatException(\"arm\"), new NotSupportedException());", "e.InnerException!.Message")]
    [InlineData("throw new InvalidOperationException(\"more\", new FormatException(\"arm\"));", "e.InnerException!.Message")]
    [InlineData("throw new Failed(\"more\", new FormatException(\"arm\"));", "e.InnerException!.Message")]
    [InlineData("throw new InvalidOperationException(\"arm\");", "e.InnerException is null ? e.Message : \"x_group\"")]
    [InlineData("throw new AggregateException(\"arm\");", "e.InnerException is null ? e.Message : \"x_group\"")]
    public async Task What_the_code_put_there_is_known(string thrown, string name) => Assert.Equal(
        ["CDY1001 \"arm\""],
        await Findings.In($"try {{ {thrown} }} catch (Exception e) {{ rig.Group({name}); }}", more: Loads));

    [Fact]
    public async Task What_several_exceptions_say_together_is_not_known() => Assert.Empty(
        await Findings.In("try { throw new AggregateException(\"arm\", new FormatException(\"_group\")); } catch (AggregateException e) { rig.Group(e.Message); }"));

    [Fact]
    public async Task A_result_that_is_asked_for_throws_what_holds_the_exception() => Assert.Equal(
        ["CDY1001 \"wrapped\""],
        await Findings.In("try { _ = Loads.Count().Result; } catch (AggregateException) { rig.Group(\"wrapped\"); } catch (InvalidOperationException) { rig.Group(\"bare\"); }", more: Loads));

    private const string Several = """
        public sealed class Slip(string text) : Exception(text);
        public sealed class Many(params Exception[] all) : AggregateException("many", all);
        public static class Crew
        {
            public static async System.Threading.Tasks.Task Load(string what) { await System.Threading.Tasks.Task.Yield(); throw new InvalidOperationException(what); }
            public static async System.Threading.Tasks.Task Both() => await System.Threading.Tasks.Task.WhenAll(Load("a"), Load("b"));
            public static async System.Threading.Tasks.Task Wrapped() { await System.Threading.Tasks.Task.CompletedTask; throw new AggregateException(new Slip("in"), new AggregateException(new Slip("deep"))); }
        }
        """;

    [Theory]
    [InlineData("try { Crew.Load(\"a\").Wait(); } catch (AggregateException e) { foreach (var inner in e.InnerExceptions) rig.Group($\"{inner.Message}{inner is InvalidOperationException}{e.InnerExceptions.Count}\"); }")]
    [InlineData("try { System.Threading.Tasks.Task.WhenAll(Crew.Load(\"a\"), Crew.Load(\"b\")).Wait(); } catch (AggregateException e) { rig.Group(string.Join(\"_\", e.InnerExceptions.Select(inner => inner.Message))); }")]
    [InlineData("try { Crew.Both().Wait(); } catch (AggregateException e) { rig.Group(string.Join(\"_\", e.InnerExceptions.Select(inner => inner.Message))); }")]
    [InlineData("try { Crew.Wrapped().Wait(); } catch (AggregateException e) { rig.Group(string.Join(\"_\", e.Flatten().InnerExceptions.Select(inner => inner.Message)) + e.GetBaseException().GetType().Name); }")]
    [InlineData("var made = 0; try { throw new AggregateException(new[] { \"a\", \"b\" }.Select(text => { made++; return new Slip(text); })); } catch (AggregateException e) { rig.Group(made + e.InnerExceptions[1].Message); }")]
    [InlineData("try { throw new AggregateException(new Exception[] { new Slip(\"a\"), null! }); } catch (ArgumentException) { rig.Group(\"refused\"); } catch (AggregateException) { rig.Group(\"taken\"); }")]
    [InlineData("try { throw new AggregateException(\"several\", (Exception)null!); } catch (ArgumentNullException) { rig.Group(\"refused\"); } catch (AggregateException) { rig.Group(\"taken\"); }")]
    [InlineData("try { throw new AggregateException(); } catch (AggregateException e) { rig.Group($\"{e.InnerExceptions.Count}{e.InnerException is null}{e.GetBaseException() == e}\"); }")]
    [InlineData("try { throw new Many(new Slip(\"a\"), new Slip(\"b\")); } catch (AggregateException e) { rig.Group(e.InnerExceptions.Count + e.InnerExceptions[1].Message + e.InnerException!.Message); }")]
    [InlineData("try { try { throw new AggregateException(new Slip(\"a\"), new FormatException(\"b\")); } catch (AggregateException e) { e.Handle(inner => inner is Slip); } } catch (AggregateException e) { rig.Group(e.InnerExceptions.Count + e.InnerExceptions[0].Message); }")]
    [InlineData("string? name = null; try { ArgumentNullException.ThrowIfNull(name); } catch (ArgumentNullException e) { rig.Group(e.ParamName!); }")]
    [InlineData("var name = \"\"; try { ArgumentException.ThrowIfNullOrEmpty(name); } catch (ArgumentException e) { rig.Group(e.ParamName!); } try { ArgumentOutOfRangeException.ThrowIfLessThan(name.Length, 3); } catch (ArgumentOutOfRangeException e) { rig.Group(e.ParamName!); }")]
    [InlineData("try { throw new InvalidOperationException(\"outer\", new Slip(\"inner\")); } catch (Exception e) { rig.Group(e.GetBaseException().Message); }")]
    public void What_an_exception_stands_for_is_known(string code) => Oracle.Agrees(code, more: Several);

    [Theory]
    [InlineData("try { throw new AggregateException(Environment.GetCommandLineArgs().Select(word => new Slip(word))); } catch (AggregateException e) { if (e.InnerExceptions.Count == 0) throw new NotSupportedException(); rig.Group(e.InnerExceptions[0].Message); }")]
    [InlineData("try { Crew.Load(Environment.MachineName).Wait(); } catch (AggregateException e) { rig.Group(e.InnerExceptions[0].Message + \"_group\"); }")]
    public async Task What_it_stands_for_may_be_unknown(string code) => Assert.Empty(await Findings.In(code, more: Several));

    [Theory]
    [InlineData("try { Crew.Load(Environment.MachineName).Wait(); } catch (AggregateException e) { rig.Group(e.InnerExceptions[0].Message + \"_grp\"); }", "CDY1001 \"_grp\"")]
    [InlineData("try { Crew.Load(\"arm\").Wait(); } catch (AggregateException e) { rig.Group(e.InnerExceptions[0].Message); }", "CDY1001 \"arm\"")]
    public async Task A_slip_in_what_it_stands_for_is_found(string code, string expected) => Assert.Equal([expected], await Findings.In(code, more: Several));
}
