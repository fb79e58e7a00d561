using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>The members of a file by the names that they go by and mention. It depends on nothing but the file's text and is kept with it.</summary>
internal sealed class CodeMentions
{
    private static readonly ConditionalWeakTable<SyntaxTree, CodeMentions> Kept = new();

    private readonly List<MemberNames> members = [];
    private readonly List<IReadOnlyList<SyntaxNode>> code = [];
    private readonly Dictionary<string, List<int>> byName = [];
    private Dictionary<string, List<int>>? byMention;

    private CodeMentions(SyntaxNode file)
    {
        foreach (var node in file.DescendantNodesAndSelf(node => node is CompilationUnitSyntax or BaseNamespaceDeclarationSyntax or TypeDeclarationSyntax))
        {
            switch (node)
            {
                case CompilationUnitSyntax { Members: var top } when top.Any(member => member is GlobalStatementSyntax):
                    Add([], type: null, [.. top.OfType<GlobalStatementSyntax>()]);
                    break;
                case UsingDirectiveSyntax directive when MemberNames.NamesOf(directive) is { Count: > 0 } given:
                    Add(given, type: null, [node]);
                    break;
                case TypeDeclarationSyntax type when type.BaseList is not null || type.ParameterList is not null:
                    // Who makes an object makes what it derives from as well.
                    Add([type.Identifier.ValueText], type.Identifier.ValueText, type.BaseList is { } bases ? [bases] : []);
                    break;
                case MemberDeclarationSyntax member and not (BaseNamespaceDeclarationSyntax or BaseTypeDeclarationSyntax or GlobalStatementSyntax or DelegateDeclarationSyntax or EnumMemberDeclarationSyntax):
                    var around = (member.Parent as TypeDeclarationSyntax)?.Identifier.ValueText ?? "";
                    Add(MemberNames.NamesOf(member, around), around, [member]);
                    break;
            }
        }
    }

    public static CodeMentions Of(SyntaxTree tree, CancellationToken cancellation) => Kept.TryGetValue(tree, out var known) ? known
        : new CodeMentions(tree.GetRoot(cancellation)) is var made ? Kept.GetValue(tree, _ => made) : made;

    /// <summary>The members in the order of the file; they are told by their numbers in it.</summary>
    public IReadOnlyList<MemberNames> Members => members;

    public IReadOnlyList<SyntaxNode> CodeOf(int member) => code[member];

    public IEnumerable<int> NamedAny(HashSet<string> names) => Under(names, byName);

    public IEnumerable<int> MentioningAny(HashSet<string> names) => Under(names, ByMention);

    public IReadOnlyList<int> Mentioning(string name) => ByMention.TryGetValue(name, out var found) ? found : [];

    private Dictionary<string, List<int>> ByMention
    {
        get
        {
            if (byMention is null)
            {
                var made = new Dictionary<string, List<int>>();
                for (var i = 0; i < members.Count; i++)
                {
                    foreach (var mentioned in members[i].Mentions)
                        ListOf(made, mentioned).Add(i);
                }

                byMention = made;
            }

            return byMention;
        }
    }

    // The fewer names are looked up among the more.
    private static IEnumerable<int> Under(HashSet<string> names, Dictionary<string, List<int>> lists) => names.Count < lists.Count
        ? names.SelectMany(name => lists.TryGetValue(name, out var found) ? found : [])
        : lists.Where(list => names.Contains(list.Key)).SelectMany(list => list.Value);

    private void Add(IReadOnlyList<string> names, string? type, IReadOnlyList<SyntaxNode> itsCode)
    {
        foreach (var name in names)
            ListOf(byName, name).Add(members.Count);
        members.Add(new MemberNames(names, type, itsCode));
        code.Add(itsCode);
    }

    private static List<int> ListOf(Dictionary<string, List<int>> lists, string name)
    {
        if (!lists.TryGetValue(name, out var list))
            lists[name] = list = [];
        return list;
    }
}
