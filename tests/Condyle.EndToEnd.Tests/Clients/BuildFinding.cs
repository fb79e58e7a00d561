using System.Globalization;
using System.Text.RegularExpressions;

namespace Condyle.EndToEnd.Tests.Clients;

/// <summary>A finding as a build prints it: <c>file(line,column): warning CDY1001: …</c>.</summary>
internal sealed partial record BuildFinding(string File, int Line, int Column, string Rule)
{
    /// <summary>What a build prints of our rules; it repeats its warnings at the end, so each counts once.</summary>
    public static IReadOnlyList<BuildFinding> In(string output) =>
        [.. Printed().Matches(output)
            .Select(match => new BuildFinding(
                Path.GetFileName(match.Groups["file"].Value),
                int.Parse(match.Groups["line"].Value, CultureInfo.InvariantCulture),
                int.Parse(match.Groups["column"].Value, CultureInfo.InvariantCulture),
                match.Groups["rule"].Value))
            .Distinct()
            .OrderBy(finding => finding.File, StringComparer.Ordinal)
            .ThenBy(finding => finding.Line)];

    [GeneratedRegex(@"^\s*(?<file>[^(\n]+)\((?<line>\d+),(?<column>\d+)\): (?:warning|error|info) (?<rule>CDY\d{4}):", RegexOptions.Multiline)]
    private static partial Regex Printed();
}
