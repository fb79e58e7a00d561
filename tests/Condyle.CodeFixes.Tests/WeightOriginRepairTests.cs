using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.CodeFixes.Tests;

/// <summary>CDY2001 where a weight isn't written in the call that takes it: the inverse is taken in the row of a table, or in the call of a helper, that serves only what is wrong.</summary>
public class WeightOriginRepairTests
{
    private const string Arm = "var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left);\n";

    private const string Blend = Arm + "var blend = rig.Blend(arm);\n";

    private const string Give = "private static void Give(ChainBlend blend, Copy copy, Weight weight) => blend.From(copy, weight);";

    [Theory]
    [InlineData("var copies = new[] { ik, fk };\nvar weights = new[] { {0}, amount };\nfor (var i = 0; i < weights.Length; i++) blend.From(copies[i], weights[i]);")]
    [InlineData("var copies = new[] { fk, ik };\nWeight[] weights = [amount, {0}];\nfor (var i = 0; i < copies.Length; ++i) { var weight = weights[i]; blend = blend.From(copies[i], weight); }")]
    [InlineData("var weights = new Weight[] { {0}, amount };\nfor (var i = 0; i < 2; i++) blend.From(i == 0 ? ik : fk, weights[i]);")]
    [InlineData("var copies = new List<Copy> { ik, fk };\nvar weights = new List<Weight>();\nweights.Add({0});\nweights.Add(amount);\nfor (var i = 0; i < copies.Count; i++) blend.From(copies[i], weights[i]);")]
    [InlineData("var rows = new[] { (Copy: ik, Share: {0}), (Copy: fk, Share: amount) };\nfor (var i = 0; i < rows.Length; i++) blend.From(rows[i].Copy, rows[i].Share);")]
    public Task In_a_list_that_a_counter_goes_through(string loop) => Repaired(loop);

    [Theory]
    [InlineData("var weights = new Dictionary<string, Weight> { [\"fk\"] = amount, [\"ik\"] = {0} };\nforeach (var (tag, copy) in new[] { (\"ik\", ik), (\"fk\", fk) }) blend.From(copy, weights[tag]);")]
    [InlineData("var weights = new Dictionary<Copy, Weight> { { ik, {0} }, { fk, amount } };\nforeach (var copy in new[] { ik, fk }) blend.From(copy, weights[copy]);")]
    [InlineData("const string first = \"ik\";\nDictionary<string, Weight> weights = new();\nweights.Add(\"ik\", {0});\nweights[\"fk\"] = amount;\nvar copies = new Dictionary<string, Copy> { [first] = ik, [\"fk\"] = fk };\nforeach (var (tag, copy) in copies) blend.From(copy, weights[tag]);")]
    [InlineData("var tags = new[] { \"ik\", \"fk\" };\nvar copies = new[] { ik, fk };\nvar weights = new Dictionary<string, Weight> { [\"ik\"] = {0}, [\"fk\"] = amount };\nfor (var i = 0; i < tags.Length; i++) blend.From(copies[i], weights[tags[i]]);")]
    [InlineData("var weights = new Dictionary<Copy, Weight> { [ik] = {0}, [fk] = amount };\nforeach (var (copy, weight) in weights) blend.From(copy, weight);")]
    [InlineData("var weights = new Dictionary<Copy, Weight> { [ik] = {0}, [fk] = amount };\nforeach (var pair in weights) blend.From(pair.Key, pair.Value);")]
    public Task In_a_dictionary_by_the_keys_of_a_loop(string loop) => Repaired(loop);

    [Theory]
    [InlineData("Give(blend, ik, {0});\nGive(blend, fk, amount);", Give)]
    [InlineData("Give(weight: {0}, copy: ik, blend: blend);\nGive(blend, fk, amount);", Give)]
    [InlineData("blend.Give(ik, {0}).Give(fk, amount);", "")]
    [InlineData("Pass(blend, ik, {0});\nPass(blend, fk, amount);", Give + "\nprivate static void Pass(ChainBlend blend, Copy copy, Weight weight) { var given = weight; Give(blend, copy, given); }")]
    [InlineData("void Mix(Copy copy, Weight weight) { blend.From(copy, weight); }\nMix(ik, {0});\nMix(fk, amount);", "")]
    [InlineData("foreach (var (copy, weight) in new[] { (ik, {0}), (fk, amount) }) Give(blend, copy, weight);", Give)]
    [InlineData("Give(blend, ik, {0});\nGive(blend, fk, amount);", "private static void Give(ChainBlend blend, Copy copy, Weight weight) { if (copy != default) blend.From(copy, weight); }")]
    [InlineData("Mix(blend, ik, fk, {0}, amount);", Rows + "\nprivate static void Unused(ChainBlend blend, Copy ik, Copy fk, Weight toIk, Weight toFk) => Mix(blend, ik, fk, toIk, toFk);")] // who knows with what
    public Task In_the_call_of_a_helper(string calls, string members) => Repaired(calls, members);

    [Fact]
    public Task In_the_row_that_a_helper_puts_together() => Repairs.Give(
        new RigSnippet(Blend + "Mix(blend, ik, fk, amount, amount);", Rows.Replace(", toIk)", ", {|CDY2001:toIk|})")),
        new RigSnippet(Blend + "Mix(blend, ik, fk, amount, amount);", Rows.Replace(", toIk)", ", toIk.Inverse)")));

    [Fact]
    public Task One_of_two_inverses_is_taken_away_in_the_call_of_a_helper() => Repairs.Give(
        new RigSnippet(Blend + "Give(blend, ik, amount.Inverse);\nGive(blend, fk, {|CDY2001:amount.Inverse|});", Give),
        new RigSnippet(Blend + "Give(blend, ik, amount.Inverse);\nGive(blend, fk, amount);", Give));

    [Fact]
    public Task What_a_helper_takes_the_inverse_of_is_turned_round() => Repairs.Give(
        new RigSnippet(Blend + "Give(blend, ik, {|CDY2001:amount.Inverse|});\nGive(blend, fk, amount.Inverse);", Give.Replace("copy, weight)", "copy, weight.Inverse)")),
        new RigSnippet(Blend + "Give(blend, ik, amount);\nGive(blend, fk, amount.Inverse);", Give.Replace("copy, weight)", "copy, weight.Inverse)")));

    [Fact]
    public Task Of_two_callers_the_one_that_is_wrong_is_repaired() => Repairs.Give(
        new RigSnippet(TwoArms("{|CDY2001:left.Amount|}"), Mix),
        new RigSnippet(TwoArms("left.Amount.Inverse"), Mix));

    [Fact]
    public Task A_helper_in_another_file_is_left_alone_and_its_caller_repaired() => Repairs.Give(
        new RigSnippet(Blend + "blend.Give(ik, {|CDY2001:amount|});\nblend.Give(fk, amount);", More: Extension),
        new RigSnippet(Blend + "blend.Give(ik, amount.Inverse);\nblend.Give(fk, amount);", More: Extension));

    [Theory]
    [InlineData("var weights = new[] { amount, amount };\nfor (var i = 0; i < arm.Count - 1; i++) blend.{0}(i == 0 ? ik : fk, weights[i]){1};")] // as many as the arm has bones
    [InlineData("var weights = new[] { amount, amount };\nfor (var i = 0; i < weights.Length; i++) { blend.{0}(i == 0 ? ik : fk, weights[i]){1}; rig.Label($\"label_{i}\", \"IK\").ShownBy(weights[i]); }")]
    [InlineData("var weights = new[] { amount, amount };\nrig.Label(\"label\", \"IK\").ShownBy(weights[0]);\nfor (var i = 0; i < weights.Length; i++) blend.{0}(i == 0 ? ik : fk, weights[i]){1};")]
    [InlineData("var weights = new[] { amount, amount };\nweights[0] = amount;\nfor (var i = 0; i < weights.Length; i++) blend.{0}(i == 0 ? ik : fk, weights[i]){1};")]
    [InlineData("Switch[] weights = [amount, amount];\nfor (var i = 0; i < weights.Length; i++) blend.{0}(i == 0 ? ik : fk, weights[i]){1};")]
    [InlineData("var weights = new[] { amount, amount };\nfor (var i = 0; i < weights.Length; i++) try { blend.{0}(i == 0 ? ik : fk, weights[i]){1}; } catch (InvalidOperationException) { }")]
    [InlineData("var weights = new[] { amount, amount };\ntry { for (var i = 0; i < weights.Length; i++) blend.{0}(i == 0 ? ik : fk, weights[i]){1}; } catch (InvalidOperationException) { }")] // which may end it early
    [InlineData("var weights = new[] { amount, amount };\nfor (var i = 1; i >= 0; i--) blend.{0}(i == 0 ? ik : fk, weights[i]){1};")]
    [InlineData("var weights = new Dictionary<string, Weight> { [\"both\"] = amount };\nforeach (var copy in new[] { ik, fk }) blend.{0}(copy, weights[\"both\"]){1};")]
    [InlineData("var weights = new Dictionary<Copy, Weight> { [ik] = amount, [fk] = amount };\nrig.Label(\"label\", \"IK\").ShownBy(weights[ik]);\nforeach (var copy in new[] { ik, fk }) blend.{0}(copy, weights[copy]){1};")]
    [InlineData("var weights = new Dictionary<Copy, Switch> { [ik] = amount, [fk] = amount };\nforeach (var copy in new[] { ik, fk }) blend.{0}(copy, weights[copy]){1};")]
    [InlineData("var weights = new Dictionary<string, Weight>(StringComparer.OrdinalIgnoreCase) { [\"ik\"] = amount, [\"FK\"] = amount };\nforeach (var (tag, copy) in new[] { (\"ik\", ik), (\"fk\", fk) }) blend.{0}(copy, weights[tag]){1};")]
    [InlineData("var alias = ik;\nvar weights = new Dictionary<Copy, Weight> { [ik] = amount, [alias] = amount, [fk] = amount };\nforeach (var copy in new[] { ik, fk }) blend.{0}(copy, weights[copy]){1};")] // what the first row says is lost
    public Task A_table_whose_cell_is_not_known_or_serves_others_is_left_alone(string loop) => Repairs.AreNotOffered(new RigSnippet(Blend + Marked(loop)));

    // As many turns as the rows that are written make two of three rows look like those of another blend.
    [Theory]
    [InlineData("var weights = new Dictionary<Control, Weight> { [first] = amount, [first] = amount, [last] = amount };")]
    [InlineData("var weights = new Dictionary<Control, Weight> { [first] = amount, [last] = amount };\nweights[first] = amount;")]
    public Task A_dictionary_that_has_one_key_twice_is_left_alone(string table) => Repairs.AreNotOffered(new RigSnippet(
        "foreach (var name in new[] { \"quay\", \"crane\", \"boat\" })\n{\nvar hook = rig.Control($\"hook_{name}\");\nvar (first, last, sling, amount) = (rig.Control($\"first_{name}\"), rig.Control($\"last_{name}\"), rig.Group($\"sling_{name}_group\"), hook.Switch(\"hold\"));\nvar blend = rig.Blend(sling);\n"
        + table + "\nforeach (var (source, weight) in weights) blend.{|CDY2001:From(source, weight)|};\n}"));

    [Theory]
    [InlineData("blend.{0}(copy, weight){1}; rig.Label(\"label\", \"IK\").ShownBy(weight);", "Weight", "Give(rig, blend, ik, amount);\nGive(rig, blend, fk, amount);")] // the label goes by it, too
    [InlineData("blend.{0}(copy, weight){1};", "Switch", "Give(rig, blend, ik, amount);\nGive(rig, blend, fk, amount);")] // takes no inverse
    [InlineData("blend.{0}(copy, weight){1};", "Weight", "foreach (var copy in new[] { ik, fk }) Give(rig, blend, copy, amount);")] // one call for both
    [InlineData("blend.{0}(copy, weight){1};", "Weight", "Action<RigDraft, ChainBlend, Copy, Weight> give = Give;\ngive(rig, blend, ik, amount);\ngive(rig, blend, fk, amount);")]
    [InlineData("blend.{0}(copy, weight){1};", "ref Weight", "Weight toBoth = amount;\nGive(rig, blend, ik, ref toBoth);\nGive(rig, blend, fk, ref toBoth);")]
    [InlineData("blend.{0}(copy, weight){1};", "in Weight", "Weight toBoth = amount;\nGive(rig, blend, ik, in toBoth);\nGive(rig, blend, fk, in toBoth);")]
    public Task A_helper_that_asks_its_weight_for_more_or_is_called_otherwise_is_left_alone(string body, string type, string calls) => Repairs.AreNotOffered(new RigSnippet(
        Blend + calls, $"private static void Give(RigDraft rig, ChainBlend blend, Copy copy, {type} weight) {{ {Marked(body)} }}"));

    [Fact]
    public Task A_helper_whose_other_overload_would_be_called_is_left_alone() => Repairs.AreNotOffered(new RigSnippet(
        Blend + "Give(blend, ik, amount);\nGive(blend, fk, amount);",
        "private static void Give(ChainBlend blend, Copy copy, object weight) { }\nprivate static void Give(ChainBlend blend, Copy copy, Switch weight) => blend.{|CDY2001:From(copy, weight)|};"));

    // Were the turns counted, the left arm's weight would be taken for that of the first row.
    [Fact]
    public Task A_row_that_a_helper_passes_over_is_not_taken_for_the_next() => Repairs.AreNotOffered(new RigSnippet(
        """
        foreach (var side in Side.Both)
        {
            var (arm, ik, fk, hand, amount) = Stage.Arm(rig, side);
            var (floor, blend) = (arm.Copy("floor"), rig.Blend(arm).From(fk, amount));
            var toIk = side == Side.Left ? amount : amount.Inverse;
            foreach (var (copy, weight) in new (Copy, Weight)[] { (floor, amount), (ik, toIk) })
                Give(blend, floor, copy, weight);
        }
        """,
        "private static void Give(ChainBlend blend, Copy floor, Copy copy, Weight weight) { if (copy != floor) blend.{|CDY2001:From(copy, weight)|}; }"));

    private const string Rows = "private static void Mix(ChainBlend blend, Copy ik, Copy fk, Weight toIk, Weight toFk) { foreach (var (copy, weight) in new[] { (ik, toIk), (fk, toFk) }) blend.From(copy, weight); }";

    private const string Extension = "internal static class Mixing { public static ChainBlend Give(this ChainBlend blend, Copy copy, Weight weight) => blend.From(copy, weight); }";

    private const string Mix = "private static void Mix(RigDraft rig, Limb limb, Weight toIk) => rig.Blend(limb.Chain).From(limb.Ik, toIk).From(limb.Fk, limb.Amount);";

    private static string TwoArms(string left) => $"var left = Stage.Arm(rig, Side.Left);\nvar right = Stage.Arm(rig, Side.Right);\nMix(rig, left, {left});\nMix(rig, right, right.Amount.Inverse);";

    private static Task Repaired(string code, string members = "") => Repairs.Give(
        new RigSnippet(Blend + code.Replace("{0}", "{|CDY2001:amount|}"), members, members.Length == 0 ? Extension : ""),
        new RigSnippet(Blend + code.Replace("{0}", "amount.Inverse"), members, members.Length == 0 ? Extension : ""));

    private static string Marked(string code) => code.Replace("{0}", "{|CDY2001:From").Replace("{1}", "|}");
}
