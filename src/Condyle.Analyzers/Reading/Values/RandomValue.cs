namespace Condyle.Analyzers.Reading;

/// <summary>
/// A <c>Random</c> with a seed, whose numbers every version of the framework makes alike: Knuth's subtractive generator, with the framework's own second offset.
/// </summary>
internal sealed class RandomValue : ICollectionValue, IFrameworkValue
{
    private const int Numbers = 56;
    private const int Largest = int.MaxValue;

    private int[] numbers = new int[Numbers];
    private int next;
    private int other = 21;

    public RandomValue(int seed)
    {
        var (number, one) = (161803398 - (seed == int.MinValue ? Largest : Math.Abs(seed)), 1);
        numbers[Numbers - 1] = number;
        for (int i = 1, place = 21; i < Numbers - 1; i++, place = (place + 21) % (Numbers - 1))
        {
            numbers[place] = one;
            one = unchecked(number - one);
            if (one < 0)
                one += Largest;
            number = numbers[place];
        }

        for (var turn = 0; turn < 4; turn++)
        {
            for (var i = 1; i < Numbers; i++)
            {
                numbers[i] = unchecked(numbers[i] - numbers[1 + ((i + 30) % (Numbers - 1))]);
                if (numbers[i] < 0)
                    numbers[i] += Largest;
            }
        }
    }

    public string TypeName => "System.Random";

    public bool IsOpen { get; set; }

    /// <summary>The next whole number, at least zero and below the largest.</summary>
    public int Next()
    {
        next = next % (Numbers - 1) + 1;
        other = other % (Numbers - 1) + 1;
        var number = unchecked(numbers[next] - numbers[other]);
        if (number == Largest)
            number--;
        if (number < 0)
            number += Largest;
        return numbers[next] = number;
    }

    /// <summary>The next number at least zero and below one.</summary>
    public double Share() => Next() * (1.0 / Largest);

    /// <summary>The next whole number between two, the larger one left out.</summary>
    public int Between(int least, int most)
    {
        var range = (long)most - least;
        return range <= Largest ? (int)(Share() * range) + least : (int)((long)(WideShare() * range) + least);
    }

    public object Snapshot() => (numbers.Clone(), next, other, IsOpen);

    public void Restore(object snapshot)
    {
        var (held, first, second, isOpen) = ((object, int, int, bool))snapshot;
        (numbers, next, other, IsOpen) = ((int[])((int[])held).Clone(), first, second, isOpen);
    }

    public bool Holds(object snapshot)
    {
        var (held, first, second, isOpen) = ((object, int, int, bool))snapshot;
        return (first, second, isOpen) == (next, other, IsOpen) && ((int[])held).SequenceEqual(numbers);
    }

    // Of a range that is too wide for one number, a second one tells the sign.
    private double WideShare()
    {
        var number = Next();
        if (Next() % 2 == 0)
            number = -number;
        return (number + (double)(Largest - 1)) / ((2 * (uint)Largest) - 1);
    }
}
