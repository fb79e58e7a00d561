namespace Condyle.Analyzers.Reading;

/// <summary>Places that the framework hands out, and arrays that it lends.</summary>
internal static class PlaceCalls
{
    private const string Unsafe = "System.Runtime.CompilerServices.Unsafe";
    private const string Marshal = "System.Runtime.InteropServices.MemoryMarshal";

    // The smallest array that the shared pool lends; others are twice as long, four times, and so on.
    private const int SmallestLent = 16;

    private static readonly object Pool = new();

    public static void Register()
    {
        foreach (var name in new[] { "GetReference", "GetArrayDataReference" })
            FrameworkTable.Add(Marshal, name, call => call[0] is IStretch { Length: > 0 } items ? new Cell(items.Items, items.Start) : OpenValue.Any);
        FrameworkTable.Add(Unsafe, "Add", call => Moved(call, call.Whole(1)));
        FrameworkTable.Add(Unsafe, "Subtract", call => Moved(call, -call.Whole(1)));
        FrameworkTable.Add(Unsafe, "AsRef", call => call[0] is Cell cell ? cell : OpenValue.Any);
        FrameworkTable.Add(Unsafe, "AreSame", call => call[0] is Cell a && call[1] is Cell b ? ReferenceEquals(a.Items, b.Items) && a.Index == b.Index : throw call.Unknown());

        const string pool = "System.Buffers.ArrayPool";
        FrameworkTable.Add(pool, "get_Shared", _ => Pool);
        FrameworkTable.Add(pool, "Rent", call => ReferenceEquals(call[0], Pool) ? Lend(call) : throw call.Unknown());
        FrameworkTable.Add(pool, "Return", call => ReferenceEquals(call[0], Pool) ? null : throw call.Unknown());
    }

    private static Cell Moved(Invocation call, int by) =>
        call[0] is Cell cell && cell.Index + by is var at && at >= 0 && at < cell.Items.Length ? new Cell(cell.Items, at) : throw call.Unknown();

    // What it holds is left from whoever had it before.
    private static ArrayValue Lend(Invocation call)
    {
        var wanted = call.Whole(1);
        if (wanted < 0)
            throw Making.OutOfRange();
        var length = wanted == 0 ? 0 : SmallestLent;
        while (length < wanted && length <= Limits.Items)
            length *= 2;
        var item = call.Method.TypeArguments.FirstOrDefault();
        Budget.Current.Make(length);
        if (length > Limits.Items)
            throw new ReadingStopped($"an array has more than {Limits.Items} items");
        return new ArrayValue([.. Enumerable.Range(0, length).Select(_ => Opens.Of(item, call.Machine))], itemType: item);
    }
}
