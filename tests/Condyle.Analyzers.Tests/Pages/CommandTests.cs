using System.CommandLine.Parsing;
using System.Text.RegularExpressions;
using Condyle.Analyzers.Tests.Skeletons;
using Condyle.Host;
using Condyle.Host.Commands;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Pages;

/// <summary>What pages tell people to type is what the program takes.</summary>
public partial class CommandTests
{
    private static readonly string[] Verbs = ["list", "tree", "compare", "check", "bake", "explain", "skeleton", "controls", "match"];

    public static TheoryData<string, string> Commands
    {
        get
        {
            var commands = new TheoryData<string, string>();
            foreach (var (place, command) in Page.All(Repository.PathTo()).SelectMany(Typed).Distinct())
                commands.Add(place, command);
            return commands;
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void What_a_page_says_to_type_is_understood(string place, string command)
    {
        var parsed = CommandTree.Build(new Surroundings("Harbour", [], TextWriter.Null, TextWriter.Null, false, ".")).Parse(Words(command));
        Assert.True(parsed.Errors.Count == 0, $"{place}: '{command}': {string.Join(' ', parsed.Errors.Select(error => error.Message))}");
    }

    [Fact]
    public void What_the_program_takes_is_told_from_what_it_does_not()
    {
        string[] typed = [.. Commands.Select(row => (string)row[1])];
        Assert.Superset(new HashSet<string> { "tree", "compare", "check", "bake", "explain", "skeleton", "controls", "match" }, typed.Select(command => Words(command).FirstOrDefault("")).ToHashSet());
        Assert.NotEmpty(CommandTree.Build(new Surroundings("Harbour", [], TextWriter.Null, TextWriter.Null, false, ".")).Parse(["tree", "--ot", "x.svg"]).Errors);
    }

    [Fact]
    public void The_page_on_CI_shows_what_the_template_runs()
    {
        var script = File.ReadAllLines(Repository.PathTo("src", "Condyle.Templates", "condyle-rig", "ci", "check.sh"))
            .Where(line => line.Length > 0 && !line.StartsWith('#') && !line.StartsWith("cd ", StringComparison.Ordinal));
        Assert.Equal(script, Page.Read(Repository.PathTo(), "docs/ci.md").Blocks[0].Text.TrimEnd().Split('\n'));
    }

    /// <summary>Runs of a rig program, in blocks and in the text, and bare verbs with something behind them in the text.</summary>
    private static IEnumerable<(string Place, string Command)> Typed(Page page)
    {
        var text = File.ReadAllText(Repository.PathTo(page.Path)).ReplaceLineEndings("\n");
        foreach (var block in page.Blocks.Where(block => block.Kind is "" or "sh"))
        {
            foreach (Match run in Runs().Matches(block.Text))
                yield return (block.Place, run.Groups["given"].Value);
        }

        foreach (Match code in Codes().Matches(Fence().Replace(text, "")))
        {
            var typed = code.Groups["code"].Value;
            if (Runs().Match(typed) is { Success: true } run)
            {
                // A verb that is only named stands without what it needs.
                if (run.Groups["given"].Value.Contains(' ', StringComparison.Ordinal))
                    yield return (page.Path, run.Groups["given"].Value);
            }
            else if (typed.Split(' ') is [var verb, _, ..] && Verbs.Contains(verb))
                yield return (page.Path, typed);
        }
    }

    private static string[] Words(string command) => [.. CommandLineParser.SplitCommandLine(command).Where(word => word != "…")];

    /// <summary>What is handed to the program; the one that takes any file as it is has arguments of its own.</summary>
    [GeneratedRegex(@"^(\$ )?dotnet run(?! --project sample-rigs/Newcomers -- (?!skeleton))(?: --project \S+)?(?: --no-build)?(?: -- (?<given>\S.*?))?(?=$|  )", RegexOptions.Multiline)]
    private static partial Regex Runs();

    [GeneratedRegex(@"`(?<code>[^`\n]+)`")]
    private static partial Regex Codes();

    [GeneratedRegex("^```.*?^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();
}
