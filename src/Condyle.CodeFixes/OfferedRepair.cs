using System.Globalization;
using Condyle.Analyzers.Reporting;
using Microsoft.CodeAnalysis;

namespace Condyle.CodeFixes;

/// <summary>A repair of a finding, with the key by which fix-all knows the same kind of repair elsewhere.</summary>
internal sealed record OfferedRepair(PlannedRepair Repair, string Key)
{
    /// <summary>The repairs that a finding brings along. Of two of the same kind, the second has a key of its own.</summary>
    public static IReadOnlyList<OfferedRepair> Of(Diagnostic diagnostic)
    {
        var offered = new List<OfferedRepair>();
        foreach (var repair in RepairProperties.Read(diagnostic.Properties))
        {
            var alike = offered.Count(other => other.Repair.Kind == repair.Kind);
            var key = $"{diagnostic.Id}.{repair.Kind}";
            offered.Add(new OfferedRepair(repair, alike == 0 ? key : key + "." + (alike + 1).ToString(CultureInfo.InvariantCulture)));
        }

        return offered;
    }

    /// <summary>Whether fix-all was asked to repair a finding, or another of the rules at hand; a command line asks for a rule with whatever key it came upon first.</summary>
    public static bool IsAsked(Diagnostic diagnostic, string? key, IEnumerable<string> rules) =>
        key is null || !rules.Any(rule => rule != diagnostic.Id && key.StartsWith(rule + ".", StringComparison.Ordinal));

    /// <summary>Of what can be offered for a finding, the repair that fix-all makes: the kind that was asked for or, where there is none of that kind, the first.</summary>
    public static OfferedRepair? Choose(IReadOnlyList<OfferedRepair> offered, string? key) => offered.FirstOrDefault(repair => repair.Key == key) ?? offered.FirstOrDefault();
}
