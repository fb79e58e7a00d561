using Condyle.Analyzers.Reading;
using Condyle.Rules;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>A finding with its place in the source and the edits that repair it.</summary>
internal sealed record PlannedFinding(Rule Rule, string Message, Origin Place, IReadOnlyList<Origin> Related, IReadOnlyList<PlannedRepair> Repairs);

/// <summary>One way to repair a finding: what the rig is like afterwards, and the edits that do it.</summary>
internal sealed record PlannedRepair(string Title, IReadOnlyList<TextEdit> Edits)
{
    /// <summary>The place in the source that is to blame.</summary>
    public Origin Blamed { get; init; }
}

/// <summary>A stretch of a file and what replaces it.</summary>
internal sealed record TextEdit(string Path, TextSpan Span, string Text);
