namespace Condyle.Analyzers.Reading;

/// <summary>The compiler as it is asked about code. Some that is half typed makes it fail; then it has no answer.</summary>
internal static class Compiler
{
    public static T? Asked<T>(Func<T?> question)
    {
        try
        {
            return question();
        }
        catch (Exception failed) when (failed is not OperationCanceledException && failed.Source?.StartsWith("Microsoft.CodeAnalysis", StringComparison.Ordinal) == true)
        {
            return default;
        }
    }
}
