using System.Text.Json;

namespace Condyle.Benchmarks.Measuring;

/// <summary>What was measured, and its goal.</summary>
/// <param name="Name">What was measured.</param>
/// <param name="Ratio">How it compares with what it is measured against, or the figure itself.</param>
/// <param name="Goal">The largest that is good; none for a figure that is only told.</param>
/// <param name="Figures">The figures behind the ratio, for people.</param>
internal sealed record Result(string Name, double Ratio, double? Goal, string Figures)
{
    private static readonly JsonSerializerOptions Naming = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    public const string Heading = "| measured | ratio | goal | holds | figures |\n|---|---|---|---|---|";

    public bool? Holds => Goal is { } goal ? Ratio <= goal : null;

    public string AsJson() => JsonSerializer.Serialize(new { Name, Ratio = Math.Round(Ratio, 3), Goal, Holds }, Naming);

    public string AsRow() => FormattableString.Invariant($"| {Name} | {Ratio:0.00} | {(Goal is { } goal ? FormattableString.Invariant($"{goal:0.###}") : "")} | {Holds switch { true => "yes", false => "**no**", null => "" }} | {Figures} |");
}
