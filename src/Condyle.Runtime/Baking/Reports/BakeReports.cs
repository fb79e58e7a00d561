using Condyle.Runtime.Baking.Reports;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Runtime;

/// <summary>Reports of bakes for people and for programs.</summary>
public static class BakeReports
{
    /// <summary>A report in lines: what holds, and a table of the joints, the one that is off most first.</summary>
    /// <param name="report">The report.</param>
    /// <returns>Text that ends with a line break.</returns>
    public static string Text(BakeReport report) => ReportText.Of(report ?? throw new ArgumentNullException(nameof(report)));

    /// <summary>A report as JSON, with every joint.</summary>
    /// <param name="report">The report.</param>
    /// <returns>Text that ends with a line break.</returns>
    public static string Json(BakeReport report) => ReadableJson.Text(report ?? throw new ArgumentNullException(nameof(report)));

    /// <summary>A report as a page with curves that needs nothing else: no script, no network.</summary>
    /// <param name="rig">The rig's name.</param>
    /// <param name="reports">The reports of its clips.</param>
    /// <returns>HTML.</returns>
    public static string Page(string rig, IReadOnlyList<BakeReport> reports) =>
        ReportPage.Of(rig ?? throw new ArgumentNullException(nameof(rig)), reports ?? throw new ArgumentNullException(nameof(reports)));
}
