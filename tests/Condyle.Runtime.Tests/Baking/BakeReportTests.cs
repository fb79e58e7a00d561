using System.Text.Json;
using System.Xml.Linq;

namespace Condyle.Runtime.Tests.Baking;

public sealed class BakeReportTests
{
    private static readonly BakeReport Report = Bake.Run(CargoArm.Compiled(), CargoArm.Lift(), new BakeSettings { Keys = new BakeTolerance(0.001, 0.1) }).Report;

    [Fact]
    public void The_text_says_what_holds_and_has_a_line_for_every_joint()
    {
        var text = BakeReports.Text(Report);
        Assert.StartsWith("lift_crate: 61 frames at 30/s, 2 s\n  on frames, baked motion is live motion within ", text, StringComparison.Ordinal);
        Assert.Matches(@"\d+ keys instead of \d+, within 1\.0 mm and 0\.10° of the live motion", text);
        Assert.All(Report.Joints, joint => Assert.Matches($@"(?m)^  {joint.Joint} +\S+ mm +\S+° +\S+ mm +\S+°$", text));
    }

    [Fact]
    public void The_json_has_every_joint_and_no_curves()
    {
        var json = JsonDocument.Parse(BakeReports.Json(Report)).RootElement;
        Assert.Equal(Report.Joints.Count, json.GetProperty("joints").GetArrayLength());
        Assert.True(json.GetProperty("holds").GetBoolean());
        Assert.True(json.GetProperty("betweenBound").GetProperty("holds").GetBoolean());
        Assert.True(json.GetProperty("joints")[0].TryGetProperty("aroundChanges", out _));
        Assert.False(json.TryGetProperty("curves", out _));
    }

    [Fact]
    public void The_page_stands_alone_and_has_a_curve_for_every_joint()
    {
        var page = BakeReports.Page("Cargo <Arm>", [Report]);
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
        Assert.DoesNotContain("http", page, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", page, StringComparison.Ordinal);
        Assert.Contains("Cargo &lt;Arm&gt;", page, StringComparison.Ordinal);
        var body = XDocument.Parse(page[page.IndexOf("<body>", StringComparison.Ordinal)..].Replace("</html>", "", StringComparison.Ordinal)).Root!;
        Assert.Equal(Report.Joints.Count + 2, body.Descendants("polyline").Count());
        var worst = body.Descendants("polyline").First().Attribute("points")!.Value.Split(' ').Min(point => double.Parse(point.Split(',')[1], System.Globalization.CultureInfo.InvariantCulture));
        Assert.InRange(worst, 14, 190); // the largest deviation stands high in the picture
    }

    [Fact]
    public void A_clip_in_which_nothing_moves_has_a_page_too() =>
        Assert.DoesNotContain("NaN", BakeReports.Page("still", [Bake.Run(CargoArm.Compiled(), new Clip("still", 1).Move("waist", at: 0)).Report]), StringComparison.Ordinal);
}
