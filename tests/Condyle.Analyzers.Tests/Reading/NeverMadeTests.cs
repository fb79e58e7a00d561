using Condyle.Analyzers.Tests.Reading.HalfTyped;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>A handle that was never made is what a forgotten variable holds: whatever code does with it, the reader says what the program does.</summary>
public class NeverMadeTests
{
    [Theory]
    [InlineData("Skeleton skeleton = default; GC.KeepAlive(skeleton); rig.Group(\"arm\");", "CDY1001")]
    [InlineData("GC.KeepAlive(new Chain[2]); rig.Group(\"arm\");", "CDY1001")]
    [InlineData("Chain chain = default; foreach (var joint in chain) rig.Group(joint.Name); rig.Group(\"arm\");", "CDY9001")]
    [InlineData("Chain chain = default; foreach (var joint in chain.Reverse()) rig.Group(joint.Name); rig.Group(\"arm\");", "CDY9001")]
    public async Task What_was_never_made_is_survived(string body, string expected)
    {
        var files = new[] { ("rig.cs", Oracle.Rig(body)) };
        Assert.Null(await Survival.WhatIsWrongWith(CompiledCode.Compile(files)));
        Assert.Contains(await FrontEnds.Read(files), finding => finding.Id == expected);
    }
}
