using Condyle.Host;
using Condyle.Runtime;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Analyzers.Tests.Skeletons;

/// <summary>A rig project of the repository, compiled in memory from its sources and the skeleton classes that are generated for it.</summary>
internal static class SampleProject
{
    private const string ImplicitUsings =
        "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; global using System.Threading; global using System.Threading.Tasks;";

    public static string Folder(string project) => Repository.PathTo("sample-rigs", project);

    /// <summary>Compiles a project on the skeletons as they were delivered, or as they are changed.</summary>
    public static Compilation Compile(string project, Func<string, string>? change = null)
    {
        var folder = Folder(project);
        var sources = Directory.GetFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Where(file => Path.GetRelativePath(folder, file).Split(Path.DirectorySeparatorChar)[0] is not ("bin" or "obj"))
            .Order(StringComparer.Ordinal)
            .Select(file => (file, File.ReadAllText(file)));
        var skeletons = Directory.GetFiles(folder, "*.gltf").Order(StringComparer.Ordinal)
            .Select(file => (Path.GetFileName(file) + ".g.cs", ClassOf(project, file, change)));
        return CompiledCode.Compile([.. sources, .. skeletons, ("ImplicitUsings.g.cs", ImplicitUsings)])
            .AddReferences(new[] { typeof(Clip), typeof(RigProgram) }.Select(type => MetadataReference.CreateFromFile(type.Assembly.Location)))
            .WithOptions(new CSharpCompilationOptions(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable));
    }

    private static string ClassOf(string project, string file, Func<string, string>? change)
    {
        var delivered = File.ReadAllText(file);
        return GeneratorRun.Of([new Extra(file, change?.Invoke(delivered) ?? delivered)], ("RootNamespace", project)).Code;
    }
}
