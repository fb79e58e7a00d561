namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Lines of code with their indentation.</summary>
internal sealed class Code
{
    private readonly List<string> lines = [];
    private int depth;

    public void Line(string text) => lines.Add(new string(' ', depth * 4) + text);

    /// <summary>A head and the block that follows it.</summary>
    public void Block(string head, Action write)
    {
        if (head.Length > 0)
            Line(head);
        Line("{");
        depth++;
        write();
        depth--;
        Line("}");
    }

    /// <summary>The same on one line, for the body of a lambda.</summary>
    public string OnOneLine() => string.Join(" ", lines.Select(line => line.Trim()));

    public override string ToString() => string.Join("\n", lines) + "\n";
}
