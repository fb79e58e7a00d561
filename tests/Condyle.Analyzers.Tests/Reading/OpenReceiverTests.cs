namespace Condyle.Analyzers.Tests.Reading;

/// <summary>What is changed through a value of which it isn't known which one it is, is open wherever it may be: a clean rig stays silent.</summary>
public class OpenReceiverTests
{
    private const string Config = """
        public static class Config
        {
            public static int Count => Environment.TickCount;
            public static string[] Words => Environment.GetCommandLineArgs();
        }
        """;

    private const string Limb = """
        private static (Chain Arm, Copy Ik, Copy Fk, Switch Amount) Limb(RigDraft rig)
        {
            var root = rig.Skeleton("test").Root("root");
            var tip = root.Child("mid", at: new Vector3(1, 0, 0.1f)).Child("tip", at: new Vector3(1, 0, -0.1f));
            var arm = rig.Chain(root, tip);
            return (arm, arm.Copy("ik"), arm.Copy("fk"), rig.Control("hand").Switch("fk"));
        }
        private sealed class Named { public string Name = "crate"; public List<string> Parts = []; public Named? Inner; public ChainBlend? Blend; public void Call(string name) => Name = name; }
        private readonly record struct Holder(Named Item);
        private sealed class Scope(Named of) : IDisposable { public void Dispose() => of.Name = "x_group"; }
        private interface IFinish { void Finish(); }
        private sealed class Finish(ChainBlend blend, Copy copy, Switch amount) : IFinish { public void Finish() => blend.From(copy, amount); }
        private sealed class FinishToo(ChainBlend blend, Copy copy, Switch amount) : IFinish { public void Finish() => blend.From(copy, amount); }
        """;

    [Theory]
    [InlineData("ChainBlend? blend = null; if (Config.Count > 3) blend = rig.Blend(arm).From(ik, amount.Inverse); blend?.From(fk, amount);")]
    [InlineData("ChainBlend? blend = null; if (Config.Count > 3) (blend ??= rig.Blend(arm).From(ik, amount.Inverse)).From(fk, amount);")]
    [InlineData("var blends = new List<ChainBlend> { rig.Blend(arm).From(ik, amount.Inverse) }; if (Config.Count == 3) blends.Clear(); foreach (var blend in blends) blend.From(fk, amount);")]
    [InlineData("var blends = new Dictionary<string, ChainBlend> { [\"l\"] = rig.Blend(arm).From(ik, amount.Inverse) }; if (Config.Count == 3) blends.Remove(\"l\"); blends[\"l\"].From(fk, amount);")]
    [InlineData("var (one, two) = (rig.Blend(arm).From(ik, amount.Inverse), rig.Blend(arm).From(ik, amount.Inverse)); (Config.Count > 3 ? one : two).From(fk, amount);")]
    [InlineData("var blends = new[] { rig.Blend(arm).From(ik, amount.Inverse), rig.Blend(arm).From(ik, amount.Inverse) }; blends[Config.Count % 2].From(fk, amount);")]
    [InlineData("var blend = rig.Blend(arm).From(ik, amount.Inverse); IFinish last = Config.Count > 3 ? new Finish(blend, fk, amount) : new FinishToo(blend, fk, amount); last.Finish();")]
    [InlineData("var blend = rig.Blend(arm).From(ik, amount.Inverse); Action last = Config.Count > 3 ? () => blend.From(fk, amount) : () => blend.From(fk, amount); last();")]
    [InlineData("var list = new List<ChainBlend>(); if (Config.Count > 3) list.Add(rig.Blend(arm).From(ik, 0.5f).From(fk, 0.5f)); list.Add(rig.Blend(arm).From(ik, amount.Inverse)); list[^1].From(fk, amount);")]
    [InlineData("var blends = new Dictionary<string, ChainBlend>(); blends[Config.Words[0]] = rig.Blend(arm).From(ik, amount.Inverse); blends[Config.Words[0]].From(fk, amount);")]
    [InlineData("var holder = new Named(); var other = new Named(); (Config.Count > 3 ? holder : other).Blend = rig.Blend(arm).From(ik, amount.Inverse); (holder.Blend ?? other.Blend)!.Value.From(fk, amount);")]
    public async Task A_blend_that_may_have_got_its_second_source_is_not_blamed(string code) => Assert.Equal(
        [],
        (await Findings.In("var (arm, ik, fk, amount) = Limb(rig); " + code, Limb, Config)).Where(finding => !finding.StartsWith("CDY9002", StringComparison.Ordinal)));

    [Theory]
    [InlineData("(Config.Count > 3 ? a : b).Name = \"x_group\";")]
    [InlineData("(Config.Count > 3 ? a : b).Call(\"x_group\");")]
    [InlineData("var some = new[] { a, b }; some[Config.Count % 2].Name = \"x_group\";")]
    [InlineData("var some = new List<Named> { a, b }; some.First(one => one.Name.Length < Config.Count).Name = \"x_group\";")]
    [InlineData("var some = new List<Named> { a }; if (Config.Count > 3) some.Add(b); foreach (var one in some) one.Name = \"x_group\";")]
    [InlineData("var last = b; foreach (var word in Config.Words) { last.Name = \"x_group\"; last = a; }")]
    [InlineData("ref var name = ref (Config.Count > 3 ? ref a.Name : ref b.Name); name = \"x_group\";")]
    [InlineData("Action<string> call = Config.Count > 3 ? a.Call : b.Call; call(\"x_group\");")]
    [InlineData("var list = new List<Named>(); if (Config.Count > 3) list.Add(b); list.Add(a); foreach (var one in list) one.Name = \"x_group\";")]
    [InlineData("var list = new List<Named>(); foreach (var word in Config.Words) list.Add(new Named()); list.Add(a); list.ForEach(one => one.Name = \"x_group\");")]
    [InlineData("var map = new Dictionary<string, Named>(); map[Config.Words[0]] = a; foreach (var one in map.Values) one.Name = \"x_group\";")]
    [InlineData("(Config.Count > 3 ? b : new Named()).Inner = a; b.Inner!.Name = \"x_group\";")]
    [InlineData("var some = new Named[Config.Count + 2]; some[0] = a; some[0].Name = \"x_group\";")]
    [InlineData("var some = new[] { new Holder(a), new Holder(b) }; some[Config.Count % 2].Item.Name = \"x_group\";")]
    [InlineData("var task = Config.Count > 3 ? System.Threading.Tasks.Task.FromResult(a) : System.Threading.Tasks.Task.FromResult(b); task.Result.Name = \"x_group\";")]
    [InlineData("using (Config.Count > 3 ? new Scope(a) : null) { }")]
    [InlineData("IEnumerable<int> One() { a.Name = \"x_group\"; yield return 1; } IEnumerable<int> Two() { yield return 2; } foreach (var turn in Config.Count > 3 ? One() : Two()) { }")]
    [InlineData("IEnumerable<int> One() { a.Name = \"x_group\"; yield return 1; } var all = Enumerable.Empty<int>(); if (Config.Count > 3) all = all.Concat(One()); _ = all.Sum();")]
    [InlineData("foreach (var one in new List<Named> { a, b }.Skip(Config.Count % 2)) one.Name = \"x_group\";")]
    [InlineData("foreach (var one in new List<Named> { a, b }.OrderBy(one => one == a ? Config.Words[0] : \"z\")) one.Name = \"x_group\";")]
    [InlineData("foreach (var one in (Named[])[a, .. Config.Count > 3 ? (List<Named>)[b] : []]) one.Name = \"x_group\";")]
    [InlineData("var some = new[] { a, b }; foreach (var one in some[..(Config.Count > 3 ? 1 : 2)]) one.Name = \"x_group\";")]
    [InlineData("Action? all = null; if (Config.Count > 3) all = () => b.Name = \"z_group\"; all += () => a.Name = \"y_group\"; all();")]
    [InlineData("b.Inner = new() { Inner = new() { Inner = new() { Inner = new() { Inner = a } } } }; var at = Config.Count > 3 ? b : new Named(); while (at.Inner != null) at = at.Inner; at.Name = \"x_group\";")]
    [InlineData("var late = new Lazy<Named>(() => { a.Name = \"x_group\"; return a; }); var other = new Lazy<Named>(() => b); _ = (Config.Count > 3 ? late : other).Value;")]
    public async Task A_name_that_may_have_been_changed_is_not_blamed(string code) => Assert.Equal(
        [],
        (await Findings.In("var (a, b) = (new Named(), new Named()); " + code + " rig.Group(a.Name);", Limb, Config)).Where(finding => !finding.StartsWith("CDY9002", StringComparison.Ordinal)));

    [Theory]
    [InlineData("var parts = Config.Count > 3 ? a.Parts : b.Parts; parts.Add(\"x\");")]
    [InlineData("var all = new Dictionary<string, Named> { [\"a\"] = a, [\"b\"] = b }; foreach (var word in Config.Words) all[word.StartsWith('l') ? \"a\" : \"b\"].Parts.Add(word);")]
    public async Task A_list_that_may_have_been_filled_fails_no_rig(string code) => Assert.Equal(
        [],
        (await Findings.In("var (a, b) = (new Named(), new Named()); " + code + " if (a.Parts.Count + b.Parts.Count == 0) throw new InvalidOperationException();", Limb, Config)).Where(finding => !finding.StartsWith("CDY9002", StringComparison.Ordinal)));

    [Fact]
    public async Task A_chosen_function_reaches_nothing_but_what_it_captured() => Assert.Equal(
        ["CDY2001 amount"],
        await Findings.In("var (arm, ik, fk, amount) = Limb(rig); rig.Blend(arm).From(ik, amount).From(fk, amount); Func<int, int> sized = Config.Count > 3 ? size => size * 2 : size => size; rig.Group($\"{sized(1)}_group\");", Limb, Config));

    [Fact]
    public async Task What_is_only_looked_at_stays_known() => Assert.Equal(
        ["CDY1001 \"crate\""],
        await Findings.In("var (a, b) = (new Named(), new Named { Name = \"other_group\" }); rig.Group((Config.Count > 3 ? a : b).Name + \"_group\"); rig.Group(a.Name);", Limb, Config));
}
