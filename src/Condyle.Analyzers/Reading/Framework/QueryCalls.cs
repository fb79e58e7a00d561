namespace Condyle.Analyzers.Reading;

/// <summary>LINQ over sequences, as lazy as the framework's own.</summary>
internal static class QueryCalls
{
    private const string Type = "System.Linq.Enumerable.";

    public static void Register()
    {
        Lazy("Select", (machine, items, arguments) => items.Select((item, index) => Call(machine, arguments[1], item, index)));
        Lazy("SelectMany", (machine, items, arguments) => SelectMany(machine, items, arguments));
        Lazy("Where", (machine, items, arguments) => items.Where((item, index) => Truth(machine, Call(machine, arguments[1], item, index))));
        Lazy("Take", (_, items, arguments) => items.Take(Whole(arguments[1])));
        Lazy("Skip", (_, items, arguments) => items.Skip(Whole(arguments[1])));
        Lazy("SkipLast", (_, items, arguments) => Drop([.. items], Whole(arguments[1])));
        Lazy("TakeWhile", (machine, items, arguments) => items.TakeWhile((item, index) => Truth(machine, Call(machine, arguments[1], item, index))));
        Lazy("SkipWhile", (machine, items, arguments) => items.SkipWhile((item, index) => Truth(machine, Call(machine, arguments[1], item, index))));
        Lazy("Concat", (machine, items, arguments) => items.Concat(Known(arguments[1], machine)));
        Lazy("Append", (_, items, arguments) => items.Concat([arguments[1]]));
        Lazy("Prepend", (_, items, arguments) => new[] { arguments[1] }.Concat(items));
        Lazy("Reverse", (_, items, _) => items.Reverse());
        Lazy("Distinct", (_, items, _) => items.Distinct(KnownEquality.Same));
        Lazy("Cast", (_, items, _) => items);
        Lazy("AsEnumerable", (_, items, _) => items);
        Lazy("Zip", (machine, items, arguments) => items.Zip(Known(arguments[1], machine), (a, b) =>
            arguments.Length > 2 && arguments[2] is FunctionValue function ? function.Invoke(machine, a, b) : new TupleValue([a, b])));
        Lazy("DefaultIfEmpty", (_, items, arguments) => arguments.Length > 1 ? items.DefaultIfEmpty(arguments[1]) : items.DefaultIfEmpty());
        Lazy("Index", (_, items, _) => items.Select((item, index) => (object?)new TupleValue([index, item])));

        Eager("ToList", (_, items, _) => new ListValue(CollectionKind.List, Sequences.ToLimitedList(items)));
        Eager("ToArray", (_, items, _) => new ArrayValue([.. Sequences.ToLimitedList(items)]));
        Eager("ToHashSet", (_, items, _) => new ListValue(CollectionKind.Set, Sequences.ToLimitedList(items).Distinct(KnownEquality.Same)));
        Eager("ToDictionary", (machine, items, arguments) => ToMap(machine, items, arguments));
        Eager("First", (machine, items, arguments) => First(machine, items, arguments, orThrow: true));
        Eager("FirstOrDefault", (machine, items, arguments) => First(machine, items, arguments, orThrow: false));
        Eager("Last", (machine, items, arguments) => First(machine, items.Reverse(), arguments, orThrow: true));
        Eager("LastOrDefault", (machine, items, arguments) => First(machine, items.Reverse(), arguments, orThrow: false));
        Eager("Single", (machine, items, arguments) => First(machine, items, arguments, orThrow: true));
        Eager("ElementAt", (_, items, arguments) => items.Skip(Whole(arguments[1])).First());
        Eager("Count", (machine, items, arguments) => Matching(machine, items, arguments).Count());
        Eager("Any", (machine, items, arguments) => Matching(machine, items, arguments).Any());
        Eager("All", (machine, items, arguments) => items.All(item => Truth(machine, Call(machine, arguments[1], item, 0))));
        Eager("Contains", (_, items, arguments) => items.ToList() is var known && known.TrueForAll(KnownEquality.IsKnown) && KnownEquality.IsKnown(arguments[1])
            ? known.Contains(arguments[1], KnownEquality.Same)
            : null);
        Eager("SequenceEqual", (machine, items, arguments) => items.SequenceEqual(Known(arguments[1], machine), KnownEquality.Same));
        Eager("Aggregate", (machine, items, arguments) => Aggregate(machine, items, arguments));
        Eager("Sum", (machine, items, arguments) => Sum(items.Select(item => arguments.Length > 1 ? Call(machine, arguments[1], item, 0) : item)));

        FrameworkTable.Open(Type + "Range", (_, arguments) => arguments is [int start, int count]
            ? count < 0 ? throw new ThrownByCode("System.ArgumentOutOfRangeException", "A range can't have a negative count.") : new SequenceValue(() => Enumerable.Range(start, count).Select(value => (object?)value))
            : OpenValue.Any);
        FrameworkTable.Open(Type + "Repeat", (_, arguments) => arguments[1] is int count and >= 0 ? new SequenceValue(() => Enumerable.Repeat(arguments[0], count)) : OpenValue.Any);
        FrameworkTable.Open(Type + "Empty", (_, _) => new ArrayValue([]));
    }

    private static void Lazy(string name, Func<Machine, IEnumerable<object?>, object?[], IEnumerable<object?>> run) =>
        FrameworkTable.Open(Type + name, (machine, arguments) => CanRun(machine, arguments)
            ? new SequenceValue(() => run(machine, Sequences.Of(arguments[0], machine)!, arguments), DepthAbove(arguments))
            : OpenValue.Any);

    private static int DepthAbove(object?[] arguments)
    {
        var depth = arguments.OfType<SequenceValue>().Select(inner => inner.Depth).DefaultIfEmpty().Max() + 1;
        return depth <= Limits.Nesting ? depth : throw new ReadingStopped($"queries lie more than {Limits.Nesting} deep inside each other");
    }

    private static void Eager(string name, Func<Machine, IEnumerable<object?>, object?[], object?> run) =>
        FrameworkTable.Open(Type + name, (machine, arguments) =>
        {
            if (!CanRun(machine, arguments))
                return OpenValue.Any;
            try
            {
                return run(machine, Sequences.Of(arguments[0], machine)!, arguments);
            }
            catch (SequenceIsOpen open)
            {
                machine.Lose(machine.Here, open.Message);
                return OpenValue.Any;
            }
            catch (InvalidOperationException)
            {
                throw new ThrownByCode("System.InvalidOperationException", "The sequence has no such item.");
            }
        });

    // A function of an unknown sequence may be called any number of times.
    private static bool CanRun(Machine machine, object?[] arguments)
    {
        if (Sequences.Of(arguments[0], machine) is not null && arguments.Skip(1).All(argument => argument is not OpenValue))
            return true;
        UnknownCode.Touch(machine, arguments.OfType<FunctionValue>(), machine.Here, "a query over items that aren't known");
        return false;
    }

    private static IEnumerable<object?> Known(object? value, Machine machine) =>
        Sequences.Of(value, machine) ?? throw new SequenceIsOpen("a query joins items that aren't known");

    private static object? Call(Machine machine, object? function, object? item, int index) => function is FunctionValue known
        ? known.Invoke(machine, item, index)
        : OpenValue.Any;

    private static bool Truth(Machine machine, object? value) => machine.Decide(value) is bool truth
        ? truth
        : throw new SequenceIsOpen("whether a query keeps an item depends on an unknown condition");

    private static int Whole(object? value) => Arithmetic.AsIndex(value) ?? throw new SequenceIsOpen("how many items a query takes isn't known");

    private static IEnumerable<object?> Drop(List<object?> items, int count) => items.Take(Math.Max(0, items.Count - count));

    private static IEnumerable<object?> Matching(Machine machine, IEnumerable<object?> items, object?[] arguments) =>
        arguments.Length < 2 ? items : items.Where(item => Truth(machine, Call(machine, arguments[1], item, 0)));

    private static IEnumerable<object?> SelectMany(Machine machine, IEnumerable<object?> items, object?[] arguments)
    {
        var index = 0;
        foreach (var item in items)
        {
            foreach (var inner in Known(Call(machine, arguments[1], item, index), machine))
                yield return arguments.Length > 2 ? ((FunctionValue)arguments[2]!).Invoke(machine, item, inner) : inner;
            index++;
        }
    }

    private static object? First(Machine machine, IEnumerable<object?> items, object?[] arguments, bool orThrow)
    {
        var matching = Matching(machine, items, arguments.Length > 1 && arguments[1] is FunctionValue ? arguments : [arguments[0]]);
        return orThrow ? matching.First() : matching.FirstOrDefault();
    }

    private static MapValue ToMap(Machine machine, IEnumerable<object?> items, object?[] arguments)
    {
        var map = new MapValue();
        foreach (var item in items)
        {
            var key = arguments.Length > 1 ? Call(machine, arguments[1], item, 0) : (item as TupleValue)?.Items[0];
            var value = arguments.Length > 2 ? Call(machine, arguments[2], item, 0) : arguments.Length > 1 ? item : (item as TupleValue)?.Items[1];
            if (key is null || !KnownEquality.IsKnown(key))
            {
                map.IsOpen = true;
                return map;
            }

            if (map.Entries.ContainsKey(key))
                throw new ThrownByCode("System.ArgumentException", "The key is in the dictionary already.");
            map.Entries[key] = value;
        }

        return map;
    }

    private static object? Aggregate(Machine machine, IEnumerable<object?> items, object?[] arguments)
    {
        if (arguments is [_, FunctionValue fold])
            return items.Aggregate((sum, item) => fold.Invoke(machine, sum, item));
        if (arguments is not [_, var seed, FunctionValue step, ..])
            return OpenValue.Any;
        var total = items.Aggregate(seed, (sum, item) => step.Invoke(machine, sum, item));
        return arguments.Length > 3 && arguments[3] is FunctionValue last ? last.Invoke(machine, total) : total;
    }

    private static object? Sum(IEnumerable<object?> items)
    {
        var known = items.ToList();
        return known.TrueForAll(item => item is int) ? known.Sum(item => (int)item!)
            : known.TrueForAll(item => item is float) ? (float)known.Sum(item => (double)(float)item!)
            : known.TrueForAll(item => item is double) ? known.Sum(item => (double)item!)
            : null;
    }
}
