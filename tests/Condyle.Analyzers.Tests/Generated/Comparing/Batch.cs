using System.Reflection;
using System.Runtime.Loader;
using Condyle.Analyzers.Reading;
using Condyle.Analyzers.Tests.Reading;
using Condyle.Model;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Emit;

namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Programs that are compiled together, as that is faster, and then read and run one by one.</summary>
internal static class Batch
{
    private const string Placeholder = "namespace Rigs.Numbered;";

    public static IReadOnlyList<Outcome> Check(IReadOnlyList<string> sources)
    {
        var outcomes = new Outcome?[sources.Count];
        var compilation = CompiledCode.Compile([.. sources.SelectMany((source, index) => Files(source, index))]);
        if (Load(ref compilation, sources.Count, outcomes) is not { } assembly)
            return sources.Count == 1 ? [new Outcome(Verdict.Broken, "The compiler itself fails on it.")] : [.. sources.SelectMany(source => Check([source]))];
        for (var i = 0; i < sources.Count; i++)
            outcomes[i] ??= Compare(compilation, assembly, $"Rigs.P{i}.TestRig");
        return outcomes!;
    }

    /// <summary>Leaves out what doesn't compile, and loads the rest; none where the compiler itself fails, as it does on some programs that are cut.</summary>
    private static Assembly? Load(ref CSharpCompilation compilation, int count, Outcome?[] outcomes)
    {
        using var image = new MemoryStream();
        EmitResult result;
        try
        {
            result = compilation.Emit(image);
        }
        catch (Exception)
        {
            return null;
        }

        foreach (var errors in result.Diagnostics.Where(found => found.Severity == DiagnosticSeverity.Error).GroupBy(found => found.Location.SourceTree!))
        {
            var program = Path.GetDirectoryName(errors.Key.FilePath);
            outcomes[Enumerable.Range(0, count).First(index => FolderOf(index) == program)] = new Outcome(Verdict.Broken, string.Join("\n", errors));
            compilation = compilation.RemoveSyntaxTrees(compilation.SyntaxTrees.Where(tree => Path.GetDirectoryName(tree.FilePath) == program));
        }

        if (!result.Success)
            return CompiledCode.Load(compilation);
        image.Position = 0;
        return new AssemblyLoadContext("rigs", isCollectible: true).LoadFromStream(image);
    }

    /// <summary>The files of a program, each with the same beginning.</summary>
    public static IEnumerable<(string Path, string Source)> Files(string program, int index)
    {
        var source = program.Replace(Placeholder, $"namespace Rigs.P{index};", StringComparison.Ordinal);
        var files = source.Split(ProgramGen.NextFile);
        var head = source[..(source.IndexOf(';', source.IndexOf("namespace", StringComparison.Ordinal)) + 1)];
        return files.Select((text, file) => ($"{FolderOf(index)}/{file}.cs", file == 0 ? text : head + text));
    }

    private static string FolderOf(int index) => $"p{index}";

    private static Outcome Compare(Compilation compilation, Assembly assembly, string type)
    {
        Condyle.Rig ran;
        try
        {
            ran = Condyle.Rig.Examine((IRigDefinition)Activator.CreateInstance(assembly.GetType(type)!)!);
        }
        catch (Exception thrown)
        {
            return new Outcome(Verdict.Broken, $"It throws {thrown}.");
        }

        var read = Oracle.Read(compilation, type);
        if (read.Paths.Count != 1)
            return new Outcome(Verdict.Open, $"It is read in {read.Paths.Count} ways.");
        var (expected, actual) = (ModelText.Lines(ran.Model, ran.Places.Find), Oracle.Lines(read.Paths[0], compilation));
        List<string> differences = [.. ModelText.Differences(expected, actual), .. Names(ran.Model, read.Paths[0].Model)];
        if (differences.Count == 0)
            return new Outcome(Verdict.Same, "");
        var details = string.Join("\n", differences.Take(6)) + string.Concat(read.Paths[0].Model.Gaps.Select(gap => $"\ngap: {gap.Reason}"));
        return new Outcome(LeavesOpen(read.Paths[0], actual) ? Verdict.Open : Verdict.Wrong, details);
    }

    /// <summary>Names differ as text does, also where they look like numbers that are nearly the same.</summary>
    private static IEnumerable<string> Names(RigModel ran, RigModel read) => ran.Nodes.Zip(read.Nodes)
        .Where(pair => pair.First.Name.ToString() != pair.Second.Name.ToString())
        .Select(pair => $"- {pair.First.Name}\n+ {pair.Second.Name}");

    /// <summary>Whether the reading says that there is something it doesn't know: then it may miss what hangs on that.</summary>
    private static bool LeavesOpen(ReadPath path, IReadOnlyList<string> lines) =>
        path.Model.Gaps.Count > 0 || path.Model.Nodes.Any(node => node.Scope != 0) || lines.Any(line => line.Contains(Text.Hole, StringComparison.Ordinal));
}
