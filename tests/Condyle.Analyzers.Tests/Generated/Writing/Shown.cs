namespace Condyle.Analyzers.Tests.Generated;

/// <summary>How a value becomes text, so that it can be seen in the rig.</summary>
internal static class Shown
{
    /// <summary>An expression of type <c>string</c> for a name, or for another expression that may be written more than once.</summary>
    public static string Text(CodeType type, string simple, Author author) => type switch
    {
        TextType => simple,
        NumberType { IsReal: true } => $"Trace.Milli((double){simple})",
        NumberType or TruthType or EnumType => author.Choose.Chance(25) ? $"{simple}.ToString()" : $"$\"{{{simple}}}\"",
        MaybeType maybe => Maybe(maybe, simple, author),
        TupleType tuple => "$\"" + string.Concat(tuple.Items.Select((item, index) => $"({{{Text(item, $"{simple}.Item{index + 1}", author)}}})")) + "\"",
        ArrayType { Item: var item } => Joined(item, simple, author),
        CollectionType { Item: var item } => Joined(item, simple, author),
        GridType { Item: var item } => Joined(item, $"{simple}.Cast<{item}>()", author),
        // The order of the others is that of hashes.
        MapType { Family: not "Dictionary" } => $"$\"{{{simple}.Count}}\"",
        MapType map => Joined(new TupleType(map.Key, map.Value), $"{simple}.Select(entry => (entry.Key, entry.Value))", author),
        DeclaredType declared => $"{simple}.{declared.Shows}",
        HandleType => $"{simple}.Name",
        VectorType { Name: "Vector3" } => $"$\"{{Trace.Milli({simple}.X)}},{{Trace.Milli({simple}.Y)}},{{Trace.Milli({simple}.Z)}}\"",
        ObjectType => $"Trace.Kind({simple})",
        _ => $"\"{type.GetType().Name}\"",
    };

    private static string Maybe(MaybeType maybe, string simple, Author author)
    {
        var known = author.Name("known");
        return $"({simple} is {{ }} {known} ? {Text(maybe.Of, known, author)} : \"none\")";
    }

    private static string Joined(CodeType item, string items, Author author)
    {
        var each = author.Name("each");
        return $"string.Join(\"_\", {items}.Select({each} => {Text(item, each, author)}))";
    }
}
