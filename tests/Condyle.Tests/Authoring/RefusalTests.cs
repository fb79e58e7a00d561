namespace Condyle.Tests.Authoring;

/// <summary>What can't be meant is refused where it is said, by name.</summary>
public class RefusalTests
{
    private readonly RigWithEverything all = new();

    private RigDraft Rig => all.Rig;

    private Control Hand => (Control)all.Of(typeof(Control))!;

    private Chain Leg => (Chain)all.Of(typeof(Chain))!;

    private Joint Knee => (Joint)all.Of(typeof(Joint))!;

    [Fact]
    public void A_name_that_is_empty_is_refused()
    {
        Says("An option of choice 'grip' on 'world' was given no name", () => Hand.Choice("grip", ["crate", ""]));
        Says("A choice on 'world' was given no name", () => Hand.Choice("", ["crate"]));
        Says("An option of a space was given no name", () => Rig.Space(Hand).In("", Knee));
        Says("A switch on 'world' was given no name", () => Hand.Switch(""));
        Says("A dial on 'world' was given no name", () => Hand.Dial("", 0, 1));
        Says("The layer of 'world' was given no name", () => Hand.OnLayer(""));
        Says("A label was given no name", () => Rig.Label("", "IK"));
        Says("Label 'ik_label' shows no text", () => Rig.Label("ik_label", ""));
        Says("A copy was given no name, so its joints would be called as those of the skeleton are", () => Leg.Copy(""));
        Says("A joint was given no name", () => Rig.Skeleton("crane").Root(""));
        Says("A joint was given no name", () => Knee.Child(""));
    }

    [Fact]
    public void What_is_no_member_of_its_list_is_refused()
    {
        Says("17 is no axis. Give X, Y or Z.", () => Hand.LimitTurn((Axis)17, 0, 1));
        Says("-1 is no axis", () => Rig.Response(Hand.Switch("fk")).OntoMove(Knee, (Axis)(-1)));
        Says("9 is no role of a joint. Give Deform, Twist or Helper.", () => Knee.Child("prop", (JointRole)9));
        Says("9 is no role of a joint", () => Leg.Without((JointRole)9));
        Says("4 is no unit of a dial", () => Hand.Dial("curl", 0, 1, unit: (DialUnit)4));
        Says("6 is no shape of a control", () => Hand.Shaped((ControlShape)6));
        Says("8 is no tint", () => Hand.Tinted((Tint)8));
        Says("512 names a channel that no node has", () => Hand.Lock((Channels)512));
        Says("-1 names a channel that no node has", () => Hand.Unlock((Channels)(-1)));
    }

    [Fact]
    public void Every_member_of_a_list_is_taken()
    {
        Assert.All(Enum.GetValues<Axis>(), axis => Hand.LimitTurn(axis, 0, 1));
        Assert.All(Enum.GetValues<JointRole>(), role => Knee.Child($"as_{role}", role));
        Assert.All(Enum.GetValues<DialUnit>(), unit => Hand.Dial($"in_{unit}", 0, 1, unit: unit));
        Assert.All(Enum.GetValues<ControlShape>(), shape => Hand.Shaped(shape));
        Assert.All(Enum.GetValues<Tint>(), tint => Hand.Tinted(tint));
        Assert.All(Enum.GetValues<Channels>(), channels => Hand.Lock(channels));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    public void An_acceptance_gives_its_reason(string reason)
    {
        Says("CDY1001 is accepted without a reason", () => Rig.Group("parts").Accept("CDY1001", reason));
        Says("CDY5001 is accepted without a reason", () => Hand.Accept("CDY5001", reason));
        Says("CDY3001 is accepted without a reason", () => Knee.Accept("CDY3001", reason));
        Says("CDY3001 is accepted without a reason", () => Rig.Drive(Knee).Accept("CDY3001", reason));
        Says("CDY2001 is accepted without a reason", () => Rig.Blend(Leg).Accept("CDY2001", reason));
        Says("CDY2001 is accepted without a reason", () => Rig.Blend(Knee).Accept("CDY2001", reason));
    }

    [Fact]
    public void A_chain_keeps_a_joint()
    {
        Says("The chain from 'hip_left' to 'ankle_left' has Deform joints only, so nothing is left of it", () => Leg.Without(JointRole.Deform));
        Assert.Equal(3, Leg.Without(JointRole.Twist).Count);
    }

    [Fact]
    public void Null_is_refused_where_it_would_mean_nothing()
    {
        Says("A twist was given null for its joints", () => Rig.Twist((JointSet)null!));
        Says("A twist was given null for its joints", () => Biped(new(), joints => joints with { ShoulderTwists = new JointSetPair(null!, null!) }));
        Says("A pair of joints was given null for its side", () => new JointPair(Knee, Knee)[null!]);
        Says("A pair of joint sets was given null for its side", () => new JointSetPair(new(), new())[null!]);
    }

    private Biped Biped(BipedOptions options, Func<BipedJoints, BipedJoints>? change = null)
    {
        var joints = (BipedJoints)all.Of(typeof(BipedJoints))!;
        return Rig.Biped(change?.Invoke(joints) ?? joints, options);
    }

    private static void Says(string what, Func<object> say) => Assert.StartsWith(what, Assert.ThrowsAny<ArgumentException>(say).Message, StringComparison.Ordinal);
}
