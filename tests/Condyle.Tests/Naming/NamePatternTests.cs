using System.Text.RegularExpressions;
using Condyle.Model;
using Condyle.Naming;
using CsCheck;

namespace Condyle.Tests.Naming;

public class NamePatternTests
{
    private static readonly string[] Signs = ["a", "b", "_", ".", "[ab]", "[^a]", "[a-c_]", "()"];

    private static readonly Gen<string> Sign = Gen.Int[0, Signs.Length - 1].Select(index => Signs[index]);

    private static readonly Gen<string> Patterns = Gen.Recursive<string>((depth, inner) => depth > 3 ? Sign : Gen.OneOf(
        Sign,
        Gen.Select(inner, inner, (one, other) => one + other),
        Gen.Select(inner, inner, (one, other) => $"({one}|{other})"),
        Gen.Select(inner, Gen.Int[0, 2], (one, often) => $"({one}){"*+?"[often]}")));

    private static readonly Gen<string> Names = Gen.String[Gen.Char["abc_"], 0, 8];

    /// <summary>The regular expressions of .NET, as an oracle: what they mean is the same, how they match is not.</summary>
    [Fact]
    public void A_pattern_means_what_a_regular_expression_of_its_signs_means() => Gen.Select(Patterns, Names).Sample(
        (pattern, name) =>
        {
            Assert.Equal(Regex.IsMatch(name, $@"\A(?:{pattern})\z", RegexOptions.NonBacktracking), NamePattern.Parse(pattern).Fits(name) == Answer.Yes);
            Assert.Equal(Regex.IsMatch(name, pattern, RegexOptions.NonBacktracking), NamePattern.Parse(pattern).IsIn(name));
        },
        seed: "0N0XIzNsQ0O2", iter: 1000);

    /// <summary>Whatever stands where nothing is known: if a pattern has such a name, the part can't be told to be wrong.</summary>
    [Fact]
    public void A_name_known_in_parts_is_only_refused_where_no_name_with_those_parts_fits() => Gen.Select(Patterns, Names, Names, Names).Sample(
        (pattern, before, hidden, after) =>
        {
            var open = NamePattern.Parse(pattern).Fits((Text)before + Text.Open + after);
            Assert.NotEqual(Answer.Yes, open);
            if (NamePattern.Parse(pattern).Fits(before + hidden + after) == Answer.Yes)
                Assert.Equal(Answer.Open, open);
        },
        seed: "0N0XIzNsQ0O2", iter: 1000);

    [Theory]
    [InlineData("[a-z]+_group", "", "_grp", Answer.No)]
    [InlineData("[a-z]+_group", "Arm", "", Answer.No)]
    [InlineData("[a-z]+_group", "arm", "", Answer.Open)]
    [InlineData("[a-z]+_group", "arm", "_group", Answer.Open)]
    public void A_name_known_in_parts_has_an_answer(string pattern, string before, string after, object answer) =>
        Assert.Equal(answer, NamePattern.Parse(pattern).Fits((Text)before + Text.Open + after));

    [Theory]
    [InlineData("(", "its end lacks the ')' of a part")]
    [InlineData("a)", "')' at character 2 has no '(' before it")]
    [InlineData("[a", "its end lacks the ']' of a set")]
    [InlineData("[]", "the set before character 3 has nothing in it")]
    [InlineData("[z-a]", "'z-a' before character 5 has nothing in it")]
    [InlineData("+a", "'+' at character 1 has nothing before it to repeat")]
    [InlineData("^a", "'^' at character 1 means nothing here")]
    [InlineData("a{2}", "'{' at character 2 means nothing here")]
    [InlineData("a\\d", "'\\' at character 2 means nothing here")]
    public void What_is_no_pattern_is_told_where_and_why(string text, string message) =>
        Assert.Equal(message, Assert.Throws<FormatException>(() => NamePattern.Parse(text)).Message);

    [Fact]
    public void The_longest_patterns_and_names_take_no_time_to_speak_of()
    {
        var pattern = string.Concat(Enumerable.Repeat("(a*)*", NamePattern.Longest / 5));
        var clock = System.Diagnostics.Stopwatch.StartNew();
        Assert.Equal(Answer.No, NamePattern.Parse(pattern).Fits(new string('a', 9999) + "b"));
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5), $"It took {clock.Elapsed}.");
    }

    [Fact]
    public void A_pattern_of_more_than_is_allowed_is_refused() => Assert.Throws<FormatException>(() => NamePattern.Parse(new string('a', NamePattern.Longest + 1)));
}
