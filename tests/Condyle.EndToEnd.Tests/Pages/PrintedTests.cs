using Condyle.EndToEnd.Tests.Clients;
using Condyle.EndToEnd.Tests.Snags;
using Condyle.Tests.Shared;

namespace Condyle.EndToEnd.Tests.Pages;

/// <summary>What a page shows as printed by a command of the repository is what that command prints.</summary>
public sealed class PrintedTests : IDisposable
{
    private const string Running = "dotnet run --project ";

    private readonly TemporaryFolder folder = new();

    public static TheoryData<string> Runs => [.. Shown.Where(shown => shown.Command.StartsWith(Running, StringComparison.Ordinal)).Select(shown => shown.Command)];

    private static IEnumerable<(string Page, string Command, string Text)> Shown => Page.All(Repository.Root)
        .SelectMany(page => page.Blocks.Where(block => block.Notes.ContainsKey("prints")).Select(block => (page.Path, block.Notes["prints"], block.Text)));

    [Theory]
    [MemberData(nameof(Runs))]
    public void A_page_shows_what_its_command_prints(string command)
    {
        var words = command[Running.Length..].Split(' ');
        ShownOutput.IsIn(Run(words[0], words[1..]), Shown.Single(shown => shown.Command == command).Text);
    }

    [Fact]
    public void Whatever_a_page_shows_as_printed_is_compared()
    {
        Assert.All(Shown, shown => Assert.True(shown.Command == BuildTests.Command || shown.Command.StartsWith(Running, StringComparison.Ordinal), $"No test runs '{shown.Command}', of which {shown.Page} shows what it prints."));
        Assert.All(
            Page.All(Repository.Root).Where(page => page.Path != TutorialTests.PagePath).SelectMany(page => page.Blocks).Where(block => block.Kind == "text"),
            block => Assert.True(block.Notes.ContainsKey("prints"), $"{block.Place} doesn't say which command prints it."));
    }

    public void Dispose() => folder.Dispose();

    /// <summary>Its program, as it was built with these tests; files that are named in the arguments are the repository's, and what it writes goes elsewhere.</summary>
    private string Run(string project, string[] arguments)
    {
        var program = Repository.PathTo(project, "bin", Repository.Configuration, "net10.0", Path.GetFileName(project) + ".dll");
        return DotNet.Run(folder.Root, [program, .. arguments.Where(argument => argument != "--").Select(Copied)]);
    }

    private string Copied(string argument)
    {
        if (!File.Exists(Repository.PathTo(argument)))
            return argument;
        folder.CopySources(Path.GetDirectoryName(Repository.PathTo(argument))!, "delivered");
        return Path.Combine("delivered", Path.GetFileName(argument));
    }
}
