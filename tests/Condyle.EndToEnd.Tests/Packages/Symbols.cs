using System.Reflection.Metadata;

namespace Condyle.EndToEnd.Tests.Packages;

/// <summary>Which sources a portable symbol file tells of, and whether it holds their text.</summary>
internal static class Symbols
{
    /// <summary>What marks embedded source, by the portable PDB format (dotnet/runtime, docs/design/specs/PortablePdb-Metadata.md).</summary>
    private static readonly Guid EmbeddedSource = new("0E8A571B-6926-466E-B4AD-8AB04611F5FE");

    public static IReadOnlyList<(string Path, bool IsEmbedded)> SourcesIn(Stream file)
    {
        using var copy = new MemoryStream();
        file.CopyTo(copy);
        copy.Position = 0;
        using var provider = MetadataReaderProvider.FromPortablePdbStream(copy);
        var reader = provider.GetMetadataReader();
        return [.. reader.Documents.Select(document => (
            reader.GetString(reader.GetDocument(document).Name),
            reader.GetCustomDebugInformation(document).Any(handle => reader.GetGuid(reader.GetCustomDebugInformation(handle).Kind) == EmbeddedSource)))];
    }
}
