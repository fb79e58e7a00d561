using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Analyzers.Tests.Reading.HalfTyped;

/// <summary>Half-typed code that an analyzer once failed on.</summary>
public class FailedOnceTests
{
    [Theory]
    [InlineData(50, 600)]
    [InlineData(282, 546)]
    [InlineData(326, 511)]
    [InlineData(225, 284)]
    [InlineData(389, 148)]
    [InlineData(178, 442)]
    [InlineData(268, 240)]
    [InlineData(232, 161)]
    public Task Two_swapped_tokens_of_an_arm(int first, int second)
    {
        var tokens = CSharpSyntaxTree.ParseText(Oracle.Rig(ArmSample.Body, ArmSample.Members)).GetRoot().DescendantTokens().Select(token => token.ToFullString()).ToList();
        (tokens[first], tokens[second]) = (tokens[second], tokens[first]);

        return IsSurvived(string.Concat(tokens));
    }

    [Theory]
    [InlineData("rig.Control(Name);", "private const string Name $\"= {Arm}_root\";")]
    [InlineData("var sum = new Size(1) * new Size(2); rig.Control($\"{sum}\");", "private sealed record Size(int Value) { public AddSize operator *(Size a, Size b) => new(a.Value * b.Value); }")]
    [InlineData("var less = -new Size(1); int whole = (int)new Size(2); rig.Control($\"{less}{whole}\");", "private sealed record Size(int Value) { public Size operator -(Size a) => a; public explicit operator int(Size a) => a.Value; }")]
    [InlineData("int[,] rows = { { 1, 2 }, { 3, } 4 }; for (var r = 0; r < rows.GetLength(0); r++) for (var c = 0; c < rows.GetLength(1); c++) rig.Control($\"{rows[r, c]}\");", "")]
    [InlineData("var text = \"ab\"; rig.Control($\"{text[]}{text[0, 1]}\");", "")]
    [InlineData("rig.Control(Name(2)); rig.Control(Name(1));", "private static string Name(int number) { if (number == 1) { { return \"last\"; } return \"nr\" + number; } }")]
    [InlineData("goto there; rig.Control(\"never\");", "")]
    [InlineData("var joint = new Joint[2]; joint[) ] = rig.Skeleton(\"s\").Root(\"a\"); rig.Group(\"x_group\");", "")]
    [InlineData("int[] flags = [1, 2]; for (var i = 0; i < 2; i++) { if ((flags[i] & Flagi== 0) continue; rig.Group(\"x_group\"); }", "private const int Flag = 1;")]
    [InlineData("string[] names = [\"a\"]; Group g = rig.Group(names[0] + \"_group\")).Under(rig.Group(\"x_group\"));", "")]
    [InlineData("string[] names = [\"a\"]; Control c; c = .rigControl(names[0] + \"_fk\").Under(rig.Group(\"x_group\"));", "")]
    public Task A_rig(string body, string members) => IsSurvived(Oracle.Rig(body, members));

    [Fact]
    public Task Code_on_which_the_compiler_itself_fails() => IsSurvived(Oracle.Usings +
        """
        public sealed class TestRig : IRigDefinition
        {
            public void Define(RigDraft rig)
            {
                var body Handrig.Control("body");
                $$= (rig, body, Side.Left);
            }
            private static void Hand(RigDraft rig, Control body, Side side) => rig.Control($"hand_{side}").Under(body).Switch("fk");        var body = rig.Control("body");
                foreach (var side in Side.Both)
                    Hand(rig, body, side);
        }
        """);

    [Fact]
    public Task Files_that_have_no_path_of_their_own() => IsSurvived(
        ("", Oracle.Rig("rig.Group(\"crate\"); Helper.Say(rig); while (true) { }")),
        ("", Oracle.Usings + "static class Helper { public static void Say(RigDraft rig) { } }"));

    private static Task IsSurvived(string source) => IsSurvived(("rig.cs", source));

    private static async Task IsSurvived(params (string Path, string Source)[] files)
    {
        var wrong = await Survival.WhatIsWrongWith(CompiledCode.Compile(files));

        Assert.True(wrong is null, wrong);
    }
}
