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
    [InlineData("var (a, b) = (new List<int>(), new List<int>()); var n = Environment.TickCount; for (var i = 0; i < n; i++) for (var j = 0; j < n; j++) for (var k = 0; k < n; k++) for (var l = 0; l < n; l++) for (var m = 0; m < n; m++) for (var o = 0; o < n; o++) { var some = i > j ? a : b; some.Add(m); if (some.Count > o) b = some; foreach (var one in some) a = some; }")]
    [InlineData("IEnumerable<string> Some() { foreach (var word in Environment.GetCommandLineArgs()) { if (word.Length > 3) yield return word; else yield return \"b\"; } } var all = new List<string>(); foreach (var a in Environment.GetCommandLineArgs()) foreach (var b in Environment.GetCommandLineArgs()) foreach (var c in Some().ToList()) all.Add(a + b + c);")]
    public void Many_of_the_same(string code) => BoundedReading.Of(code).FindsTheSlip();
}
