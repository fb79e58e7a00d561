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
    public Task A_rig(string body, string members) => IsSurvived(Oracle.Rig(body, members));

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
