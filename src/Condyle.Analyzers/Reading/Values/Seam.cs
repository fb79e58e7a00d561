namespace Condyle.Analyzers.Reading;

/// <summary>Where text can be appended to a value in the source.</summary>
/// <param name="Expression">The expression that makes the text: what a finding points at.</param>
/// <param name="Position">The position inside the file where the appended characters go.</param>
/// <param name="Literal">The literal whose characters are changed.</param>
internal sealed record Seam(Origin Expression, int Position, Origin Literal);
