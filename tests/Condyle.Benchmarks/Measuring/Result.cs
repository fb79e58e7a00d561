using System.Text.Json;

namespace Condyle.Benchmarks.Measuring;

/// <summary>A goal and what was measured.</summary>
/// <param name="Name">What was measured.</param>
/// <param name="Ratio">How it compares with what it is measured against.</param>
/// <param name="Goal">The largest ratio that is good.</param>
/// <param name="Figures">The figures behind the ratio, for people.</param>
internal sealed record Result(string Name, double Ratio, double Goal, string Figures)
{
    private static readonly JsonSerializerOptions Naming = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    public const string Heading = "| measured | ratio | goal | holds | figures |\n|---|---|---|---|---|";

    public bool Holds => Ratio <= Goal;

    public string AsJson() => JsonSerializer.Serialize(new { Name, Ratio = Math.Round(Ratio, 3), Goal, Holds }, Naming);

    public string AsRow() => FormattableString.Invariant($"| {Name} | {Ratio:0.00} | {Goal:0.##} | {(Holds ? "yes" : "**no**")} | {Figures} |");
}
