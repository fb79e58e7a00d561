namespace Condyle.Analyzers.Reading;

/// <summary>What was written while several ways were tried, so that it can be undone, compared and opened.</summary>
internal sealed class Journal
{
    private readonly List<Entry> entries = [];

    // What was noted since the last mark: it needn't be noted again, as only what it held at a mark is ever asked for.
    private HashSet<(object?[], int)> notedCells = [];
    private HashSet<ICollectionValue> notedCollections = [];
    private int users;

    /// <summary>Whether somebody may want to undo what is written.</summary>
    public bool IsWatching => users > 0;

    /// <summary>Where the next entry will be.</summary>
    public int Position => entries.Count;

    public int Mark()
    {
        users++;
        Forget();
        return entries.Count;
    }

    public void Release()
    {
        if (--users > 0)
            return;
        entries.Clear();
        Forget();
    }

    public void Written(object?[] items, int index)
    {
        if (users > 0 && notedCells.Add((items, index)))
            entries.Add(new Entry(items, index, items[index], null, null));
    }

    /// <summary>Opens what a collection holds.</summary>
    public void Open(ICollectionValue collection)
    {
        Changing(collection);
        collection.IsOpen = true;
    }

    public void Changing(ICollectionValue collection)
    {
        if (users > 0 && notedCollections.Add(collection))
            entries.Add(new Entry(null, 0, null, collection, collection.Snapshot()));
    }

    /// <summary>The places and collections written since a mark, each once, with what they held before.</summary>
    public IReadOnlyList<Entry> Since(int mark)
    {
        var seenCells = new HashSet<(object?[], int)>();
        var seenCollections = new HashSet<ICollectionValue>();
        var changed = new List<Entry>();
        for (var i = mark; i < entries.Count; i++)
        {
            var entry = entries[i];
            if (entry.Items is not null ? seenCells.Add((entry.Items, entry.Index)) : seenCollections.Add(entry.Collection!))
                changed.Add(entry);
        }

        return changed;
    }

    /// <summary>Puts back all that was written since a mark.</summary>
    public void UndoTo(int mark)
    {
        for (var i = entries.Count - 1; i >= mark; i--)
            entries[i].Undo();
        entries.RemoveRange(mark, entries.Count - mark);
        Forget();
    }

    /// <summary>Takes what was written from a position on for what was there before, so that undoing leaves it; nothing of it where some was written elsewhere.</summary>
    public void TryTakeAsGiven(int position, IEnumerable<object> elsewhere)
    {
        var places = PlacesOf(elsewhere);
        if (entries.Skip(position).Any(entry => entry.LiesIn(places) && !entry.HoldsTheSameNow()))
            return;
        for (var i = position; i < entries.Count; i++)
            entries[i] = entries[i].Now();
    }

    /// <summary>Where things lie that can be got at.</summary>
    public static HashSet<object> PlacesOf(IEnumerable<object> reached) => [.. reached.Select(value => value switch
    {
        Frame frame => frame.Slots,
        ObjectValue own => own.Fields,
        IStretch items => items.Items,
        TupleValue tuple => tuple.Items,
        Cell cell => cell.Items,
        _ => value,
    })];

    private void Forget()
    {
        // Not cleared: that takes as long as they were ever large.
        if (notedCells.Count > 0)
            notedCells = [];
        if (notedCollections.Count > 0)
            notedCollections = [];
    }

    /// <summary>A place or collection and what it held.</summary>
    internal sealed record Entry(object?[]? Items, int Index, object? Before, ICollectionValue? Collection, object? Snapshot)
    {
        public void Undo()
        {
            if (Items is not null)
                Items[Index] = Before;
            else
                Collection!.Restore(Snapshot!);
        }

        /// <summary>What it holds now, to be compared later.</summary>
        public Entry Now() => Items is not null ? this with { Before = Items[Index] } : this with { Snapshot = Collection!.Snapshot() };

        /// <summary>The same where what was written since a mark is undone: a structure's fields are, too.</summary>
        public Entry Kept() => Now() is var now && Items is not null ? now with { Before = ValueCopies.Of(now.Before) } : now;

        public bool LiesIn(HashSet<object> places) => places.Contains((object?)Items ?? Collection!);

        public bool HoldsTheSameNow() => Items is not null
            ? KnownEquality.Same.Equals(Items[Index], Before)
            : Collection!.Holds(Snapshot!);

        /// <summary>Notes that what it held and what it holds now may be either from here on.</summary>
        public void Lose(Machine machine)
        {
            if (Items is not null)
            {
                machine.Lost.Add(Before);
                machine.Lost.Add(Items[Index]);
                return;
            }

            // What the collection held, not the copy of it: nobody can change that, and there are ever more of them.
            machine.Lost.AddAll(Reach.PartsOf(Snapshot!));
            machine.Lost.Add(Collection);
        }

        public void Open(Machine machine)
        {
            Lose(machine);
            if (Items is not null)
            {
                machine.Write(Items, Index, OpenValue.Any);
            }
            else
            {
                machine.Journal.Changing(Collection!);
                Collection!.IsOpen = true;
            }
        }
    }
}
