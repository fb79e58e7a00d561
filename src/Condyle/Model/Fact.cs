namespace Condyle.Model;

/// <summary>A value that a reading is sure of, or one that it isn't. A running program only ever makes known ones.</summary>
/// <remarks>There is one way to ask, <see cref="TryKnown"/>, so that no rule can use an open value by mistake.</remarks>
internal readonly struct Fact<T>
{
    private readonly bool known;
    private readonly T value;

    private Fact(T value)
    {
        known = true;
        this.value = value;
    }

    /// <summary>The value that isn't known.</summary>
    public static Fact<T> Open => default;

    public bool TryKnown(out T value)
    {
        value = this.value;
        return known;
    }

    public bool IsOpen => !known;

    public static implicit operator Fact<T>(T value) => new(value);

    public override string ToString() => known ? Invariant.Print(value) : Text.Hole;
}
