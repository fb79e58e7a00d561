namespace Condyle.Model;

/// <summary>An element of a model written out: what it is, its number, and what the model says of it, the name first.</summary>
internal sealed record ModelElement(string Kind, int Id, IReadOnlyList<string> Facts);
