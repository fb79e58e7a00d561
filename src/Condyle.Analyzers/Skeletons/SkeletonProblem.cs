using Condyle.Analyzers.Reporting;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Skeletons;

/// <summary>Why a skeleton file can't be used, and where in it.</summary>
internal sealed record SkeletonProblem(string FilePath, string Message, TextSpan Span, LinePositionSpan Lines)
{
    public const string WriteGltf = "Run the 'skeleton' verb of a rig program on the file: it writes a small .gltf with the skeleton";

    public static readonly DiagnosticDescriptor Rule = RuleDescriptors.Of(BuildProblem.SkeletonFile);

    public static SkeletonProblem AtStart(string filePath, string message) => new(filePath, message, default, default);

    public static SkeletonProblem At(string filePath, SourceText text, int offset, string message)
    {
        var span = TextSpan.FromBounds(Math.Min(offset, text.Length), Math.Min(offset + 1, text.Length));
        return new SkeletonProblem(filePath, message, span, text.Lines.GetLinePositionSpan(span));
    }

    public Diagnostic ToDiagnostic() => Diagnostic.Create(Rule, Location.Create(FilePath, Span, Lines), Message);
}
