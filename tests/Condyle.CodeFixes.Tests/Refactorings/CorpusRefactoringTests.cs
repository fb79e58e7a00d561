using Condyle.Analyzers.Tests.Corpus;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.CodeFixes.Refactorings;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Tests.Refactorings;

/// <summary>At every statement of every clean rig: what is offered gives code that compiles and in which no rule finds anything.</summary>
public class CorpusRefactoringTests
{
    public static TheoryData<string> Clean => CorpusCase.In("Clean");

    [Theory]
    [MemberData(nameof(Clean))]
    public async Task A_clean_rig_stays_clean(string name)
    {
        var given = new CorpusCase("Clean", name);
        var statements = (await CSharpSyntaxTree.ParseText(given.Source).GetRootAsync()).DescendantNodes().OfType<StatementSyntax>().Where(statement => statement.Parent is BlockSyntax);
        using var workspace = new AdhocWorkspace();
        var document = Offered.Open(workspace, given.Files);
        foreach (var caret in statements.Select(statement => new TextSpan(statement.SpanStart, 0)).ToList())
        {
            foreach (var action in (await Offered.ActionsOf<LabelPairRefactoring>(document, caret)).Concat(await Offered.ActionsOf<OtherSideRefactoring>(document, caret)))
                await StaysClean(given, action);
        }
    }

    private static async Task StaysClean(CorpusCase given, CodeAction action)
    {
        var text = await Offered.TextAfter(action, given.Files[0].Path);
        Assert.NotEqual(given.Source, text);
        (string, string)[] after = [(given.Files[0].Path, text), given.Files[1]];
        Assert.DoesNotContain(CompiledCode.Compile(after).GetDiagnostics(), problem => problem.Severity == DiagnosticSeverity.Error);
        Assert.Empty(await FrontEnds.Read(after));
    }
}
