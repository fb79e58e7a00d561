using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>A stretch of source: the file's path and the span in it.</summary>
internal readonly record struct Origin(string Path, TextSpan Span);

/// <summary>A place in running code.</summary>
/// <param name="At">The stretch of source.</param>
/// <param name="Callers">The calls by which it was reached, from the outside in.</param>
internal sealed record CodePlace(Origin At, IReadOnlyList<Origin> Callers);
