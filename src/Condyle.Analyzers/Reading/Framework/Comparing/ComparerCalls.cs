namespace Condyle.Analyzers.Reading;

/// <summary>The framework's comparers: of texts, by default, by functions of the user's.</summary>
internal static class ComparerCalls
{
    private const string Space = "System.Collections.Generic.";
    private const string Order = Space + "Comparer";
    private const string Equality = Space + "EqualityComparer";
    private const string Texts = "System.StringComparer";

    public static readonly ComparerValue DefaultOrder = new(Order, Orders.Default, machine => machine.Equality);
    public static readonly ComparerValue Default = new(Equality, Orders.Default, machine => machine.Equality);
    private static readonly ComparerValue Identity = new(Equality, Orders.Default, _ => new Equalities.OfIdentity());

    private static readonly Dictionary<StringComparison, ComparerValue> OfTexts = Enum.GetValues(typeof(StringComparison)).Cast<StringComparison>()
        .ToDictionary(how => how, how => new ComparerValue(Texts, machine => new TextOrder(how, machine), machine => new Equalities.OfTexts(how, machine)));

    public static void Register()
    {
        foreach (var pair in OfTexts)
            FrameworkTable.Add(Texts, "get_" + pair.Key, _ => pair.Value);
        FrameworkTable.Add(Texts, "FromComparison", call => call[0] is EnumValue { Number: int how } && OfTexts.TryGetValue((StringComparison)how, out var known) ? known : throw call.Unknown());
        FrameworkTable.Add(Order, "get_Default", _ => DefaultOrder);
        FrameworkTable.Add(Order, "Create", call => call.Function(0) is var comparison ? new ComparerValue(Order, machine => Orders.Of(comparison, machine), machine => machine.Equality) : null);
        FrameworkTable.Add(Equality, "get_Default", _ => Default);
        FrameworkTable.Add(Equality, "Create", Create);
        FrameworkTable.Add(Space + "ReferenceEqualityComparer", "get_Instance", _ => Identity);
        foreach (var type in new[] { Order, Equality, Texts, Space + "IComparer", Space + "IEqualityComparer" })
        {
            FrameworkTable.Add(type, "Compare", new FrameworkMethod(call => Compare(call)) { NeedsAll = true });
            FrameworkTable.Add(type, "Equals", new FrameworkMethod(call => Of(call).Equality(call.Machine).Equals(call[1], call[2])) { NeedsAll = true });
            FrameworkTable.Add(type, "GetHashCode", _ => OpenValue.Any);
        }
    }

    private static object Create(Invocation call)
    {
        var equals = call.Function(0);
        var hash = call[1] as FunctionValue;
        return new ComparerValue(Equality, Orders.Default, machine =>
            new Equalities.GivenEquality((a, b) => equals.Invoke(machine, a, b), value => hash is null ? null : hash.Invoke(machine, value), machine));
    }

    private static ComparerValue Of(Invocation call) => call[0] as ComparerValue ?? throw call.Unknown();

    // The sign of a culture's order is known at times, its number never but where there is none.
    private static object Compare(Invocation call)
    {
        var order = Of(call).Order(call.Machine).Compare(call[1], call[2]);
        return call[1] is TextValue && order != 0 && Of(call).Order(call.Machine) is Reading.DefaultOrder or TextOrder { IsOrdinal: false } ? OpenValue.Any : order;
    }

    /// <summary>The order of texts in a given way of comparing them.</summary>
    private sealed class TextOrder(StringComparison how, Machine machine) : IComparer<object?>
    {
        public bool IsOrdinal => how is StringComparison.Ordinal or StringComparison.OrdinalIgnoreCase;

        public int Compare(object? a, object? b)
        {
            if (a is null || b is null)
                return a is null ? b is null ? 0 : -1 : 1;
            Budget.Current.Spend();
            machine.Calls.Observe(a);
            machine.Calls.Observe(b);
            return a is TextValue x && b is TextValue y && x.TryKnown(out var left) && y.TryKnown(out var right)
                ? (IsOrdinal ? TextComparison.Compare(left, right, how) : TextComparison.Order(left, right, how)) ?? throw new AnswerIsOpen("in which order texts stand depends on the culture")
                : throw new AnswerIsOpen("in which order two texts stand isn't known");
        }
    }
}
