namespace Condyle.Analyzers.Reading;

/// <summary>The items of a type: others are left out, or refused.</summary>
internal sealed class CastQuery(Machine machine, Source source, TypeKey type, bool throws) : Query(machine, source.Depth + 1)
{
    public override int? Count(bool onlyIfCheap) => throws && source.IsCounted ? source.Length : base.Count(onlyIfCheap);

    protected override IEnumerable<object?> Items()
    {
        foreach (var item in source.Items())
        {
            if (Is(item))
                yield return item;
            else if (throws)
                throw new ThrownByCode("System.InvalidCastException", $"A value that isn't a {type.Id} is cast to it.");
        }
    }

    // Null is none of a type, but can be cast to a reference or a nullable.
    private bool Is(object? item) => item is null
        ? throws && (type.IsReference || type.Shape == TypeShape.Nullable ? true : throw new ThrownByCode("System.NullReferenceException", "Null is cast to a value type."))
        : TypeTests.Is(item, type, Machine) ?? throw new SequenceIsOpen("whether an item is of a type isn't known");
}
