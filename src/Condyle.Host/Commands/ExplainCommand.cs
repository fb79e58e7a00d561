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
                surroundings.Tell($"{rule.Id}  {rule.Severity.ToString().ToLowerInvariant(),-7}  {rule.Title}");
            return ExitCode.Ok;
        }

        var found = RuleBook.Find(id);
        var problem = BuildProblem.Find(id);
        var (known, severity, title, page) = found is not null ? (found.Id, found.Severity, found.Title, found.Page)
            : problem is not null ? (problem.Id, problem.Severity, problem.Title, problem.Page)
            : throw new BadInputException("explain", "is no rule", $"{Nearest.To(id, RuleBook.All.Select(each => each.Id).Concat(BuildProblem.All.Select(each => each.Id)))}; explain alone lists all", id);
        if (json)
            JsonReport.Write(surroundings.Output, new { Id = known, Severity = severity, Title = title, Page = page });
        else
            surroundings.Output.WriteLine(page.TrimEnd());
        return ExitCode.Ok;
    }
}
