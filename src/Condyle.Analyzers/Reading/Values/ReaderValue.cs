namespace Condyle.Analyzers.Reading;

/// <summary>A <c>StringReader</c>: a text that is known whole, and how much of it was read.</summary>
internal sealed class ReaderValue(string text) : ICollectionValue, IFrameworkValue
{
    public string TypeName => "System.IO.StringReader";

    public bool IsOpen { get; set; }

    public string Text { get; } = text;

    public int Position { get; set; }

    public object Snapshot() => (Position, IsOpen);

    public void Restore(object snapshot) => (Position, IsOpen) = ((int, bool))snapshot;

    public bool Holds(object snapshot) => snapshot.Equals((Position, IsOpen));
}
