namespace Condyle.Analyzers.Tests.Reading.Bounds;

/// <summary>Rigs of ten thousand of the same thing, for which whatever looks at each of them for each of them would take minutes.</summary>
public class GrowthTests
{
    [Theory]
    [InlineData("for (var i = 0; i < 10000; i++) rig.Group($\"crate_{i}\");")]
    [InlineData("var name = \"c\"; for (var i = 0; i < 10000; i++) rig.Group(name + i);")]
    [InlineData("for (var i = 0; i < 10000; i++) rig.Group($\"crate_{i}\").Accept(\"CDY1001\", because: \"the cranes look for it\");")]
    [InlineData("for (var i = 0; i < 10000; i++) { rig.Control($\"c{i}\"); Environment.SetEnvironmentVariable(\"a\", \"b\"); GC.KeepAlive((Func<int>)(() => i)); }")]
    [InlineData("var joint = rig.Skeleton(\"s\").Root(\"r\"); var root = joint; for (var i = 0; i < 10000; i++) joint = joint.Child($\"j{i}\"); var copy = rig.Chain(root, joint).Copy(\"ik\"); foreach (var j in rig.Chain(root, joint)) rig.Drive(copy.Of(j)).ByChannels(j);")]
    [InlineData("var joint = rig.Skeleton(\"s\").Root(\"r\"); var root = joint; for (var i = 0; i < 10000; i++) joint = joint.Child($\"j{i}\"); for (var i = 0; i < 10000; i++) rig.Chain(root, joint);")]
    [InlineData("var joint = rig.Skeleton(\"s\").Root(\"r\"); for (var i = 0; i < 10000; i++) { var c = rig.Control($\"c{i}\"); rig.Blend(joint).From(c, c.Switch(\"a\")).From(c, c.Switch(\"b\")); }")]
    [InlineData("if (Environment.TickCount > 3) { var all = new List<int>(); for (var i = 0; i < 10000; i++) { all.Add(i); rig.Control($\"c{all.Count}\"); } }")]
    [InlineData("var all = new int[10000]; for (var i = 0; i < 10000; i++) { if (Environment.TickCount > i) all[i] = i; foreach (var arg in Environment.GetCommandLineArgs()) rig.Control(arg); }")]
    public void Many_of_the_same(string code) => BoundedReading.Of(code).FindsTheSlip();
}
