using System.Text;
using System.Text.Json;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Skeletons;

/// <summary>A file's text as the JSON reader wants it, and the way back from places in the JSON to places in the text.</summary>
internal sealed class Utf8File(SourceText text)
{
    private const int MaxCharacters = 64 * 1024 * 1024;
    private const int MaxDepth = 256;

    private readonly byte[] bytes = text.Length <= MaxCharacters ? Encoding.UTF8.GetBytes(text.ToString()) : [];

    /// <exception cref="SkeletonFileException">The text isn't JSON, is too long or too deep.</exception>
    public JsonDocument Parse()
    {
        if (text.Length > MaxCharacters)
            throw new SkeletonFileException($"the file is longer than {MaxCharacters / 1024 / 1024} million characters. {SkeletonProblem.WriteGltf}", pointer: "");
        if (bytes.All(static character => character is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n'))
            throw new SkeletonFileException("the file is empty. Export the skeleton again", pointer: "");
        if (bytes.Length >= 4 && Encoding.ASCII.GetString(bytes, 0, 4) == "glTF")
            throw new SkeletonFileException($"this is a binary .glb under another name. {SkeletonProblem.WriteGltf}", pointer: "");
        try
        {
            return JsonDocument.Parse(bytes, new JsonDocumentOptions { MaxDepth = MaxDepth });
        }
        catch (JsonException wrong)
        {
            var (line, column) = (wrong.LineNumber ?? 0, wrong.BytePositionInLine ?? 0);
            throw new SkeletonFileException($"line {line + 1}, column {column + 1} is not valid JSON: {Reason(wrong)} Export the file again", line, column);
        }
    }

    /// <summary>The character of the text that an error is about.</summary>
    public int OffsetOf(SkeletonFileException wrong) =>
        Encoding.UTF8.GetCharCount(bytes, 0, wrong.Pointer is { } pointer ? Find(pointer) : Find(wrong.Line, wrong.ByteInLine));

    private static string Reason(JsonException wrong)
    {
        var place = wrong.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return place < 0 ? wrong.Message : wrong.Message.Substring(0, place);
    }

    private int Find(long line, long byteInLine)
    {
        var start = 0;
        for (; line > 0; line--)
            start = Array.IndexOf(bytes, (byte)'\n', start) + 1;
        return (int)Math.Min(start + byteInLine, bytes.Length);
    }

    private int Find(string pointer)
    {
        if (pointer.Length == 0)
            return 0;
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = MaxDepth });
        reader.Read();
        foreach (var step in pointer.Substring(1).Split('/'))
        {
            var inObject = reader.TokenType == JsonTokenType.StartObject;
            reader.Read();
            for (var index = 0; inObject ? !reader.ValueTextEquals(step) : index.ToString(System.Globalization.CultureInfo.InvariantCulture) != step; index++)
            {
                reader.Skip();
                reader.Read();
            }

            if (inObject)
                reader.Read();
        }

        return (int)reader.TokenStartIndex;
    }
}
