using Condyle.Model;

namespace Condyle;

/// <summary>What a rule found in a rig that a program built.</summary>
public sealed class RigFinding
{
    internal RigFinding(Rules.Finding finding, ProgramPlaces places)
    {
        Rule = finding.Rule.Id;
        Title = finding.Rule.Title;
        Severity = finding.Rule.Severity;
        Message = finding.Message;
        if (places.Find(finding.Place) is { } at)
            (File, Line) = (at.File, at.Line);
    }

    /// <summary>The rule's id, for instance <c>CDY1001</c>.</summary>
    public string Rule { get; }

    /// <summary>The rule's title.</summary>
    public string Title { get; }

    /// <summary>How bad it is.</summary>
    public Severity Severity { get; }

    /// <summary>A message that stands alone.</summary>
    public string Message { get; }

    /// <summary>The file of the code to blame; empty where the program can't tell.</summary>
    public string File { get; } = "";

    /// <summary>The line, from 1; 0 where the program can't tell.</summary>
    public int Line { get; }

    /// <summary>The finding as compilers print theirs.</summary>
    /// <returns>Place, severity, rule and message.</returns>
    public override string ToString() =>
        $"{(Line > 0 ? $"{File}({Line}): " : "")}{Severity.ToString().ToLowerInvariant()} {Rule}: {Message}";
}
