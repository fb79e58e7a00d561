namespace Condyle.Analyzers.Reading;

/// <summary>A comparer of the framework's: which values are the same, and in which order they stand.</summary>
internal sealed class ComparerValue(string type, Func<Machine, IComparer<object?>> order, Func<Machine, IEqualityComparer<object?>> equality) : IFrameworkValue
{
    public string TypeName => type;

    public IComparer<object?> Order(Machine machine) => order(machine);

    public IEqualityComparer<object?> Equality(Machine machine) => equality(machine);
}
