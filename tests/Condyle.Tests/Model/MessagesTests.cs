using Condyle.Model;

namespace Condyle.Tests.Model;

public class MessagesTests
{
    [Theory]
    [InlineData("'lamp' is free.", "'lamp' is free.")]
    [InlineData("'la\r\nmp\t\u0001' is free.", @"'la\r\nmp\t\u0001' is free.")]
    [InlineData("'lamp \U0001F4A1 \U00020BB7'", "'lamp \U0001F4A1 \U00020BB7'")]
    [InlineData("'la\U000E0041mp'", @"'la\U000e0041mp'")]
    [InlineData("'la\u202emp\u2028' is free.", @"'la\u202emp\u2028' is free.")]
    public void A_message_is_one_line_whatever_the_names_hold(string message, string shown) => Assert.Equal(shown, Messages.OnOneLine(message));

    // No attribute can hold it.
    [Fact]
    public void Half_a_character_is_written_as_its_number() => Assert.Equal(@"'la\ud83dmp\udca1", Messages.OnOneLine("'la\ud83dmp\udca1"));

    [Fact]
    public void A_finding_is_one_line() => Assert.All(Rig.Examine(new Broken()).Findings, finding => Assert.DoesNotContain('\n', finding.Message));

    [Theory]
    [InlineData("A switch needs a name. (Parameter 'name')", "A switch needs a name.")]
    [InlineData("A switch needs a name.\r\nParameter name: name", "A switch needs a name.")]
    [InlineData("A switch needs a name.", "A switch needs a name.")]
    public void A_refusal_says_nothing_of_parameters(string message, string shown) => Assert.Equal(shown, Messages.OfRefusal(message));

    private sealed class Broken : IRigDefinition
    {
        public void Define(RigDraft rig) => rig.Control("world\n");
    }
}
