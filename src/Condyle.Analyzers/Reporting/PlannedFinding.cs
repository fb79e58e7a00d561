using Condyle.Analyzers.Reading;
using Condyle.Rules;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>A finding with its place in the source and the edits that repair it.</summary>
internal sealed record PlannedFinding(Rule Rule, string Message, Origin Place, IReadOnlyList<Origin> Related, IReadOnlyList<PlannedRepair> Repairs);

/// <summary>One way to repair a finding.</summary>
/// <param name="Kind">What is done; fix-all does the same elsewhere.</param>
/// <param name="Title">What the rig is like afterwards.</param>
/// <param name="Edits">The edits that do it; none where it is only known what is to blame.</param>
internal sealed record PlannedRepair(string Kind, string Title, IReadOnlyList<TextEdit> Edits)
{
    /// <summary>The place in the source that is to blame.</summary>
    public Origin Blamed { get; init; }

    /// <summary>The blends whose weights come right by it: none of them bears another repair beside it.</summary>
    public IReadOnlyList<string> Blends { get; init; } = [];

    /// <summary>Whether code may count on what goes by it, its number, its place in a row or what can be asked of it: then who offers it tries it first, since that takes another reading.</summary>
    public bool IsToBeTried { get; init; }
}

/// <summary>A stretch of a file and what replaces it.</summary>
internal sealed record TextEdit(string Path, TextSpan Span, string Text);
