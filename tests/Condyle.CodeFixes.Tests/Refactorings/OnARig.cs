using System.Text.RegularExpressions;
using Condyle.Analyzers.Tests.Recipes;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Model;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeRefactorings;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Tests.Refactorings;

/// <summary>Refactorings that say a rig otherwise, on a whole rig with a caret marked as <c>$$</c>: what comes of it makes the same rig, read and run.</summary>
internal static partial class OnARig
{
    /// <summary>What the body is after the one change that is offered.</summary>
    public static async Task<string> Changed<T>(string body, Func<string, (string Path, string Source)[]> filesOf, string title)
        where T : CodeRefactoringProvider, new()
    {
        var (files, span) = Unmarked(filesOf(body));
        using var workspace = new AdhocWorkspace();
        var action = Assert.Single(await Offered.ActionsOf<T>(Offered.Open(workspace, files), span));
        Assert.Equal(title, action.Title);
        var text = await Offered.TextAfter(action, files[0].Path);
        (string, string)[] after = [(files[0].Path, text), .. files[1..]];
        Assert.Equal(LinesOf(files), LinesOf(after));
        await FrontEnds.Agree(after);
        var around = filesOf("\u0001")[0].Source.Split('\u0001');
        return text[around[0].Length..^around[1].Length].Trim('\n');
    }

    public static async Task OffersNothing<T>((string Path, string Source)[] marked, bool isWhole = true)
        where T : CodeRefactoringProvider, new()
    {
        var (files, span) = Unmarked(marked);
        using var workspace = new AdhocWorkspace();
        Assert.Empty(await Offered.ActionsOf<T>(Offered.Open(workspace, files, isWhole), span));
    }

    // What is said in another order has other numbers.
    private static IEnumerable<string> LinesOf((string, string)[] files) =>
        ModelText.Lines(Written.Run(files).Model, _ => null).Select(line => Number().Replace(line, "#")).Order(StringComparer.Ordinal);

    private static ((string Path, string Source)[] Files, TextSpan Span) Unmarked((string Path, string Source)[] files)
    {
        var caret = files[0].Source.IndexOf("$$", StringComparison.Ordinal);
        files[0] = (files[0].Path, files[0].Source.Remove(caret, 2));
        return (files, new TextSpan(caret, 0));
    }

    [GeneratedRegex(@"#\d+")]
    private static partial Regex Number();
}
