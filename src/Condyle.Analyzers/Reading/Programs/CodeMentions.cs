using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>Which names the members of a file mention, and which of them build rigs. It depends on nothing but the file's text and is kept with it.</summary>
internal sealed class CodeMentions
{
    /// <summary>The name of indexers, which nobody writes.</summary>
    private const string Indexer = "this[]";

    private static readonly ConditionalWeakTable<SyntaxTree, CodeMentions> Kept = new();
    private static readonly Dictionary<string, HashSet<string>> Builders = new() { ["Rig"] = ["Build", "Examine"], ["RigProgram"] = ["Run"] };

    private readonly Dictionary<string, List<Member>> byName = [];
    private readonly List<Member> members = [], beginnings = [];
    private Dictionary<string, List<Member>>? byMention;

    private CodeMentions(SyntaxNode file)
    {
        foreach (var code in file.DescendantNodesAndSelf(node => node is CompilationUnitSyntax or BaseNamespaceDeclarationSyntax or TypeDeclarationSyntax))
        {
            switch (code)
            {
                case CompilationUnitSyntax { Members: var top } when top.Any(member => member is GlobalStatementSyntax):
                    Add(new Member([], [.. top.OfType<GlobalStatementSyntax>()]));
                    break;
                case TypeDeclarationSyntax { ParameterList: not null } type:
                    Add(new Member([type.Identifier.ValueText], type.BaseList is { } bases ? [bases] : []));
                    break;
                case MemberDeclarationSyntax and not (BaseNamespaceDeclarationSyntax or BaseTypeDeclarationSyntax or GlobalStatementSyntax or DelegateDeclarationSyntax or EnumMemberDeclarationSyntax):
                    Add(new Member([.. NamesOf((MemberDeclarationSyntax)code)], [code]));
                    break;
            }
        }
    }

    public static CodeMentions Of(SyntaxTree tree, CancellationToken cancellation) => Kept.TryGetValue(tree, out var known) ? known
        : new CodeMentions(tree.GetRoot(cancellation)) is var made ? Kept.GetValue(tree, _ => made) : made;

    /// <summary>Those that are there on their own account: they build rigs, or run before everything else.</summary>
    public IReadOnlyList<Member> Beginnings => beginnings;

    public IEnumerable<Member> NamedAny(HashSet<string> names) => Under(names, byName);

    public IEnumerable<Member> MentioningAny(HashSet<string> names) => Under(names, ByMention);

    public IReadOnlyList<Member> Mentioning(string name) => ByMention.TryGetValue(name, out var found) ? found : [];

    private Dictionary<string, List<Member>> ByMention
    {
        get
        {
            if (byMention is null)
            {
                var made = new Dictionary<string, List<Member>>();
                foreach (var member in members)
                {
                    foreach (var mentioned in member.Mentions)
                        ListOf(made, mentioned).Add(member);
                }

                byMention = made;
            }

            return byMention;
        }
    }

    // The fewer names are looked up among the more.
    private static IEnumerable<Member> Under(HashSet<string> names, Dictionary<string, List<Member>> lists) => names.Count < lists.Count
        ? names.SelectMany(name => lists.TryGetValue(name, out var found) ? found : [])
        : lists.Where(list => names.Contains(list.Key)).SelectMany(list => list.Value);

    private void Add(Member member)
    {
        members.Add(member);
        if (member.BuildsRigs || member.RunsFirst)
            beginnings.Add(member);
        foreach (var name in member.Names)
            ListOf(byName, name).Add(member);
    }

    private static List<Member> ListOf(Dictionary<string, List<Member>> lists, string name)
    {
        if (!lists.TryGetValue(name, out var list))
            lists[name] = list = [];
        return list;
    }

    // What nobody calls by a name of its own goes with its type.
    private static IEnumerable<string> NamesOf(MemberDeclarationSyntax member)
    {
        var type = (member.Parent as TypeDeclarationSyntax)?.Identifier.ValueText ?? "";
        return member switch
        {
            MethodDeclarationSyntax method => [method.Identifier.ValueText],
            PropertyDeclarationSyntax property => property.Initializer is null ? [property.Identifier.ValueText] : [property.Identifier.ValueText, type],
            EventDeclarationSyntax raised => [raised.Identifier.ValueText],
            IndexerDeclarationSyntax => [Indexer],
            BaseFieldDeclarationSyntax field => [.. field.Declaration.Variables.Select(variable => variable.Identifier.ValueText), type],
            _ => [type],
        };
    }

    /// <summary>A member, or the statements of a program.</summary>
    internal sealed class Member
    {
        public Member(IReadOnlyList<string> names, IReadOnlyList<SyntaxNode> code)
        {
            Names = names;
            Code = code;
            RunsFirst = code is [MethodDeclarationSyntax { AttributeLists: var lists }] && lists.Any(list => list.Attributes.Any(attribute => CodeMentions.NameOf(attribute.Name) is "ModuleInitializer" or "ModuleInitializerAttribute"));
            var building = new HashSet<SyntaxNode>();
            foreach (var node in code.SelectMany(part => part.DescendantNodes()))
            {
                switch (node)
                {
                    case InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Expression: var type, Name: var method } } when Builders.TryGetValue(CodeMentions.NameOf(type) ?? "", out var methods) && methods.Contains(method.Identifier.ValueText):
                        BuildsRigs = true;
                        RunsProgram |= method.Identifier.ValueText == "Run";
                        building.UnionWith([method, type, (type as MemberAccessExpressionSyntax)?.Name ?? type]);
                        break;
                    case SimpleNameSyntax name when !building.Contains(name):
                        Mentions.Add(name.Identifier.ValueText);
                        break;
                    case ElementAccessExpressionSyntax or ElementBindingExpressionSyntax:
                        Mentions.Add(Indexer);
                        break;
                }
            }
        }

        public IReadOnlyList<string> Names { get; }

        public IReadOnlyList<SyntaxNode> Code { get; }

        public HashSet<string> Mentions { get; } = [];

        /// <summary>Whether it calls what builds a rig, or what makes the main program of a project.</summary>
        public bool BuildsRigs { get; }

        /// <summary>Whether it calls the main program of a project, which makes the rigs itself.</summary>
        public bool RunsProgram { get; }

        public bool RunsFirst { get; }
    }

    /// <summary>The last name of a name or member.</summary>
    public static string? NameOf(SyntaxNode written) => written switch
    {
        SimpleNameSyntax name => name.Identifier.ValueText,
        QualifiedNameSyntax qualified => qualified.Right.Identifier.ValueText,
        AliasQualifiedNameSyntax alias => alias.Name.Identifier.ValueText,
        MemberAccessExpressionSyntax access => access.Name.Identifier.ValueText,
        MemberBindingExpressionSyntax access => access.Name.Identifier.ValueText,
        _ => null,
    };
}
