using System.Reflection;
using System.Runtime.Loader;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Tests.Shared;

/// <summary>Code compiled in memory against Condyle and the framework, to be read and to be run.</summary>
internal static class CompiledCode
{
    private static readonly MetadataReference[] References = [.. FrameworkReferences(), MetadataReference.CreateFromFile(typeof(RigDraft).Assembly.Location)];

    /// <summary>The reference assemblies of the running SDK, so that nothing is downloaded.</summary>
    public static IEnumerable<MetadataReference> FrameworkReferences()
    {
        var root = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(typeof(object).Assembly.Location)!, "..", "..", ".."));
        var pack = Directory.GetDirectories(Path.Combine(root, "packs", "Microsoft.NETCore.App.Ref"), "10.*").Order().Last();
        return Directory.GetFiles(Path.Combine(pack, "ref", "net10.0"), "*.dll").Select(file => MetadataReference.CreateFromFile(file));
    }

    public static CSharpCompilation Compile(params (string Path, string Source)[] files) => CSharpCompilation.Create(
        "rigs",
        files.Select(file => CSharpSyntaxTree.ParseText(file.Source, new CSharpParseOptions(LanguageVersion.Preview), file.Path)),
        References,
        new CSharpCompilationOptions(files.Any(file => file.Path == "program.cs") ? OutputKind.ConsoleApplication : OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable, allowUnsafe: false));

    public static Assembly Load(Compilation compilation)
    {
        using var image = new MemoryStream();
        var result = compilation.Emit(image);
        if (!result.Success)
            throw new InvalidOperationException("The code doesn't compile: " + string.Join(Environment.NewLine, result.Diagnostics.Where(found => found.Severity == DiagnosticSeverity.Error)));
        image.Position = 0;
        return new AssemblyLoadContext("rigs", isCollectible: true).LoadFromStream(image);
    }
}
