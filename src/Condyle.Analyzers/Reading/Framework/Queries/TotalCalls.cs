namespace Condyle.Analyzers.Reading;

/// <summary>The operators that make one value of all items: sums, averages, extremes, folds.</summary>
internal static class TotalCalls
{
    public static void Register()
    {
        QueryCalls.Add("Aggregate", Aggregate);
        QueryCalls.Add("Sum", Sum);
        QueryCalls.Add("Average", Average);
        Extreme("Min", order => order < 0);
        Extreme("Max", order => order > 0);
    }

    private static object? Aggregate(Invocation call)
    {
        var source = QueryCalls.Of(call);
        if (call.Count == 2)
        {
            var fold = call.Function(1);
            var sum = Found.Nothing;
            foreach (var item in source.Items())
                sum = Found.Of(sum.IsThere ? fold.Invoke(call.Machine, sum.Item, item) : item);
            return sum.IsThere ? sum.Item : throw ResultCalls.Missing();
        }

        var step = call.Function(2);
        var total = source.Items().Aggregate(call[1], (sum, item) => step.Invoke(call.Machine, sum, item));
        return call.Count > 3 ? call.Function(3).Invoke(call.Machine, total) : total;
    }

    /// <summary>The values that are added: the items, or what is made of each; without those that are null.</summary>
    private static IEnumerable<object> Values(Invocation call)
    {
        var selector = call.Count > 1 ? call.Function(1) : null;
        foreach (var item in QueryCalls.Of(call).Items())
        {
            if ((selector is null ? item : selector.Invoke(call.Machine, item)) is { } value)
                yield return value is IConvertible ? value : throw new SequenceIsOpen("what a query adds up isn't known");
        }
    }

    private static TypeShape NumberOf(TypeKey? type) => type is { Shape: TypeShape.Nullable, Element: { } element } ? element.Shape : type?.Shape ?? TypeShape.Other;

    private static object? Sum(Invocation call)
    {
        var values = Values(call);
        try
        {
            return NumberOf(call.Method.Returns) switch
            {
                TypeShape.Int32 => values.Aggregate(0, (sum, value) => checked(sum + (int)value)),
                TypeShape.Int64 => values.Aggregate(0L, (sum, value) => checked(sum + (long)value)),
                TypeShape.Single => (float)values.Aggregate(0.0, (sum, value) => sum + (float)value),
                TypeShape.Double => values.Aggregate(0.0, (sum, value) => sum + (double)value),
                TypeShape.Decimal => values.Aggregate(0m, (sum, value) => sum + (decimal)value),
                _ => throw call.Unknown(),
            };
        }
        catch (OverflowException)
        {
            throw new ThrownByCode("System.OverflowException", "A sum leaves the range of its type.");
        }
    }

    // Of whole numbers it is a double.
    private static object? Average(Invocation call)
    {
        var values = Values(call).ToList();
        if (values.Count == 0)
            return call.Method.Returns?.Shape == TypeShape.Nullable ? null : throw ResultCalls.Missing();
        return NumberOf(call.Method.Returns) switch
        {
            TypeShape.Double when values[0] is int or long => (double)values.Sum(value => Convert.ToInt64(value, null)) / values.Count,
            TypeShape.Double => values.Sum(value => (double)value) / values.Count,
            TypeShape.Single => (float)(values.Sum(value => (double)(float)value) / values.Count),
            TypeShape.Decimal => values.Sum(value => (decimal)value) / values.Count,
            _ => throw call.Unknown(),
        };
    }

    private static void Extreme(string name, Func<int, bool> isBetter)
    {
        QueryCalls.Add(name, call =>
        {
            var selector = call.Parameter(1)?.PlainName == "Func" ? call.Function(1) : null;
            return Best(call, item => selector is null ? item : selector.Invoke(call.Machine, item), isBetter, givesKey: true);
        });
        QueryCalls.Add(name + "By", call =>
        {
            var key = call.Function(1);
            return Best(call, item => key.Invoke(call.Machine, item), isBetter, givesKey: false);
        });
    }

    // Items without a key count only where there are no others. All keys are made, also where an order isn't known.
    private static object? Best(Invocation call, Func<object?, object?> key, Func<int, bool> isBetter, bool givesKey)
    {
        var order = Orders.Of(Making.ComparerOf(call), call.Machine);
        var (found, best, isKnown) = (Found.Nothing, (object?)null, true);
        var all = new List<object?>();
        foreach (var item in QueryCalls.Of(call).Items())
        {
            all.Add(item);
            var made = key(item);
            try
            {
                if (found.IsThere && (made is null || !isKnown || (best is not null && !isBetter(order.Compare(made, best)))))
                    continue;
            }
            catch (AnswerIsOpen open) when (open is not SequenceIsOpen)
            {
                isKnown = false;
                continue;
            }

            (found, best) = (Found.Of(item), made);
        }

        if (!isKnown)
        {
            call.Machine.Lost.AddAll(all);
            return OpenValue.Any;
        }

        return found.IsThere && !(givesKey && best is null) ? givesKey ? best : found.Item
            : CanBeNull(call.Method.Returns) ? null : throw ResultCalls.Missing();
    }

    private static bool CanBeNull(TypeKey? type) => type is { IsReference: true } or { Shape: TypeShape.Nullable };
}
