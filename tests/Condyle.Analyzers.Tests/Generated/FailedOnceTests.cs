using Condyle.Analyzers.Tests.Reading;

namespace Condyle.Analyzers.Tests.Generated;

/// <summary>The smallest of each generated program that was once read otherwise than it runs, with the number it was generated from.</summary>
public class FailedOnceTests
{
    [Fact] // 138
    public void A_type_whose_initialisers_throw_throws_the_same_at_each_use() => Oracle.Agrees(
        """
        try { rig.Control($"{Failing.Value}"); } catch (InvalidOperationException) { rig.Control("itself"); } catch (TypeInitializationException e) { rig.Control(e.InnerException is InvalidOperationException ? "wrapped" : "?"); }
        try { rig.Control($"{Failing.Other}"); } catch (Exception e) { rig.Control(e is TypeInitializationException ? "again" : "?"); }
        """,
        """
        private static class Failing { public static int Value { get; set; } = Fail(); public static int Other = 3; private static int Fail() => throw new InvalidOperationException("failed"); }
        """);

    [Fact] // 182
    public void A_handle_that_no_rig_gave_out_has_no_text() => Oracle.Agrees(
        """
        try { rig.Control($"{default(Control)}"); } catch (InvalidOperationException) { rig.Control("unmade"); }
        rig.Control($"{default(Control) == (new Control[1])[0]}{new List<Control> { default }.Contains(default)}");
        """);
}
