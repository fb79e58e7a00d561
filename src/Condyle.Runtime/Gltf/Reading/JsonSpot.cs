using System.Text.Json;
using System.Text.Json.Nodes;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>A JSON value and where it stands, so that every complaint names its place. A value that isn't there has a spot too.</summary>
internal readonly record struct JsonSpot(string File, string Pointer, JsonNode? Value, string? Node = null)
{
    public bool Exists => Value is not null;

    public JsonSpot this[string member] => this with { Pointer = $"{Pointer}/{member}", Value = AsObject()[member] };

    /// <summary>The elements of a list; none when it isn't there.</summary>
    public JsonSpot[] Items
    {
        get
        {
            if (Value is null)
                return [];
            if (Value is not JsonArray list)
                throw Wrong("is no list", "Export the file again");
            var spots = new JsonSpot[list.Count];
            for (var i = 0; i < spots.Length; i++)
                spots[i] = this with { Pointer = $"{Pointer}/{i}", Value = list[i] };
            return spots;
        }
    }

    public JsonObject AsObject() => Value as JsonObject ?? throw Wrong("is no JSON object", "Export the file again");

    /// <summary>The same spot, with the name of the node that it belongs to, for messages.</summary>
    public JsonSpot AsNode(int index) => this with { Node = this["name"].Text is { Length: > 0 } name ? name : $"node_{index}" };

    /// <summary>The text, or null when it isn't there.</summary>
    public string? Text
    {
        get
        {
            if (Value is null)
                return null;
            try
            {
                if (Value is JsonValue value && value.TryGetValue(out string? text))
                    return text;
            }
            catch (InvalidOperationException)
            {
                // Half a surrogate pair: falls through to the complaint.
            }
            throw Wrong("is no readable text", "Write a JSON string");
        }
    }

    public double Number()
    {
        if (Value is JsonValue value && value.GetValueKind() == JsonValueKind.Number && value.TryGetValue(out double number) && float.IsFinite((float)number))
            return number;
        throw Wrong("is no finite number", "Write a number that fits 32-bit floats");
    }

    public double[] Numbers(int count)
    {
        var items = Items;
        if (items.Length != count)
            throw Wrong($"has {items.Length} numbers, not {count}", $"Write {count} numbers");
        return Array.ConvertAll(items, item => item.Number());
    }

    public long Whole(long least, long most, long? whenAbsent = null)
    {
        if (!Exists)
            return whenAbsent ?? throw Wrong("is missing", "Export the file again");
        var number = Number();
        if (number != Math.Floor(number) || number < least || number > most)
            throw Wrong($"is {number:R}, which is no whole number from {least} to {most}", "Export the file again");
        return (long)number;
    }

    /// <summary>An index into a list of the file.</summary>
    public int IndexInto(int count, string things)
    {
        var number = Number();
        if (number != Math.Floor(number) || number < 0 || number >= count)
            throw Wrong($"is index {number:R}, but the file has {count} {things}", "Export the file again");
        return (int)number;
    }

    public BadInputException Wrong(string problem, string remedy, Exception? inner = null) =>
        new(File, problem, remedy, Node, Pointer.Length == 0 ? null : Pointer, inner);
}
