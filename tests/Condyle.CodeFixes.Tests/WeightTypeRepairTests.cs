using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.CodeFixes.Tests;

/// <summary>CDY2001: a switch, its inverse and what a team makes of them are of different types. What takes a weight must bear the one in place of the other, or it isn't repaired there.</summary>
public class WeightTypeRepairTests
{
    private const string Arm = "var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left);\n";

    private const string Blend = Arm + "var blend = rig.Blend(arm);\n";

    private const string OwnTypes = """
        namespace Own { internal readonly record struct Weight(Switch Of) { public static implicit operator Weight(Switch of) => new(of); public static implicit operator Condyle.Weight(Weight weight) => weight.Of; } }
        internal readonly record struct Slider(Switch Amount) { public Weight Inverse => Amount; public static implicit operator Weight(Slider slider) => slider.Amount; }
        internal readonly record struct Dimmer(Switch Amount) { public static implicit operator Weight(Dimmer dimmer) => dimmer.Amount; }
        """;

    [Theory]
    [InlineData("foreach (var (copy, given) in new[] { (ik, amount), (fk, amount) }) { Switch weight = given; blend.{|CDY2001:From(copy, weight)|}; }")]
    [InlineData("var weights = new[] { amount, amount };\nfor (var i = 0; i < 2; i++) { Switch weight = weights[i]; blend.{|CDY2001:From(i == 0 ? ik : fk, weight)|}; }")]
    [InlineData("Own.Weight[] weights = [amount, amount];\nfor (var i = 0; i < weights.Length; i++) blend.{|CDY2001:From(i == 0 ? ik : fk, weights[i])|};")]
    [InlineData("Weight[] weights = new[] { amount.Inverse, amount };\nforeach (var weight in weights) rig.Blend(arm).From(ik, weight).{|CDY2001:From(fk, amount.Inverse)|};")] // two switches would be left
    [InlineData("var rows = new[] { (amount, ik), (amount, fk) };\nforeach (var row in rows) blend.{|CDY2001:From(row.Item2, row.amount)|};")] // the column is called after its code
    [InlineData("blend.{|CDY2001:From(ik, new Slider(amount))|}.From(fk, amount);")] // its inverse is another
    [InlineData("blend.{|CDY2001:From(ik, new Dimmer(amount))|}.From(fk, amount);")] // has no inverse
    [InlineData("var dimmer = new Dimmer(amount);\nblend.{|CDY2001:From(ik, 1)|}.From(fk, dimmer);")]
    public Task What_is_taken_as_what_it_is_is_left_alone(string code) => Repairs.AreNotOffered(new RigSnippet(Blend + code, More: OwnTypes));

    [Theory]
    [InlineData("private static void Give(ChainBlend blend, Copy copy, Switch weight) => blend.{|CDY2001:From(copy, weight)|};")]
    [InlineData("private static void Give<T>(ChainBlend blend, Copy copy, T weight) { }\nprivate static void Give(ChainBlend blend, Copy copy, Switch weight) => blend.{|CDY2001:From(copy, weight)|};")]
    public Task A_table_from_which_no_helper_or_another_would_be_called_is_left_alone(string helpers) =>
        Repairs.AreNotOffered(new RigSnippet(Blend + "foreach (var (copy, weight) in new[] { (ik, amount), (fk, amount) }) Give(blend, copy, weight);", helpers));

    [Fact]
    public Task A_helper_that_asks_for_a_place_to_read_is_left_alone() => Repairs.AreNotOffered(new RigSnippet(
        Blend + "Weight toBoth = amount;\nGive(blend, ik, toBoth);\nGive(blend, fk, toBoth);",
        "#pragma warning disable CS9192\nprivate static void Give(ChainBlend blend, Copy copy, ref readonly Weight weight) => blend.{|CDY2001:From(copy, weight)|};"));

    [Fact]
    public Task A_helper_that_is_told_how_its_weight_is_written_is_left_alone() => Repairs.AreNotOffered(new RigSnippet(
        Blend + "Give(rig, blend, ik, {|CDY2001:amount|});\nGive(rig, blend, fk, amount);",
        "private static void Give(RigDraft rig, ChainBlend blend, Copy copy, Weight weight, [System.Runtime.CompilerServices.CallerArgumentExpression(\"weight\")] string name = \"\")\n{\n    blend.From(copy, weight);\n    rig.Control(name);\n}"));

    // The same call runs what others made of the helper, which want it otherwise.
    [Theory]
    [InlineData("internal interface IMixing; internal class Mixer : IMixing { public virtual", "internal sealed class Crossing : Mixer { public override", "Mixer")]
    [InlineData("internal sealed class Mixer : IMixing; internal interface IMixing {", "internal sealed class Crossing : IMixing { public", "IMixing")]
    public Task A_helper_that_others_override_is_left_alone(string helper, string other, string type) => Repairs.AreNotOffered(new RigSnippet(
        $$"""
        var left = Stage.Arm(rig, Side.Left);
        var right = Stage.Arm(rig, Side.Right);
        {{type}}[] mixers = [new Mixer(), new Crossing()];
        mixers[0].Mix(rig, left, left.Amount.Inverse);
        foreach (var mixer in mixers)
            mixer.Mix(rig, right, right.Amount);
        """,
        $"{helper} void Mix(RigDraft rig, Limb limb, Weight toIk) => rig.Blend(limb.Chain).{{|CDY2001:From(limb.Ik, toIk)|}}.From(limb.Fk, limb.Amount); }}\n{other} void Mix(RigDraft rig, Limb limb, Weight toIk) => rig.Blend(limb.Chain).From(limb.Ik, toIk.Inverse).From(limb.Fk, limb.Amount); }}"));

    [Theory]
    [InlineData("ref var tag = ref tags[0];\ntag = \"crane\";")]
    [InlineData("((tags[0], _), _) = ((\"crane\", 0), 0);")]
    public Task A_table_whose_keys_are_set_meanwhile_is_left_alone(string set) => Repairs.AreNotOffered(new RigSnippet(
        Blend + "var tags = new[] { \"ik\", \"fk\" };\nvar weights = new Dictionary<string, Weight> { [\"ik\"] = amount, [\"fk\"] = amount, [\"crane\"] = amount };\n" + set
        + "\nfor (var i = 0; i < tags.Length; i++) blend.{|CDY2001:From(i == 0 ? ik : fk, weights[tags[i]])|};"));

    [Fact]
    public Task A_table_of_which_a_part_is_set_meanwhile_is_left_alone() => Repairs.AreNotOffered(new RigSnippet(Blend + """
        var rows = new[] { (Tag: "ik", Copy: ik), (Tag: "fk", Copy: fk) };
        rows[0].Tag = "crane";
        var weights = new Dictionary<string, Weight> { ["ik"] = amount, ["fk"] = amount, ["crane"] = amount };
        for (var i = 0; i < rows.Length; i++)
            blend.{|CDY2001:From(rows[i].Copy, weights[rows[i].Tag])|};
        """));

    [Theory]
    [InlineData("foreach (var (copy, given) in new[] { (ik, {0}), (fk, amount) }) { Weight weight = given; blend.From(copy, weight); }")]
    [InlineData("var rows = new[] { (Share: {0}, Copy: ik), (Share: amount, Copy: fk) };\nforeach (var row in rows) blend.From(row.Copy, row.Share);")]
    [InlineData("var rows = new[] { ({0}, ik), (amount, fk) };\nforeach (var row in rows) blend.From(row.Item2, row.Item1);")]
    public Task A_weight_stands_beside_a_switch(string code) => Repairs.Give(Blend + code.Replace("{0}", "{|CDY2001:amount|}"), Blend + code.Replace("{0}", "amount.Inverse"));

    // A property that is only called so is nobody's inverse.
    [Fact]
    public Task What_is_called_inverse_is_inverted_as_any_weight() => Repairs.Give(
        new RigSnippet(Blend + "var slider = new Slider(amount);\nblend.From(ik, {|CDY2001:slider.Inverse|}).From(fk, amount);", More: OwnTypes),
        new RigSnippet(Blend + "var slider = new Slider(amount);\nblend.From(ik, slider.Inverse.Inverse).From(fk, amount);", More: OwnTypes));

    [Fact]
    public Task Of_two_columns_of_switches_the_first_is_repaired() => Repairs.Give(
        Columns("new[]", "{|CDY2001:left.Amount|}, left.Amount", "right.Amount.Inverse, right.Amount", leftSwitch: "fk"),
        Columns("new[]", "left.Amount.Inverse, left.Amount", "right.Amount.Inverse, right.Amount", leftSwitch: "fk"));

    // Were one of each repaired, no row would be of a type that takes the other.
    [Theory]
    [InlineData("left.Amount, left.Amount", "right.Amount.Inverse, right.Amount", "From(ik, toIk).{|CDY2001:From(fk, toFk)|}")]
    [InlineData("left.Amount, left.Amount.Inverse", "right.Amount, right.Amount", "{|CDY2001:From(ik, toIk)|}.From(fk, toFk)")]
    public Task Of_two_columns_of_switches_the_second_is_left_alone(string left, string right, string sentence) => Repairs.AreNotOffered(new RigSnippet(Columns("new[]", left, right, sentence)));

    [Fact]
    public Task Of_two_columns_of_weights_either_is_repaired() => Repairs.Give(
        Columns("new (Chain, Copy, Copy, Weight, Weight)[]", "left.Amount, {|CDY2001:left.Amount|}", "{|CDY2001:right.Amount|}, right.Amount"),
        Columns("new (Chain, Copy, Copy, Weight, Weight)[]", "left.Amount, left.Amount.Inverse", "right.Amount.Inverse, right.Amount"),
        steps: 2);

    private static string Columns(string table, string left, string right, string sentence = "From(ik, toIk).From(fk, toFk)", string leftSwitch = "ik") => $$"""
        var left = Stage.Arm(rig, Side.Left, "{{leftSwitch}}");
        var right = Stage.Arm(rig, Side.Right, "fk");
        foreach (var (chain, ik, fk, toIk, toFk) in {{table}} { (left.Chain, left.Ik, left.Fk, {{left}}), (right.Chain, right.Ik, right.Fk, {{right}}) })
            rig.Blend(chain).{{sentence}};
        """;
}
