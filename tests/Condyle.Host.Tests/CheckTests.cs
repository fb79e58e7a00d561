using System.Text.Json;

namespace Condyle.Host.Tests;

public sealed class CheckTests
{
    [Fact]
    public void A_clean_rig_has_no_findings_and_exit_code_0()
    {
        using var program = new TestProgram(typeof(Hoist));
        Assert.Equal(0, program.Run("check"));
        Assert.Equal("Hoist: no findings", program.Output.Trim());
        Assert.Equal("", program.Error);
    }

    [Fact]
    public void An_error_is_told_with_its_place_and_exit_code_1()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(StiffHoist));
        Assert.Equal(1, program.Run("check"));
        Assert.Contains("StiffHoist: 1 error in 1 finding", program.Output, StringComparison.Ordinal);
        Assert.Matches(@"Rigs\.cs\(\d+\): error CDY3001: The deform joint 'hook' follows 'drop' by matrix", program.Output);
    }

    [Fact]
    public void A_chosen_rig_is_the_only_one_that_is_checked()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(StiffHoist));
        Assert.Equal(0, program.Run("check", "--rig", "hoist"));
        Assert.DoesNotContain("StiffHoist", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finding_that_is_no_error_leaves_exit_code_0()
    {
        using var program = new TestProgram(typeof(Untidy));
        Assert.Equal(0, program.Run("check"));
        Assert.Contains("CDY1001", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rig_that_is_a_struct_is_a_rig_too()
    {
        using var program = new TestProgram(typeof(Cleat));
        Assert.Equal(0, program.Run("check"));
        Assert.Contains("Cleat: 1 finding", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_loop_is_told_with_its_path()
    {
        using var program = new TestProgram(typeof(Knot));
        Assert.Equal(1, program.Run("check"));
        Assert.Contains("CDY3003", program.Output, StringComparison.Ordinal);
        Assert.Matches("'rope'.*'bight'.*'rope'|'bight'.*'rope'.*'bight'", program.Output);
    }

    [Fact]
    public void A_rig_that_cant_be_compiled_is_told_with_its_place()
    {
        using var program = new TestProgram(typeof(Namesakes));
        Assert.Equal(1, program.Run("check"));
        Assert.Matches(@"The rig 'Namesakes' can't be compiled: There is more than one control named 'hook'.* \(.*Rigs\.cs:\d+\)", program.Output);
    }

    [Fact]
    public void A_definition_that_waits_is_told_so()
    {
        using var program = new TestProgram(typeof(Tide), typeof(Hoist));
        Assert.Equal(1, program.Run("check"));
        Assert.Contains("The rig 'Tide' can't be built: Define of 'Tide' is async, and a rig is built when Define returns.", program.Output, StringComparison.Ordinal);
        Assert.Contains("Hoist: no findings", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Code_that_fails_is_told_in_one_line_with_its_place()
    {
        using var program = new TestProgram(typeof(Leak));
        Assert.Equal(1, program.Run("check"));
        Assert.Matches(@"The rig 'Leak' can't be built: FormatException: the tide table has no Tuesday \(.*Rigs\.cs:\d+\)", program.Output);
        Assert.DoesNotContain("   at ", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_runtime_wraps_is_unwrapped()
    {
        using var program = new TestProgram(typeof(Sprung));
        Assert.Equal(1, program.Run("check"));
        Assert.Matches(@"The rig 'Sprung' can't be built: FormatException: The input string 'three' was not in a correct format\. \(.*Rigs\.cs:\d+\)", program.Output);
    }

    [Fact]
    public void Json_has_every_rig_and_finding()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(StiffHoist), typeof(Leak));
        Assert.Equal(1, program.Run("check", "--json"));
        var rigs = JsonDocument.Parse(program.Output).RootElement.GetProperty("rigs");
        Assert.Equal(["Hoist", "Leak", "StiffHoist"], rigs.EnumerateArray().Select(rig => rig.GetProperty("rig").GetString()));
        Assert.True(rigs[0].GetProperty("isGood").GetBoolean());
        Assert.Contains("Tuesday", rigs[1].GetProperty("failure").GetString(), StringComparison.Ordinal);
        var finding = rigs[2].GetProperty("findings")[0];
        Assert.Equal("CDY3001", finding.GetProperty("rule").GetString());
        Assert.Equal("error", finding.GetProperty("severity").GetString());
        Assert.EndsWith("Rigs.cs", finding.GetProperty("file").GetString(), StringComparison.Ordinal);
        Assert.True(finding.GetProperty("line").GetInt32() > 0);
    }
}
