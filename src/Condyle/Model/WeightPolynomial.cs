using System.Text;

namespace Condyle.Model;

/// <summary>
/// A weight in its one canonical form: a sum of products of switches with their coefficients, so that equal weights are equal values
/// and an inverse asked for twice is one.
/// </summary>
internal sealed class WeightPolynomial : IEquatable<WeightPolynomial>
{
    /// <summary>Above this many terms a weight counts as open.</summary>
    public const int MostTerms = 64;

    /// <summary>Products of more factors than this count as open.</summary>
    public const int MostFactors = 16;

    /// <summary>Coefficients closer to each other than this are the same: authors type decimals, which have no exact binary form.</summary>
    public const double Tolerance = 1e-5;

    private readonly List<Term> terms;
    private IReadOnlyList<int>? switches;

    private WeightPolynomial(List<Term> terms) => this.terms = terms;

    public static WeightPolynomial Zero { get; } = new([]);

    public static WeightPolynomial One { get; } = Constant(1);

    public static WeightPolynomial Constant(double value) => Collect([new Term([], value)]);

    /// <summary>The weight that a switch gives; <paramref name="id"/> is the number of the event that made it.</summary>
    public static WeightPolynomial Variable(int id) => new([new Term([id], 1)]);

    public IReadOnlyList<Term> Terms => terms;

    public bool IsTooLarge => terms.Count > MostTerms || terms.Exists(term => term.Factors.Length > MostFactors);

    /// <summary>The switches it depends on, each once, in the order in which they were made.</summary>
    public IReadOnlyList<int> Switches => switches ??= SwitchesIn(terms);

    public static WeightPolynomial operator +(WeightPolynomial left, WeightPolynomial right) => Collect([.. left.terms, .. right.terms]);

    public static WeightPolynomial operator *(WeightPolynomial left, WeightPolynomial right)
    {
        if (left.terms.Count * right.terms.Count > MostTerms * MostTerms)
            return left.terms.Count > right.terms.Count ? left : right; // too large already, and stays so
        var products = new List<Term>(left.terms.Count * right.terms.Count);
        foreach (var a in left.terms)
        {
            foreach (var b in right.terms)
                products.Add(new Term(Product(a.Factors, b.Factors), a.Coefficient * b.Coefficient));
        }

        return Collect(products);
    }

    public WeightPolynomial Times(double factor) => Collect(terms.ConvertAll(term => term with { Coefficient = term.Coefficient * factor }));

    /// <summary>The same of other switches; none where one of them has no other.</summary>
    public WeightPolynomial? With(Func<int, int?> otherOf)
    {
        var renamed = new List<Term>(terms.Count);
        foreach (var term in terms)
        {
            var factors = new int[term.Factors.Length];
            for (var i = 0; i < factors.Length; i++)
            {
                if (otherOf(term.Factors[i]) is not { } other)
                    return null;
                factors[i] = other;
            }

            Array.Sort(factors);
            renamed.Add(term with { Factors = factors });
        }

        return Collect(renamed);
    }

    public WeightPolynomial Inverse => One + Times(-1);

    /// <summary>The weight's value where each switch has the value that <paramref name="valueOf"/> gives.</summary>
    public double At(Func<int, double> valueOf)
    {
        var sum = 0.0;
        foreach (var term in terms)
        {
            var product = term.Coefficient;
            foreach (var factor in term.Factors)
                product *= valueOf(factor);
            sum += product;
        }

        return sum;
    }

    // The terms of both are in order, and none has a coefficient that counts for nothing.
    public bool Equals(WeightPolynomial? other)
    {
        if (other is null || other.terms.Count != terms.Count)
            return false;
        for (var i = 0; i < terms.Count; i++)
        {
            if (Compare(terms[i].Factors, other.terms[i].Factors) != 0 || Math.Abs(terms[i].Coefficient - other.terms[i].Coefficient) > Tolerance)
                return false;
        }

        return true;
    }

    public override bool Equals(object? obj) => Equals(obj as WeightPolynomial);

    // Coefficients are equal within a tolerance, so only the switches may enter the hash.
    public override int GetHashCode() => Switches.Aggregate(17, (hash, id) => (hash * 31) + id);

    public override string ToString() => Print(id => "#" + id);

    /// <summary>Writes the weight with the names that <paramref name="nameOf"/> gives to its switches.</summary>
    public string Print(Func<int, string> nameOf)
    {
        if (terms.Count == 0)
            return "0";
        var text = new StringBuilder();
        foreach (var term in terms)
        {
            text.Append((term.Coefficient < 0, text.Length > 0) switch
            {
                (true, true) => " − ",
                (true, false) => "−",
                (false, true) => " + ",
                (false, false) => "",
            });
            var (factors, size) = (string.Join("·", term.Factors.Select(nameOf)), Math.Abs(term.Coefficient));
            text.Append(factors.Length == 0 ? Invariant.Print((float)size)
                : size == 1 ? factors
                : Invariant.Print((float)size) + "·" + factors);
        }

        return text.ToString();
    }

    private static IReadOnlyList<int> SwitchesIn(List<Term> terms)
    {
        var all = new SortedSet<int>();
        foreach (var term in terms)
            all.UnionWith(term.Factors);
        return [.. all];
    }

    // Takes the list over: brings equal products together, and drops what counts for nothing.
    private static WeightPolynomial Collect(List<Term> terms)
    {
        terms.Sort(static (a, b) => Compare(a.Factors, b.Factors));
        var kept = 0;
        for (var i = 0; i < terms.Count;)
        {
            var (factors, sum) = (terms[i].Factors, 0.0);
            for (; i < terms.Count && Compare(terms[i].Factors, factors) == 0; i++)
                sum += terms[i].Coefficient;
            if (Math.Abs(sum) > Tolerance)
                terms[kept++] = new Term(factors, sum);
        }

        terms.RemoveRange(kept, terms.Count - kept);
        return new WeightPolynomial(terms);
    }

    private static int[] Product(int[] a, int[] b)
    {
        int[] product = [.. a, .. b];
        Array.Sort(product);
        return product;
    }

    private static int Compare(int[] a, int[] b)
    {
        if (a.Length != b.Length)
            return a.Length - b.Length;
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] != b[i])
                return a[i] - b[i];
        }

        return 0;
    }

    /// <summary>A product of switches, a switch twice for its square, with a coefficient.</summary>
    internal sealed record Term(int[] Factors, double Coefficient);
}
