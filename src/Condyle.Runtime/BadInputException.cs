namespace Condyle.Runtime;

/// <summary>
/// The one exception for input that can't be used: a file, a clip or a folder. Its message is one line that names the file, the node and the place,
/// says what is wrong and what to do. Programs report it and end with exit code 2.
/// </summary>
public sealed class BadInputException : Exception
{
    /// <summary>Says what is wrong, where, and what to do.</summary>
    /// <param name="file">The file or folder that is to blame, as the caller named it.</param>
    /// <param name="problem">What is wrong, as a clause without a full stop.</param>
    /// <param name="remedy">What to do, as a sentence without a full stop.</param>
    /// <param name="node">The node, joint or clip that it is about; null when it is about none.</param>
    /// <param name="place">A JSON pointer, or a line and column; null when the whole file is meant.</param>
    /// <param name="inner">What the system or a library reported.</param>
    public BadInputException(string file, string problem, string remedy, string? node = null, string? place = null, Exception? inner = null)
        : base(OneLine(file, problem, remedy, node, place), inner)
    {
        File = file;
        Node = node;
        Place = place;
    }

    /// <summary>The file or folder that is to blame, as the caller named it.</summary>
    public string File { get; }

    /// <summary>The node, joint or clip that it is about, or null.</summary>
    public string? Node { get; }

    /// <summary>A JSON pointer such as <c>/nodes/12/rotation</c>, or a line and column, or null.</summary>
    public string? Place { get; }

    private static string OneLine(string file, string problem, string remedy, string? node, string? place)
    {
        var where = (node, place) switch
        {
            (null, null) => "",
            (null, _) => $" at {place}",
            (_, null) => $" '{node}'",
            _ => $" '{node}' at {place}",
        };
        var line = $"{file}:{where} {problem}. {remedy}.";
        return string.Create(line.Length, line, static (span, text) =>
        {
            for (var i = 0; i < span.Length; i++)
                span[i] = char.IsControl(text[i]) ? ' ' : text[i];
        });
    }
}
