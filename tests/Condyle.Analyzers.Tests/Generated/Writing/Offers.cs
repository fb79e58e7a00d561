namespace Condyle.Analyzers.Tests.Generated;

/// <summary>What could be written at one place, by weight; only what is chosen is written.</summary>
internal sealed class Offers
{
    private readonly List<(int Weight, Func<string> Write)> offers = [];
    private int total;

    public bool AreNone => offers.Count == 0;

    public void Add(int weight, Func<string> write)
    {
        offers.Add((weight, write));
        total += weight;
    }

    public string Take(Choices choose)
    {
        var at = choose.Below(total);
        foreach (var (weight, write) in offers)
        {
            if ((at -= weight) < 0)
                return write();
        }

        throw new InvalidOperationException("Nothing is on offer.");
    }
}
