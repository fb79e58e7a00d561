namespace Condyle.Model;

/// <summary>A file, as the compiler maps its path, and a line counted from 1.</summary>
internal readonly record struct CodeLine(string File, int Line)
{
    public override string ToString() => $"{File}({Line})";
}
