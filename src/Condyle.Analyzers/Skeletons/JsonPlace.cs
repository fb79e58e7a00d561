using System.Text.Json;

namespace Condyle.Analyzers.Skeletons;

/// <summary>A value of the file that knows where it stands, so that what is wrong with it can be said. The words name it for people: <c>node 12 'elbow_left', rotation</c>.</summary>
internal readonly record struct JsonPlace(JsonElement Element, string Pointer, string Words)
{
    public SkeletonFileException Wrong(string problem, string remedy) => new($"{(Words.Length == 0 ? "the file" : Words)} {problem}. {remedy}", Pointer);

    /// <summary>A member of an object, or null when it isn't there; exporters write null for that too.</summary>
    public JsonPlace? Find(string member)
    {
        Expect(JsonValueKind.Object, "an object");
        return Element.TryGetProperty(member, out var value) && value.ValueKind != JsonValueKind.Null
            ? new JsonPlace(value, $"{Pointer}/{member}", Words.Length == 0 ? member : $"{Words}, {member}")
            : null;
    }

    /// <summary>The names of an object's members.</summary>
    public IReadOnlyList<string> Members()
    {
        Expect(JsonValueKind.Object, "an object");
        List<string> names = [.. Element.EnumerateObject().Select(static member => member.Name)];
        return names.Distinct(StringComparer.Ordinal).Count() == names.Count ? names : throw Wrong("has two members of one name", "Keep one of them");
    }

    /// <summary>The items of an array that is a member; none when it isn't there.</summary>
    public IReadOnlyList<JsonPlace> List(string member, string singular) => Find(member)?.Items(Words.Length == 0 ? singular : $"{Words}, {singular}") ?? [];

    public string Text()
    {
        Expect(JsonValueKind.String, "a text");
        try
        {
            return Element.GetString()!;
        }
        catch (InvalidOperationException)
        {
            throw Wrong("is a text with half a character", "Write it again");
        }
    }

    public int IndexInto(int count, string things)
    {
        Expect(JsonValueKind.Number, "a number");
        // JSON doesn't tell 1 from 1.0.
        if (!Element.TryGetDouble(out var number) || number != Math.Floor(number) || Math.Abs(number) > int.MaxValue)
            throw Wrong($"is {Element.GetRawText()}, which is no index", "Export the file again");
        var index = (int)number;
        if (index < 0 || index >= count)
            throw Wrong($"is {index}, but the file has {count} {things}, counted from 0", "Export the file again");
        return index;
    }

    public double[] Numbers(int count)
    {
        var items = Items(Words);
        if (items.Count != count)
            throw Wrong($"has {items.Count} numbers instead of {count}", "Export the file again");
        return [.. items.Select(static item => item.Number())];
    }

    private double Number()
    {
        Expect(JsonValueKind.Number, "a number");
        // What a float can't hold is as good as infinite.
        if (!Element.TryGetDouble(out var number) || float.IsInfinity((float)number) || double.IsNaN(number))
            throw Wrong($"is {Element.GetRawText()}, which is too large to be true", "Export the file again");
        return number;
    }

    private IReadOnlyList<JsonPlace> Items(string singular)
    {
        Expect(JsonValueKind.Array, "a list");
        var items = new List<JsonPlace>(Element.GetArrayLength());
        foreach (var item in Element.EnumerateArray())
            items.Add(new JsonPlace(item, $"{Pointer}/{items.Count}", $"{singular} {items.Count}"));
        return items;
    }

    private void Expect(JsonValueKind kind, string what)
    {
        if (Element.ValueKind != kind)
            throw Wrong($"should be {what}, but is {Describe(Element.ValueKind)}", "Export the file again");
    }

    private static string Describe(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };
}
