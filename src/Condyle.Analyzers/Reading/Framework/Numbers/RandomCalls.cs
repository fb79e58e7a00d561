namespace Condyle.Analyzers.Reading;

/// <summary>Random numbers that a seed decides. Without one, and of what isn't here, nothing is known.</summary>
internal static class RandomCalls
{
    public static void Register()
    {
        var random = new TypeMembers<RandomValue>("System.Random");
        random.Makes(call => call.Count == 1 ? new RandomValue(call.Whole(0)) : OpenValue.Any);
        random.Changes("Next", Next);
        random.Changes("NextDouble", (own, _) => own.Share());
        random.Changes("NextSingle", (own, call) => Single(own, call));
        random.Changes("Shuffle", Shuffle);
        random.Changes("NextInt64", (_, call) => throw call.Unknown());
        random.Changes("NextBytes", (_, call) => throw call.Unknown());
        random.Changes("GetItems", (_, call) => throw call.Unknown());
        Writes("Shuffle", call => call[0] is RandomValue { IsOpen: false });
        Writes("NextBytes", _ => false);
        Writes("GetItems", _ => false);
    }

    // What isn't drawn here is written all the same into the array or the span that comes last.
    private static void Writes(string name, Func<Invocation, bool> isDrawn)
    {
        var method = FrameworkTable.Find("System.Random", name)!;
        FrameworkTable.Add("System.Random", name, method with { Run = Run });

        object? Run(Invocation call)
        {
            if (!isDrawn(call))
                Lose(call[call.Count - 1], call.Machine);
            return method.Run(call);
        }
    }

    private static void Lose(object? written, Machine machine)
    {
        if (written is OpenValue)
            machine.Lost.StoreItem(OpenValue.Any);
        Elements.Lose(written, machine);
    }

    private static object Next(RandomValue own, Invocation call)
    {
        var (least, most) = call.Count == 3 ? (call.Whole(1), call.Whole(2)) : (0, call.Count == 2 ? call.Whole(1) : 0);
        return call.Count == 1 ? own.Next() : least <= most ? own.Between(least, most) : throw Making.OutOfRange();
    }

    private static object Single(RandomValue own, Invocation call)
    {
        while (true)
        {
            call.Machine.Budget.Spend();
            if ((float)own.Share() is < 1 and var share)
                return share;
        }
    }

    private static object? Shuffle(RandomValue own, Invocation call)
    {
        if (call[1] is not IStretch items)
            throw call.Unknown();
        for (var i = 0; i < items.Length - 1; i++)
        {
            call.Machine.Budget.Spend();
            var (here, there) = (items.Start + i, items.Start + own.Between(i, items.Length));
            var held = items.Items[here];
            if (here == there)
                continue;
            call.Machine.Write(items.Items, here, items.Items[there]);
            call.Machine.Write(items.Items, there, held);
        }

        return null;
    }
}
