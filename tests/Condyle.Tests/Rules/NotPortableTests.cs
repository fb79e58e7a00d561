using System.Numerics;

namespace Condyle.Tests.Rules;

/// <summary>CDY1004: all that is wrong with a name is told at once.</summary>
public class NotPortableTests
{
    [Fact]
    public void Everything_that_is_wrong_with_a_name_is_told_in_one_message() => Assert.Equal(
        $"'2 {new string('a', 60)}.b' has 64 characters where 63 are allowed, has a space and '.' in it and begins with a digit: elsewhere it can be refused or changed, and a clip no longer finds the node. Give it another name.",
        Message(rig => rig.Control($"2 {new string('a', 60)}.b")));

    [Fact]
    public void One_thing_is_told_as_a_sentence() => Assert.Equal(
        "'look around' has a space in it: elsewhere it can be refused or changed, and a clip no longer finds the node. Name it 'look_around'.",
        Message(rig => rig.Control("look around")));

    [Fact]
    public void A_dial_is_told_of_as_a_setting() => Assert.Equal(
        "'nod.down' has '.' in it: elsewhere it can be refused or changed, and a clip no longer finds the setting. Name it 'nod_down'.",
        Message(rig => rig.Control("head").Dial("nod.down", 0, 1)));

    [Fact]
    public void A_portable_form_that_another_dial_has_is_not_proposed() => Assert.EndsWith(
        "Give it another name.",
        Message(rig =>
        {
            var head = rig.Control("head");
            head.Dial("nod.down", 0, 1);
            head.Dial("nod_down", 0, 1);
        }),
        StringComparison.Ordinal);

    [Fact]
    public void A_name_as_long_as_may_be_is_left_alone() => Assert.Empty(Messages(rig => rig.Control(new string('a', 63)).Dial(new string('b', 63), 0, 1)));

    [Theory]
    [InlineData("control")]
    [InlineData("group")]
    [InlineData("switch")]
    [InlineData("dial")]
    public void No_name_at_all_is_refused_wherever_it_is_given(string what) => Assert.Contains("was given no name", Assert.Throws<ArgumentException>(() => Messages(rig => _ = what switch
    {
        "control" => (object)rig.Control(""),
        "group" => rig.Group(""),
        "switch" => rig.Control("hand").Switch(""),
        _ => rig.Control("hand").Dial("", 0, 1),
    })).Message, StringComparison.Ordinal);

    private static string Message(Action<RigDraft> say) => Assert.Single(Messages(say));

    private static List<string> Messages(Action<RigDraft> say) => [.. Rig.Examine(new Said(say)).Findings.Where(finding => finding.Rule == "CDY1004").Select(finding => finding.Message)];

    private sealed class Said(Action<RigDraft> say) : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            rig.Skeleton("docker").Root("pelvis", at: Vector3.UnitY);
            say(rig);
        }
    }
}
