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

    private static async Task IsSurvived(string source)
    {
        var wrong = await Survival.WhatIsWrongWith(CompiledCode.Compile(("rig.cs", source)));

        Assert.True(wrong is null, wrong);
    }
}
