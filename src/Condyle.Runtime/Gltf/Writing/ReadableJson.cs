using System.Text.Encodings.Web;
using System.Text.Json;

namespace Condyle.Runtime.Gltf.Writing;

/// <summary>JSON that people and programs read: indented, the same bytes on every system.</summary>
internal static class ReadableJson
{
    public static JsonSerializerOptions Form { get; } = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>For what is read back as well: nothing may be missing.</summary>
    public static JsonSerializerOptions Whole { get; } = new(Form) { RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true };

    /// <summary>Text that ends with a line break.</summary>
    public static string Text<T>(T value, JsonSerializerOptions? form = null) => JsonSerializer.Serialize(value, form ?? Form) + "\n";
}
