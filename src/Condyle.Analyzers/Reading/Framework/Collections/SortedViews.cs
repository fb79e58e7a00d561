namespace Condyle.Analyzers.Reading;

/// <summary>Views of a stretch of a sorted set: what is changed in one is changed in the other.</summary>
internal static class SortedViews
{
    private const string Type = SortedSetValue.Type + ".View";

    public static void Register()
    {
        var view = new TypeMembers<ViewValue>(Type);
        view.Asks("get_Count", (own, _) => own.Count);
        view.Asks("get_Min", (own, call) => own.Count > 0 ? own.Items().First() : call.Default());
        view.Asks("get_Max", (own, call) => own.Count > 0 ? own.Items().Last() : call.Default());
        view.Asks("Contains", (own, call) => own.Has(call.Machine.Decide(call[1])));
        view.Asks("Reverse", (own, _) => new SequenceValue(() => own.Items().Reverse()));
        view.Asks("Add", (own, call) => Change(own, call, (set, item) => set.Add(item), outside: () => throw Making.OutOfRange()));
        view.Asks("Remove", (own, call) => Change(own, call, (set, item) => set.Remove(item), outside: () => false));
        view.Asks("Clear", (own, call) =>
        {
            call.Machine.Journal.Changing(own.Of);
            own.Items().ToList().ForEach(item => ((SortedSetValue)own.Of).Remove(item));
            return null;
        });
    }

    public static ViewValue Of(SortedSetValue set, Invocation call)
    {
        var (least, most) = (call.Machine.Decide(call[1]), call.Machine.Decide(call[2]));
        if (set.Order.Compare(least, most) > 0)
            throw new ThrownByCode("System.ArgumentException", "The least item is greater than the greatest one.");
        return new ViewValue(Type, set, () => set.Items().Where(IsInside), item => IsInside(item) && set.Has(item)) { IsPart = true, Bounds = IsInside };

        bool IsInside(object? item) => set.Order.Compare(item, least) >= 0 && set.Order.Compare(item, most) <= 0;
    }

    private static bool Change(ViewValue view, Invocation call, Func<SortedSetValue, object?, bool> change, Func<bool> outside)
    {
        var item = call.Machine.Decide(call[1]);
        if (!view.Bounds(item))
            return outside();
        call.Machine.Journal.Changing(view.Of);
        return change((SortedSetValue)view.Of, item);
    }
}
