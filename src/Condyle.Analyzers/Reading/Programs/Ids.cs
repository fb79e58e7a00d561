using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>The ids by which lowered code names types and members: documentation ids, with the file where only that file sees them.</summary>
internal static class Ids
{
    private const char OfFile = '|';

    public static string? Of(ISymbol symbol)
    {
        var id = symbol.GetDocumentationCommentId();
        for (var type = symbol as INamedTypeSymbol ?? symbol.ContainingType; id is not null && type is not null; type = type.ContainingType)
        {
            if (type.IsFileLocal)
                return id + OfFile + type.Locations[0].SourceTree?.FilePath;
        }

        return id;
    }

    public static ISymbol? Find(string id, Compilation compilation)
    {
        if (id.Length < 2 || id[1] != ':')
            return null;
        var file = id.IndexOf(OfFile);
        return file < 0
            ? DocumentationCommentId.GetFirstSymbolForDeclarationId(id, compilation)
            : DocumentationCommentId.GetSymbolsForDeclarationId(id.Substring(0, file), compilation).FirstOrDefault(symbol => Of(symbol) == id);
    }

    /// <summary>A method by its id, among those of its type, which is known already more often than not: the compiler would look for it anew, and for the types of all parameters.</summary>
    public static IMethodSymbol? FindMethod(string id, Func<string, ISymbol?> find)
    {
        var end = id.IndexOf('(') is >= 0 and var parenthesis ? parenthesis : id.Length;
        var dot = id.LastIndexOf('.', end - 1);
        if (!id.StartsWith("M:", StringComparison.Ordinal) || dot < 0 || id.IndexOf(OfFile) >= 0 || find("T:" + id.Substring(2, dot - 2)) is not INamedTypeSymbol type)
            return null;
        var name = id.Substring(dot + 1, end - dot - 1);
        var generic = name.IndexOf('`');
        name = (generic < 0 ? name : name.Substring(0, generic)).Replace('#', '.');
        return type.GetMembers(name).OfType<IMethodSymbol>().FirstOrDefault(method => method.GetDocumentationCommentId() == id);
    }

    /// <summary>The simple name of a member.</summary>
    public static string NameIn(string member)
    {
        var file = member.IndexOf(OfFile);
        var id = file < 0 ? member : member.Substring(0, file);
        return id.Substring(id.LastIndexOf('.') + 1);
    }
}
