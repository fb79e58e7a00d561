using Condyle.Host.Reporting;
using Condyle.Rules;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>Prints a rule's page, or the list of rules.</summary>
internal static class ExplainCommand
{
    public static int Run(Surroundings surroundings, string? id, bool json)
    {
        if (id is null && json)
        {
            JsonReport.Write(surroundings.Output, new { rules = RuleBook.All.Select(rule => new { rule.Id, rule.Severity, rule.Title }) });
            return ExitCode.Ok;
        }

        if (id is null)
        {
            foreach (var rule in RuleBook.All)
                surroundings.Output.WriteLine($"{rule.Id}  {rule.Severity.ToString().ToLowerInvariant(),-7}  {rule.Title}");
            return ExitCode.Ok;
        }

        var found = RuleBook.Find(id) ?? throw new BadInputException("explain", "there is no such rule", $"The rules: {string.Join(", ", RuleBook.All.Select(rule => rule.Id))}", id);
        if (json)
            JsonReport.Write(surroundings.Output, new { found.Id, found.Severity, found.Title, found.Page });
        else
            surroundings.Output.WriteLine(found.Page.TrimEnd());
        return ExitCode.Ok;
    }
}
