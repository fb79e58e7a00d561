namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Spots beside nodes and mirrored controls as they are read.</summary>
public class PlacementSentenceTests
{
    [Fact]
    public void Spots_and_mirrored_controls_are_read_as_they_run() => Oracle.Agrees(
        """
        var ankle = rig.Skeleton("s").Root("ankle", at: new Vector3(0.1f, 0.1f, 0));
        Control? foot = null;
        foreach (var side in Side.Both)
        {
            var control = rig.Control($"foot_{side}");
            foot = foot is { } left ? control.Mirroring(left) : control.PlacedAt(rig.Spot(ankle, by: -Vector3.UnitY / 10));
            rig.Group($"heel_{side}_group").Under(control).PlacedAt(rig.Spot(ankle, new Vector3(0, -0.1f, side.Sign * Back)));
        }
        """,
        "private const float Back = -0.05f;");

    [Fact]
    public async Task An_open_offset_or_counterpart_is_no_finding() => Assert.Equal(
        [],
        await Findings.In(
            """
            var (ankle, other) = (rig.Skeleton("s").Root("ankle"), rig.Control("foot_left"));
            rig.Group("heel_group").PlacedAt(rig.Spot(ankle, Vector3.UnitY * Environment.TickCount));
            if (Environment.TickCount > 3)
                other = rig.Control("hand_left");
            rig.Control("foot_right").Mirroring(other);
            """));
}
