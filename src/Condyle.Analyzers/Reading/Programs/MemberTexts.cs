using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>What each member of a file says that may hold code, and where. In two versions of a file that declare the same, the members are the same, one by one.</summary>
internal sealed class MemberTexts
{
    private readonly IReadOnlyList<(int Start, string Text)> members;

    // Some hold for what comes after them, such as whether references may be null.
    private readonly string directives;

    private MemberTexts(IReadOnlyList<(int Start, string Text)> members, string directives) => (this.members, this.directives) = (members, directives);

    public static MemberTexts Of(SyntaxTree tree)
    {
        var (root, text) = (tree.GetRoot(), tree.GetText());
        var members = root.DescendantNodes(node => node is CompilationUnitSyntax or BaseNamespaceDeclarationSyntax or BaseTypeDeclarationSyntax)
            .Where(node => node is MemberDeclarationSyntax and not (BaseNamespaceDeclarationSyntax or BaseTypeDeclarationSyntax))
            .Select(member => (member.SpanStart, text.ToString(member.Span)));
        return new([.. members], string.Join("\n", DirectivesIn(root)));
    }

    /// <summary>The members that a later version has word for word: where each stood, and by how far it has moved.</summary>
    public IReadOnlyList<(TextSpan Was, int By)> KeptIn(MemberTexts later) => members.Count != later.members.Count || directives != later.directives
        ? []
        : [.. members.Zip(later.members, (was, now) => (was, now)).Where(pair => pair.was.Text == pair.now.Text).Select(pair => (new TextSpan(pair.was.Start, pair.was.Text.Length), pair.now.Start - pair.was.Start))];

    private static IEnumerable<string> DirectivesIn(SyntaxNode root)
    {
        for (var directive = root.ContainsDirectives ? root.GetFirstDirective() : null; directive is not null; directive = directive.GetNextDirective())
            yield return directive.ToString();
    }
}
