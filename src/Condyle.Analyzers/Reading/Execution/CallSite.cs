namespace Condyle.Analyzers.Reading;

/// <summary>Where a function was called, for each time that it runs, and where the one was called that did so.</summary>
internal sealed class CallSite(Origin at, CallSite? from)
{
    public Origin At { get; } = at;

    public CallSite? From { get; } = from;
}
