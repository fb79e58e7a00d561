namespace Condyle.Analyzers.Reading;

/// <summary>Collections that show others: keys and values, read-only ones; and what every collection has.</summary>
internal static class ViewCalls
{
    /// <summary>Where the members stand that every collection has.</summary>
    public const string Any = "System.Collections.ICollection";

    public static void Register()
    {
        foreach (var type in new[] { MapValue.Type, SortedMapValue.Dictionary, SortedMapValue.SortedList, ImmutableNames.Dictionary, ImmutableNames.SortedDictionary, ImmutableNames.FrozenDictionary })
        {
            foreach (var part in new[] { ".KeyCollection", ".ValueCollection" })
            {
                var view = new TypeMembers<ViewValue>(type + part);
                view.Asks("Contains", (own, call) => own.Has(call.Key(1)) ?? throw call.Unknown());
                view.Asks("get_Item", (own, call) => own.At(Making.Place(call.Whole(1), own.Count)));
                view.Asks("IndexOf", (own, call) => Searching.IndexOf(own.Now(), call, 0, own.Count));
                view.Asks("get_IsReadOnly", (_, _) => true);
            }
        }

        FrameworkTable.Add(Any, "get_Count", call => call[0] switch
        {
            CollectionValue { IsOpen: false } own => own.Count,
            ArrayValue array => array.Items.Length,
            _ => throw call.Unknown(),
        });
        FrameworkTable.Add(FrameworkTypes.Items, "get_Count", call => Items(call).Count);
        FrameworkTable.Add(FrameworkTypes.Items, "get_Item", call => Items(call) is var items ? items[Making.Place(call.Whole(1), items.Count)] : null);
        FrameworkTable.Add(Any, "CopyTo", call => Arrays.CopyTo(Sequences.ListOf(call[0], call.Machine) ?? throw call.Unknown(), call));
        foreach (var name in new[] { "ReadOnlyCollection", "ReadOnlyDictionary", "ReadOnlySet" })
            FrameworkTable.Add("System.Collections.ObjectModel." + name, ".ctor", call => new ReadOnlyValue("System.Collections.ObjectModel." + name, call[0] ?? throw new ThrownByCode("System.ArgumentNullException", "The collection is null.")));
        FrameworkTable.Add("System.Collections.ObjectModel.ReadOnlyCollection", "get_Empty", _ => new ReadOnlyValue("System.Collections.ObjectModel.ReadOnlyCollection", new ArrayValue([])));
    }

    private static List<object?> Items(Invocation call) => Sequences.ListOf(call[0], call.Machine) ?? throw call.Unknown();
}
