namespace Condyle.Analyzers.Skeletons;

/// <summary>Stops the reading of a file; the generator turns it into a diagnostic.</summary>
internal sealed class SkeletonFileException : Exception
{
    public SkeletonFileException(string message, string pointer)
        : base(message) => Pointer = pointer;

    public SkeletonFileException(string message, long line, long byteInLine)
        : base(message) => (Line, ByteInLine) = (line, byteInLine);

    /// <summary>The JSON pointer to the value that is to blame; null when the text isn't JSON.</summary>
    public string? Pointer { get; }

    /// <summary>Where the text stops being JSON, counted from 0.</summary>
    public long Line { get; }

    public long ByteInLine { get; }
}
