using Condyle.Rules;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>Prints a rule's page, or the list of rules.</summary>
internal static class ExplainCommand
{
    public static int Run(Surroundings surroundings, string? id)
    {
        if (id is null)
        {
            foreach (var rule in RuleBook.All)
                surroundings.Output.WriteLine($"{rule.Id}  {rule.Severity.ToString().ToLowerInvariant(),-7}  {rule.Title}");
            return ExitCode.Ok;
        }

        var found = RuleBook.Find(id) ?? throw new BadInputException("explain", "there is no such rule", $"The rules: {string.Join(", ", RuleBook.All.Select(rule => rule.Id))}", id);
        surroundings.Output.WriteLine(found.Page.TrimEnd());
        return ExitCode.Ok;
    }
}
