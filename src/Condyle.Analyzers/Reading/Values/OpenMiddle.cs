namespace Condyle.Analyzers.Reading;

/// <summary>The one unknown text in a text, and what is known to stand before and after it.</summary>
internal sealed record OpenMiddle(string Head, UnknownText Subject, string Tail);
