using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// What <c>Path</c> makes of texts alone. Platforms separate parts differently, so a path with a backslash or a colon is open, and of parts that are put together
/// the separator.
/// </summary>
internal static class PathCalls
{
    private const string Type = "System.IO.Path";

    public static void Register()
    {
        Part("GetFileName", NameOf);
        Part("GetExtension", path => Dot(path) is >= 0 and var dot ? path.Substring(dot) is "." ? "" : path.Substring(dot) : "");
        Part("GetFileNameWithoutExtension", path => NameOf(path) is var name && name.LastIndexOf('.') is >= 0 and var dot ? name.Substring(0, dot) : NameOf(path));
        Part("HasExtension", path => Dot(path) is >= 0 and var dot && dot < path.Length - 1);
        Part("IsPathRooted", path => path.StartsWith("/", StringComparison.Ordinal));
        FrameworkTable.Add(Type, "ChangeExtension", call => call[0] is null ? null : call[1] is null or TextValue { Text.IsOpen: false } ? Changed(call, Plain(call, 0), (call[1] as TextValue)?.ToString()) : throw call.Unknown());
        FrameworkTable.Add(Type, "Combine", call => Joined(call, isCombined: true));
        FrameworkTable.Add(Type, "Join", call => Joined(call, isCombined: false));
    }

    private static void Part(string name, Func<string, object> ask) => FrameworkTable.Add(Type, name, call => call[0] is null ? name is "HasExtension" or "IsPathRooted" ? false : null
        : ask(Plain(call, 0)) is var answer && answer is string text ? Made(call, text) : answer);

    private static TextValue Made(Invocation call, string text) => new(text, [], ((TextValue)call[0]!).Origins);

    // A path that every platform takes apart alike.
    private static string Plain(Invocation call, int index) => call.Text(index) is var path && path.IndexOfAny(['\\', ':', '\0']) < 0 ? path : throw call.Unknown();

    private static string NameOf(string path) => path.Substring(path.LastIndexOf('/') + 1);

    private static int Dot(string path) => path.LastIndexOf('.') is var dot && dot > path.LastIndexOf('/') ? dot : -1;

    private static TextValue Changed(Invocation call, string path, string? extension)
    {
        var kept = path.Length == 0 || Dot(path) < 0 ? path : path.Substring(0, Dot(path));
        return Made(call, path.Length == 0 || extension is null ? kept : kept + (extension.StartsWith(".", StringComparison.Ordinal) ? "" : ".") + extension);
    }

    private static TextValue Joined(Invocation call, bool isCombined)
    {
        var parts = call is { Count: 1 } && call[0] is IStretch several ? several.Now() : call.Arguments;
        if (isCombined && parts.Any(part => part is null))
            throw new ThrownByCode("System.ArgumentNullException", "A part of a path is null.");
        var pieces = new List<string?>();
        foreach (var part in parts)
        {
            if (part is null or TextValue { Text.IsOpen: false } && (part?.ToString() ?? "") is var text && text.IndexOfAny(['\\', ':']) < 0)
                Append(pieces, part?.ToString() ?? "", isCombined);
            else
                throw call.Unknown();
        }

        return new TextValue(Text.Of(pieces), [], [.. parts.OfType<TextValue>().SelectMany(part => part.Origins).Distinct()]);
    }

    private static void Append(List<string?> pieces, string part, bool isCombined)
    {
        if (part.Length == 0)
            return;
        if (isCombined && part[0] == '/')
            pieces.Clear();
        else if (pieces.Count > 0 && !pieces[pieces.Count - 1]!.EndsWith("/", StringComparison.Ordinal) && part[0] != '/')
            pieces.Add(null);
        pieces.Add(part);
    }
}
