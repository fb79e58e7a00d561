using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>A stretch of source: the file's path and the span in it.</summary>
internal readonly record struct Origin(string Path, TextSpan Span);
