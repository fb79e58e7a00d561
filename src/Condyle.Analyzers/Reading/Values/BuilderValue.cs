namespace Condyle.Analyzers.Reading;

/// <summary>A <c>StringBuilder</c>.</summary>
internal sealed class BuilderValue : ICollectionValue, IFrameworkValue
{
    public string TypeName => "System.Text.StringBuilder";

    public TextValue Text { get; set; } = TextValue.Plain("");

    // Of what isn't known any more it is known that it is a text.
    public bool IsOpen
    {
        get => false;
        set => Text = value ? TextValue.Open : Text;
    }

    public object Snapshot() => Text;

    public void Restore(object snapshot) => Text = (TextValue)snapshot;

    public bool Holds(object snapshot) => ((TextValue)snapshot).Text.Equals(Text.Text);
}
