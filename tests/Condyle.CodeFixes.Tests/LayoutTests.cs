namespace Condyle.CodeFixes.Tests;

/// <summary>Comments, layout and line ends stay as they were, to the letter.</summary>
public class LayoutTests
{
    private const string Before = """
        var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left);
        rig.Group( /* all that the arm needs */ {|CDY1001:"arm"|} /* left */ ); // one a side
        rig.Blend(arm)
            .From(ik, {|CDY2001:amount|} /* off */) // while FK has the arm
            .From(fk,   amount);
        #region preview
        rig
            .Drive(arm.Root)      // the shoulder
            .{|CDY3001:ByMatrix(hand)|};
        #endregion
        """;

    private const string After = """
        var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left);
        rig.Group( /* all that the arm needs */ "arm_group" /* left */ ); // one a side
        rig.Blend(arm)
            .From(ik, amount.Inverse /* off */) // while FK has the arm
            .From(fk,   amount);
        #region preview
        rig
            .Drive(arm.Root)      // the shoulder
            .ByChannels(hand);
        #endregion
        """;

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public Task A_repair_changes_no_other_character(string lineEnd) =>
        Repairs.Give(Before.ReplaceLineEndings(lineEnd), After.ReplaceLineEndings(lineEnd), steps: 3, rules: 3);
}
