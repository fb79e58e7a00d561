using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Unicode;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>JSON to tree and back; order and the texts of numbers survive.</summary>
internal static class JsonText
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    private static readonly JsonWriterOptions CompactForm = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly JsonWriterOptions ReadableForm = new()
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Indented = true,
        NewLine = "\n",
    };

    public static JsonSpot Parse(string file, ReadOnlyMemory<byte> text)
    {
        var bytes = text.Span;
        if (bytes.StartsWith("\uFEFF"u8))
            bytes = bytes[3..];
        if (!Utf8.IsValid(bytes))
            throw new BadInputException(file, "the JSON isn't valid UTF-8", "Export the file again");
        try
        {
            return new JsonSpot(file, "", JsonNode.Parse(bytes, documentOptions: Strict));
        }
        catch (JsonException problem)
        {
            // Only a member that stands twice in an object is reported without a line.
            var place = problem.LineNumber is { } line ? $"line {line + 1}, column {problem.BytePositionInLine + 1}" : null;
            var what = place is null ? "the JSON has an object with two members of one name" : "the JSON is malformed or ends too early";
            throw new BadInputException(file, what, "Export the file again, or mend it there", place: place, inner: problem);
        }
    }

    public static byte[] Compact(JsonNode json) => Serialise(json, CompactForm);

    public static byte[] Readable(JsonNode json) => Serialise(json, ReadableForm);

    private static byte[] Serialise(JsonNode json, JsonWriterOptions form)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, form))
            json.WriteTo(writer);
        return stream.ToArray();
    }
}
