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

    /// <summary>The simple name of a member.</summary>
    public static string NameIn(string member)
    {
        var file = member.IndexOf(OfFile);
        var id = file < 0 ? member : member.Substring(0, file);
        return id.Substring(id.LastIndexOf('.') + 1);
    }
}
