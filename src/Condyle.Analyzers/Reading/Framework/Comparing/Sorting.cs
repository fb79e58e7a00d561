namespace Condyle.Analyzers.Reading;

/// <summary>The framework's own way to sort, step by step: what is equal in order may change places, and it does so here as there.</summary>
internal static class Sorting
{
    private const int InsertionSize = 16;

    /// <summary>Sorts a stretch of a list. What the order's own code throws comes out as the framework's exception.</summary>
    public static void Sort<T>(IList<T> items, int start, int count, IComparer<T> order)
    {
        try
        {
            var depth = 0;
            for (var rest = count; rest > 1; rest >>= 1)
                depth++;
            new Sorter<T>(items, order).Introspective(start, start + count - 1, 2 * (depth + 1));
        }
        catch (ThrownByCode)
        {
            throw new ThrownByCode("System.InvalidOperationException", "Two values that are sorted can't be compared.");
        }
    }

    /// <summary>The item's place in a sorted list, or the complement of where it would stand.</summary>
    public static int Find(IReadOnlyList<object?> items, object? item, IComparer<object?> order) => Find(items, 0, items.Count, item, order);

    public static int Find(IReadOnlyList<object?> items, int start, int count, object? item, IComparer<object?> order)
    {
        var (low, high) = (start, start + count - 1);
        while (low <= high)
        {
            Budget.Current.Spend();
            var middle = low + ((high - low) >> 1);
            var found = order.Compare(items[middle], item);
            if (found == 0)
                return middle;
            if (found < 0)
                low = middle + 1;
            else
                high = middle - 1;
        }

        return ~low;
    }

    private sealed class Sorter<T>(IList<T> items, IComparer<T> order)
    {
        // By halves while they are large, small ones by insertion; when the halves are too uneven for too long, by a heap.
        public void Introspective(int low, int high, int depth)
        {
            while (high > low)
            {
                var size = high - low + 1;
                switch (size)
                {
                    case 2:
                        SwapIfGreater(low, high);
                        return;
                    case 3:
                        SwapIfGreater(low, high - 1);
                        SwapIfGreater(low, high);
                        SwapIfGreater(high - 1, high);
                        return;
                    case <= InsertionSize:
                        Insert(low, high);
                        return;
                }

                if (depth-- == 0)
                {
                    Heap(low, size);
                    return;
                }

                var pivot = Partition(low, high);
                Introspective(pivot + 1, high, depth);
                high = pivot - 1;
            }
        }

        // About the middle one of three.
        private int Partition(int low, int high)
        {
            var middle = low + ((high - low) >> 1);
            SwapIfGreater(low, middle);
            SwapIfGreater(low, high);
            SwapIfGreater(middle, high);
            var pivot = items[middle];
            Swap(middle, high - 1);
            var (left, right) = (low, high - 1);
            while (left < right)
            {
                do
                    left++;
                while (left < high && Compare(items[left], pivot) < 0);
                do
                    right--;
                while (right > low && Compare(pivot, items[right]) < 0);
                if (left >= right)
                    break;
                Swap(left, right);
            }

            Swap(left, high - 1);
            return left;
        }

        private void Insert(int low, int high)
        {
            for (var i = low; i < high; i++)
            {
                var item = items[i + 1];
                var place = i;
                while (place >= low && Compare(item, items[place]) < 0)
                {
                    items[place + 1] = items[place];
                    place--;
                }

                items[place + 1] = item;
            }
        }

        private void Heap(int low, int size)
        {
            for (var i = size >> 1; i >= 1; i--)
                Sink(i, size, low);
            for (var i = size; i > 1; i--)
            {
                Swap(low, low + i - 1);
                Sink(1, i - 1, low);
            }
        }

        private void Sink(int node, int size, int low)
        {
            var item = items[low + node - 1];
            while (node <= size >> 1)
            {
                var child = 2 * node;
                if (child < size && Compare(items[low + child - 1], items[low + child]) < 0)
                    child++;
                if (Compare(item, items[low + child - 1]) >= 0)
                    break;
                items[low + node - 1] = items[low + child - 1];
                node = child;
            }

            items[low + node - 1] = item;
        }

        private void SwapIfGreater(int a, int b)
        {
            if (Compare(items[a], items[b]) > 0)
                Swap(a, b);
        }

        private void Swap(int a, int b) => (items[a], items[b]) = (items[b], items[a]);

        private int Compare(T a, T b)
        {
            Budget.Current.Spend();
            return order.Compare(a, b);
        }
    }
}
